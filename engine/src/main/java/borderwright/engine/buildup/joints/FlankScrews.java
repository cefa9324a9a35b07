package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Screws through one piece into the flank of another beside it: a tie, a divider, the second upright of a corner. */
final class FlankScrews {
    private static final double QUARTER = 0.25;

    /** A point stands at least so deep in what it ends in, in diameters: EN 1995-1-1, 8.3.1.2 and 8.7.1. */
    private static final double LEAST_POINT = 6;

    /** Screws go through no thicker upright (common practice, no source): a flat one is held by its wall alone. */
    private static final double MOST_THROUGH_MM = 70;

    /** Those of two uprights that face each other stand so far off the middle, each its own way (common practice, no source). */
    private static final double ASIDE_MM = 8;

    /** To the edge of an upright, in diameters: a4,c of EN 1995-1-1 table 8.2. */
    private static final double EDGE = 3;

    /** Past the play between a divider and the upright beside it. */
    private static final double PAST_PLAY_MM = 3;

    /** What is nearer than this to a head covers it. */
    static final double CLEAR_MM = 1.5;

    private final PlacedPieces pieces;
    private final ScrewSpace space;

    FlankScrews(PlacedPieces pieces, ScrewSpace space) {
        this.pieces = pieces;
        this.space = space;
    }

    /** Through a tie into its brace: evenly over the tie's height. */
    Driven tie(JointPlan plan) {
        Piece tie = pieces.piece(plan.through());
        Piece brace = pieces.piece(plan.into());
        return drive(plan, tie, brace, List.of(tie.place()), 1.0 / (plan.hold().perJoint() + 1));
    }

    /** The bracket of a tie that meets its brace askew: on the tie, half-way up. */
    Driven bracket(JointPlan plan) {
        Prism tie = pieces.piece(plan.through()).place();
        Prism brace = pieces.piece(plan.into()).place();
        Point near = tie.plan().corners().stream()
                .min((a, b) -> Double.compare(
                        a.distanceMm(brace.plan().meanCorner()),
                        b.distanceMm(brace.plan().meanCorner())))
                .orElseThrow();
        ScrewLine bracket = ScrewLine.level(near, (tie.bottomMm() + tie.topMm()) / 2, new Point(1, 0), 0);
        return new Driven(plan.screw(), List.of(bracket));
    }

    /** Through the second upright of a corner into the first, in each course. */
    Driven together(JointPlan plan) {
        Piece second = pieces.piece(plan.through());
        List<Prism> courses = pieces.draft.courses().stream()
                .map(course -> new Prism(second.place().plan(), course.bottomMm(), course.topMm()))
                .toList();
        return drive(plan, second, pieces.piece(plan.into()), courses, QUARTER);
    }

    /**
     * Through each board of a divider into the upright beside it. Where another upright stands on the other face, each is
     * screwed from its own side, through the divider and into the other one.
     */
    Driven divider(JointPlan plan) {
        List<Piece> boards = pieces.divider(plan.through());
        if (boards.isEmpty()) {
            return new Driven(plan.screw(), List.of());
        }
        List<Prism> over = boards.stream().map(Piece::place).toList();
        Piece board = boards.get(0);
        Piece upright = pieces.piece(plan.into());
        Optional<Piece> opposite = opposite(plan, board, upright);
        if (opposite.isEmpty()) {
            return drive(plan, board, upright, over, QUARTER);
        }
        Contact contact = Contact.between(board.place().plan(), upright.place().plan())
                .orElseThrow()
                .turned();
        double fixed = Contact.thickMm(
                upright.place().plan(), contact.middle(), contact.into().times(-1));
        if (fixed > MOST_THROUGH_MM) {
            boolean isLater = isAfter(plan, opposite.get());
            return isLater ? new Driven(plan.screw(), List.of()) : drive(plan, board, upright, over, QUARTER);
        }
        double off = StrictMath.max(
                0,
                StrictMath.min(
                        ASIDE_MM, contact.lengthMm() / 2 - EDGE * plan.screw().diameterMm()));
        return along(
                plan,
                ways(contact, off, List.of(upright, board, opposite.get())),
                over,
                QUARTER,
                StrictMath.min(endMm(upright), endMm(opposite.get())));
    }

    /** From the first of three pieces through the second into the third: off the middle, in it, and off it the other way. */
    private List<Way> ways(Contact contact, double off, List<Piece> three) {
        List<Way> ways = new ArrayList<>();
        Ring own = three.get(0).place().plan();
        Ring board = three.get(1).place().plan();
        Ring opposite = three.get(2).place().plan();
        for (double aside : new double[] {off, 0, -off}) {
            Point place = contact.aside(aside);
            double through = Contact.thickMm(own, place, contact.into().times(-1));
            double thick = Contact.thickMm(board, place, contact.into());
            Point far = place.plus(contact.into().times(thick + PAST_PLAY_MM));
            double behind = thick + Contact.thickMm(opposite, far, contact.into());
            Screw screw = pieces.draft.screws.screw(through, behind);
            boolean whole = opposite.contains(far, 0);
            if (ways.isEmpty() || (whole && screw.equals(ways.get(0).screw))) {
                ways.add(new Way(screw, place.minus(contact.into().times(through)), contact.into(), through));
            }
        }
        return ways;
    }

