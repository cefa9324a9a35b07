package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.joints.PlacedPieces.Reach;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.buildup.walls.CappingScrews;
import java.util.ArrayList;
import java.util.List;

/** Screws straight down through a capping board into the top edge of the wall, along its middle line. */
final class CapScrews {
    /** From an end that is pulled at: a3,t of EN 1995-1-1 table 8.2 in drilled holes, in diameters. */
    private static final double END = 12;

    /** From the end of a wall's board below: a3,c. */
    private static final double WALL_END = 7;

    private static final double STEP_MM = 5;
    private static final int STEPS = 16;

    private final PlacedPieces pieces;
    private final ScrewSpace space;

    CapScrews(PlacedPieces pieces, ScrewSpace space) {
        this.pieces = pieces;
        this.space = space;
    }

    Driven place(JointPlan plan) {
        SideFrame side = pieces.side(plan.side());
        Piece cap = pieces.piece(plan.through());
        double middle = pieces.draft.wallMm() / 2;
        List<Reach> walls = pieces.boards(side, pieces.draft.courses().size()).stream()
                .map(board -> PlacedPieces.reach(board, side, middle))
                .toList();
        Reach top = PlacedPieces.reach(cap, side, middle);
        Reach over = top.and(
                new Reach(walls.get(0).fromMm(), walls.get(walls.size() - 1).toMm()));
        double d = plan.screw().diameterMm();
        List<ScrewLine> lines = new ArrayList<>();
        for (double s : CappingScrews.between(over.fromMm(), over.toMm(), END * d)) {
            lines.addAll(space.take(choices(plan, cap, side, over, walls, s).stream(), d));
        }
        return new Driven(plan.screw(), lines);
    }

    private List<List<ScrewLine>> choices(
            JointPlan plan, Piece cap, SideFrame side, Reach over, List<Reach> walls, double wanted) {
        double d = plan.screw().diameterMm();
        List<List<ScrewLine>> choices = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            for (double off : new double[] {step * STEP_MM, -step * STEP_MM}) {
                double s = wanted + off;
                boolean clear = s >= over.fromMm() + WALL_END * d
                        && s <= over.toMm() - WALL_END * d
                        && walls.stream()
                                .anyMatch(wall -> s >= wall.fromMm() + WALL_END * d && s <= wall.toMm() - WALL_END * d);
                if (clear) {
                    choices.add(List.of(line(plan, cap, side, s)));
                }
            }
        }
        if (choices.isEmpty()) {
            choices.add(List.of(line(plan, cap, side, wanted)));
        }
        return choices;
    }

    private ScrewLine line(JointPlan plan, Piece cap, SideFrame side, double s) {
        return ScrewLine.down(
                side.at(s, pieces.draft.wallMm() / 2),
                cap.place().topMm(),
                plan.screw().lengthMm());
    }
}
