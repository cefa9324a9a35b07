package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.joints.PlacedPieces.Reach;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Screws from outside through each board of a side into an upright behind it. */
final class WallScrews {
    /** Of a board that lies on an upright by less, its other upright holds the end (common practice, no source). */
    private static final double LEAST_MM = 25;

    /** To the end of the board and to the edge of the upright, in diameters: a3,c and a4,c of EN 1995-1-1 table 8.2. */
    private static final double END = 7;

    private static final double EDGE = 3;

    private static final double STEP_MM = 1;

    /** From a board's edge, of its height (common practice, no source). */
    private static final double QUARTER = 0.25;

    private final PlacedPieces pieces;
    private final ScrewSpace space;

    WallScrews(PlacedPieces pieces, ScrewSpace space) {
        this.pieces = pieces;
        this.space = space;
    }

    Driven place(JointPlan plan) {
        SideFrame side = pieces.side(plan.side());
        Piece upright = pieces.piece(plan.into());
        Reach bearing = side.bearing(upright.place().plan(), pieces.draft.wallMm())
                .map(b -> new Reach(b.fromMm(), b.toMm()))
                .orElseThrow();
        double wall = pieces.draft.wallMm();
        Map<Piece, Double> columns = columns(plan, side, bearing);
        double behind = columns.values().stream()
                .mapToDouble(s -> behindMm(plan, side, s))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        Screw screw = pieces.draft.screws.fit(plan.screw(), wall, behind);
        List<ScrewLine> lines = new ArrayList<>();
        columns.forEach((board, s) -> lines.addAll(up(plan, screw, side, board, s)));
        return new Driven(screw, lines);
    }

    /** One column for all courses where that suits their boards: the one that is farthest from the middle of the upright. */
    private Map<Piece, Double> columns(JointPlan plan, SideFrame side, Reach bearing) {
        Map<Piece, Double> own = new LinkedHashMap<>();
        for (Course course : pieces.draft.courses()) {
            onIt(side, course, bearing).forEach(board -> own.put(board, column(plan, side, board, bearing)));
        }
        double middle = (bearing.fromMm() + bearing.toMm()) / 2;
        double farthest = own.values().stream()
                .max(Comparator.comparingDouble(s -> StrictMath.abs(s - middle)))
                .orElse(middle);
        Map<Piece, Double> columns = new LinkedHashMap<>();
        own.forEach((board, s) -> columns.put(board, isWhole(plan, side, board, farthest) ? farthest : s));
        return columns;
    }

    private boolean isWhole(JointPlan plan, SideFrame side, Piece board, double s) {
        Reach middle = PlacedPieces.reach(board, side, pieces.draft.wallMm() / 2);
        double endMm = END * plan.screw().diameterMm();
        return s >= middle.fromMm() + endMm && s <= middle.toMm() - endMm;
    }

    private List<Piece> onIt(SideFrame side, Course course, Reach bearing) {
        List<Piece> boards = pieces.boardsOver(side, course.number(), bearing).stream()
                .filter(board -> shared(side, board, bearing).lengthMm() > 0)
                .toList();
        List<Piece> well = boards.stream()
                .filter(board -> shared(side, board, bearing).lengthMm() >= LEAST_MM)
                .toList();
        return well.isEmpty()
                ? boards.stream()
                        .max(Comparator.comparingDouble(
                                board -> shared(side, board, bearing).lengthMm()))
                        .stream()
                        .toList()
                : well;
    }

    /** Where a board lies on the upright with its whole thickness. */
    private Reach shared(SideFrame side, Piece board, Reach bearing) {
        return bearing.and(PlacedPieces.reach(board, side, 0))
                .and(PlacedPieces.reach(board, side, pieces.draft.wallMm()));
    }

    /** Where the upright, ripped to a corner, is too thin for the screw, the thickest place that both edges allow. */
    private double column(JointPlan plan, SideFrame side, Piece board, Reach bearing) {
        double d = plan.screw().diameterMm();
        double usual = usual(side, board, bearing, d);
        if (fits(plan, side, usual)) {
            return usual;
        }
        Reach middle = PlacedPieces.reach(board, side, pieces.draft.wallMm() / 2);
        Reach clear = new Reach(
                StrictMath.max(bearing.fromMm() + EDGE * d, middle.fromMm() + END * d),
                StrictMath.min(bearing.toMm() - EDGE * d, middle.toMm() - END * d));
        double best = usual;
        for (double s = clear.fromMm(); s <= clear.toMm(); s += STEP_MM) {
            best = behindMm(plan, side, s) > behindMm(plan, side, best) ? s : best;
        }
        return best;
    }

    private boolean fits(JointPlan plan, SideFrame side, double s) {
        return pieces.draft
                .screws
                .fit(plan.screw(), pieces.draft.wallMm(), behindMm(plan, side, s))
                .equals(plan.screw());
    }

    private double behindMm(JointPlan plan, SideFrame side, double s) {
        return Contact.thickMm(
                pieces.piece(plan.into()).place().plan(), side.at(s, pieces.draft.wallMm()), side.inwards());
    }

    /** In the middle; where the board ends there, as far from its end as the upright's edge allows. */
    private double usual(SideFrame side, Piece board, Reach bearing, double d) {
        Reach shared = shared(side, board, bearing);
        Reach middle = PlacedPieces.reach(board, side, pieces.draft.wallMm() / 2);
        double s = (shared.fromMm() + shared.toMm()) / 2;
        if (s < middle.fromMm() + END * d) {
            s = StrictMath.max(s, StrictMath.min(middle.fromMm() + END * d, bearing.toMm() - EDGE * d));
        }
        if (s > middle.toMm() - END * d) {
            s = StrictMath.min(s, StrictMath.max(middle.toMm() - END * d, bearing.fromMm() + EDGE * d));
        }
        return s;
    }

    private List<ScrewLine> up(JointPlan plan, Screw screw, SideFrame side, Piece board, double s) {
        double d = screw.diameterMm();
        Heights heights = Heights.of(
                board.place().bottomMm(),
                board.place().topMm(),
                QUARTER,
                pieces.piece(plan.into()).place().topMm(),
                d);
        Stream<List<ScrewLine>> choices = heights.choices(plan.hold().perJoint())
                .map(set -> set.stream()
                        .map(z -> ScrewLine.level(side.at(s, 0), z, side.inwards(), screw.lengthMm()))
                        .toList());
        return space.take(choices, d);
    }
}