    /** The upright on the other face of a divider, over the middle of this one. */
    private Optional<Piece> opposite(JointPlan plan, Piece board, Piece upright) {
        Optional<Contact> own =
                Contact.between(board.place().plan(), upright.place().plan());
        return pieces.draft.joints().stream()
                .filter(other -> own.isPresent()
                        && other.hold() == plan.hold()
                        && other.side() == plan.side()
                        && !other.into().equals(plan.into()))
                .map(other -> pieces.piece(other.into()))
                .filter(other -> Contact.between(
                                board.place().plan(), other.place().plan())
                        .filter(far -> far.into().dot(own.get().into()) < 0 && isOpposite(far, own.get()))
                        .isPresent())
                .filter(other -> {
                    double thick = Contact.thickMm(
                            board.place().plan(),
                            own.get().middle(),
                            own.get().into().times(-1));
                    Point far = own.get().middle().minus(own.get().into().times(thick + PAST_PLAY_MM));
                    return other.place().plan().contains(far, 0);
                })
                .findFirst();
    }

    /** Whether one lies over the middle of the other, across the board. */
    private static boolean isOpposite(Contact far, Contact own) {
        Point along = own.to().minus(own.from()).unit();
        double middle = own.middle().minus(own.from()).dot(along);
        double a = far.from().minus(own.from()).dot(along);
        double b = far.to().minus(own.from()).dot(along);
        return middle > StrictMath.min(a, b) && middle < StrictMath.max(a, b);
    }

    private boolean isAfter(JointPlan plan, Piece other) {
        for (JointPlan one : pieces.draft.joints()) {
            if (one.hold() == plan.hold() && one.into().equals(other.label())) {
                return true;
            }
            if (one.equals(plan)) {
                return false;
            }
        }
        return false;
    }

    /**
     * Two of a joint's screws, or all of a tie's, in each of these heights. Where another piece covers the place of the heads
     * they go the other way, if no piece is in the way there and a screw is long enough.
     */
    private Driven drive(JointPlan plan, Piece through, Piece into, List<Prism> over, double share) {
        Optional<Contact> found =
                Contact.between(through.place().plan(), into.place().plan());
        if (found.isEmpty()) {
            return new Driven(plan.screw(), List.of());
        }
        Way there = way(plan, through, found.get().middle(), found.get().into(), into);
        Way back = way(plan, into, found.get().middle(), found.get().into().times(-1), through);
        double height = (over.get(0).bottomMm() + over.get(0).topMm()) / 2;
        boolean turned = !isOpen(there, height)
                && isOpen(back, height)
                && back.screw.lengthMm() >= back.throughMm + LEAST_POINT * back.screw.diameterMm();
        Way way = turned ? back : there;
        return along(plan, List.of(way), over, share, StrictMath.min(endMm(through), endMm(into)));
    }

    /** Along the first of these ways that has room in each of these heights; all with the same screw. */
    private Driven along(JointPlan plan, List<Way> ways, List<Prism> over, double share, double endMm) {
        Screw screw = ways.get(0).screw;
        List<ScrewLine> lines = new ArrayList<>();
        for (Prism high : over) {
            Heights heights = Heights.of(high.bottomMm(), high.topMm(), share, endMm, screw.diameterMm());
            double d = screw.diameterMm();
            // Where two find no room, one does; a second would split what it meets.
            lines.addAll(space.takeWithRoom(choices(ways, heights, plan.hold().perJoint()), d)
                    .orElseGet(() -> space.take(choices(ways, heights, 1), d)));
        }
        return new Driven(screw, lines);
    }

    private static Stream<List<ScrewLine>> choices(List<Way> ways, Heights heights, int count) {
        return ways.stream().flatMap(way -> heights.choices(count).map(way::at));
    }

    /** One way to drive a joint's screws. */
    private record Way(Screw screw, Point head, Point along, double throughMm) {
        List<ScrewLine> at(List<Double> heights) {
            return heights.stream()
                    .map(z -> ScrewLine.level(head, z, along, screw.lengthMm()))
                    .toList();
        }
    }

    private Way way(JointPlan plan, Piece through, Point face, Point along, Piece into) {
        double fixed = Contact.thickMm(through.place().plan(), face, along.times(-1));
        double behind = Contact.thickMm(into.place().plan(), face, along);
        Screw screw = pieces.draft.screws.fit(plan.screw(), fixed, behind);
        if (screw.lengthMm() < fixed + LEAST_POINT * screw.diameterMm()) {
            screw = pieces.draft.screws.screw(fixed, behind);
        }
        return new Way(screw, face.minus(along.times(fixed)), along, fixed);
    }

    private boolean isOpen(Way way, double zMm) {
        return !pieces.isWood(way.head.minus(way.along.times(CLEAR_MM)), zMm);
    }

    /** The end of an upright; a board has none above it. */
    private static double endMm(Piece piece) {
        boolean isUpright = piece.role() == Piece.Role.POST || piece.role() == Piece.Role.BRACE;
        return isUpright ? piece.place().topMm() : Double.MAX_VALUE;
    }
}
