package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/** In each course, screws through the board that runs past the end of the other into that end. */
final class CornerScrews {
    private static final double QUARTER = 0.25;

    /** Wood beyond a point. */
    private static final double LEAST_COVER_MM = 2;

    private static final int STEPS = 4;

    /** A screw that would stand less deep in the end of a slanting board is left out, in diameters (no source). */
    private static final double LEAST_POINT = 3;

    private final PlacedPieces pieces;
    private final ScrewSpace space;

    CornerScrews(PlacedPieces pieces, ScrewSpace space) {
        this.pieces = pieces;
        this.space = space;
    }

    private record Lap(SideFrame side, Point head, Course course) {}

    /** At the corner where a side begins. */
    Driven lap(JointPlan plan) {
        SideFrame side = pieces.side(plan.side());
        SideFrame before = pieces.side(plan.side() - 1);
        double wall = pieces.draft.wallMm();
        double behind = Double.POSITIVE_INFINITY;
        List<Lap> laps = new ArrayList<>();
        for (Course course : pieces.draft.courses()) {
            List<Piece> mine = pieces.boards(side, course.number());
            List<Piece> theirs = pieces.boards(before, course.number());
            if (mine.isEmpty() || theirs.isEmpty()) {
                continue;
            }
            Piece first = mine.get(0);
            Piece last = theirs.get(theirs.size() - 1);
            boolean own = first.place().plan().contains(side.start(), -1);
            if (own != last.place().plan().contains(side.start(), -1)) {
                SideFrame through = own ? side : before;
                Ring end = (own ? last : first).place().plan();
                Point head = head(plan, through, own, end);
                laps.add(new Lap(through, head, course));
                behind = StrictMath.min(behind, behindMm(through, head, end));
            }
        }
        Screw screw = pieces.draft.screws.fit(plan.screw(), wall, behind);
        List<ScrewLine> lines = new ArrayList<>();
        if (screw.lengthMm() < wall + LEAST_POINT * screw.diameterMm()) {
            return new Driven(screw, lines);
        }
        laps.forEach(lap -> lines.addAll(drive(plan, screw, lap)));
        return new Driven(screw, lines);
    }

    private double behindMm(SideFrame side, Point head, Ring end) {
        return Contact.thickMm(end, head.plus(side.inwards().times(pieces.draft.wallMm())), side.inwards());
    }

    /** Over the middle of the end behind it; off it where a board that runs askew would let the point out at its side. */
    private Point head(JointPlan plan, SideFrame side, boolean left, Ring end) {
        Point middle = middle(side, left);
        Point best = middle;
        double wanted = plan.screw().lengthMm() - pieces.draft.wallMm() + LEAST_COVER_MM;
        for (int step = 1; behindMm(side, best, end) < wanted && step <= STEPS; step++) {
            for (int hand = -1; hand <= 1; hand += 2) {
                Point head = middle.plus(side.along().times(hand * step * pieces.draft.wallMm() / (2.5 * STEPS)));
                best = behindMm(side, head, end) > behindMm(side, best, end) ? head : best;
            }
        }
        return best;
    }

    private Point middle(SideFrame side, boolean left) {
        double wall = pieces.draft.wallMm();
        double angle = left ? side.startAngle() : side.endAngle();
        double back = StrictMath.max(
                wall / 2, wall * StrictMath.cos(angle) / StrictMath.sin(angle) + wall / 2 / StrictMath.sin(angle));
        return side.at(left ? back : side.lengthMm() - back, 0);
    }

    private List<ScrewLine> drive(JointPlan plan, Screw screw, Lap lap) {
        double d = screw.diameterMm();
        Heights heights = Heights.of(lap.course.bottomMm(), lap.course.topMm(), QUARTER, Double.MAX_VALUE, d);
        return space.take(
                heights.choices(plan.hold().perJoint())
                        .map(set -> set.stream()
                                .map(z -> ScrewLine.level(lap.head, z, lap.side.inwards(), screw.lengthMm()))
                                .toList()),
                d);
    }
}
