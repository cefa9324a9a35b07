package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.StrapLegs;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Straps over two uprights of a corner, or round an inner corner over its boards, with their screws. */
final class StrapScrews {
    /** Between the screws of a leg: five diameters of 4 mm. */
    private static final double LEG_MM = 20;

    /** A strap stays so far below an upright's end, mm: seven diameters of its screws, a3,c of EN 1995-1-1 table 8.2. */
    private static final double BELOW_END_MM = 28;

    private static final double STEP_MM = 4;
    private static final int STEPS = 6;

    private final PlacedPieces pieces;
    private final ScrewSpace space;
    private final Map<String, List<ScrewLine>> placed = new HashMap<>();

    StrapScrews(PlacedPieces pieces, ScrewSpace space) {
        this.pieces = pieces;
        this.space = space;
    }

    /** The screws that were placed with their straps. */
    Driven screws(JointPlan plan) {
        return new Driven(plan.screw(), Objects.requireNonNull(placed.get(key(plan)), key(plan)));
    }

    private static String key(JointPlan plan) {
        return plan.through() + " " + plan.into();
    }

    /** One strap in each course, half-way up it but below the ends of both uprights. */
    Driven straps(JointPlan plan) {
        JointPlan screwed = pieces.into(plan.into()).stream()
                .filter(p -> p.hold() == Hold.STRAP_TO_UPRIGHT && key(p).equals(key(plan)))
                .findFirst()
                .orElseThrow();
        List<ScrewLine> straps = new ArrayList<>();
        List<ScrewLine> screws = new ArrayList<>();
        double end = StrictMath.min(
                pieces.piece(plan.through()).place().topMm(),
                pieces.piece(plan.into()).place().topMm());
        for (Course course : pieces.draft.courses()) {
            double z = StrictMath.min((course.bottomMm() + course.topMm()) / 2, end - BELOW_END_MM);
            List<List<ScrewLine>> choices = new ArrayList<>();
            choices.add(legs(screwed, z));
            for (int step = 1; step <= STEPS; step++) {
                choices.add(legs(screwed, z - step * STEP_MM));
                if (z + step * STEP_MM <= end - BELOW_END_MM) {
                    choices.add(legs(screwed, z + step * STEP_MM));
                }
            }
            List<ScrewLine> taken = space.take(choices.stream(), screwed.screw().diameterMm());
            screws.addAll(taken);
            straps.add(strap(taken));
        }
        placed.put(key(plan), screws);
        return new Driven(plan.screw(), straps);
    }

    /** In the middle of its screws. */
    private static ScrewLine strap(List<ScrewLine> screws) {
        Point sum = screws.stream().map(ScrewLine::head).reduce(new Point(0, 0), Point::plus);
        return ScrewLine.level(sum.times(1.0 / screws.size()), screws.get(0).zMm(), new Point(1, 0), 0);
    }

    private List<ScrewLine> legs(JointPlan plan, double z) {
        List<ScrewLine> screws = new ArrayList<>();
        if (plan.use().code() == FixingMessage.STRAPS_TO_BOARDS) {
            SideFrame side = pieces.side(plan.side());
            SideFrame before = pieces.side(plan.side() - 1);
            for (double off : new double[] {StrapLegs.FIRST_MM, StrapLegs.SECOND_MM}) {
                screws.add(onBoard(plan, before, before.lengthMm() - off, z));
            }
            for (double off : new double[] {StrapLegs.FIRST_MM, StrapLegs.SECOND_MM}) {
                screws.add(onBoard(plan, side, off, z));
            }
        } else {
            screws.addAll(onUpright(plan, plan.through(), plan.into(), z));
            screws.addAll(onUpright(plan, plan.into(), plan.through(), z));
        }
        return screws;
    }

    private ScrewLine onBoard(JointPlan plan, SideFrame side, double s, double z) {
        return ScrewLine.level(
                side.at(s, pieces.draft.wallMm()),
                z,
                side.inwards().times(-1),
                plan.screw().lengthMm());
    }

    /** On the face that an upright turns into the box, as near to the other one as a screwdriver comes. */
    private List<ScrewLine> onUpright(JointPlan plan, String own, String other, double z) {
        Face face = face(own);
        Point along = face.off.left();
        boolean fromLow = pieces.piece(other).place().plan().meanCorner().dot(along) < (face.from + face.to) / 2;
        double step = StrictMath.min(LEG_MM, face.lengthMm() / 3);
        int count = plan.hold().perJoint() / 2;
        List<ScrewLine> screws = List.of();
        for (double start = step; start + (count - 1) * step <= face.lengthMm() - step / 2; start += STEP_MM) {
            List<ScrewLine> leg = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                double at = fromLow ? face.from + start + k * step : face.to - start - k * step;
                Point head = face.off.times(face.deepest).plus(along.times(at));
                leg.add(ScrewLine.level(
                        head, z, face.off.times(-1), plan.screw().lengthMm()));
            }
            screws = screws.isEmpty() ? leg : screws;
            if (leg.stream().noneMatch(l -> pieces.isWood(l.planAt(-FlankScrews.CLEAR_MM), z))) {
                return leg;
            }
        }
        return screws;
    }

    /** A flat face, so far in a direction, from one distance to another on the left of it. */
    private record Face(Point off, double deepest, double from, double to) {
        static Face of(Ring ring, Point off) {
            double deepest =
                    ring.corners().stream().mapToDouble(p -> p.dot(off)).max().orElseThrow();
            double[] along = ring.corners().stream()
                    .filter(p -> p.dot(off) > deepest - 1)
                    .mapToDouble(p -> p.dot(off.left()))
                    .sorted()
                    .toArray();
            return new Face(off, deepest, along[0], along[along.length - 1]);
        }

        double lengthMm() {
            return to - from;
        }
    }

    /**
     * Out of the wall, or of the divider, that an upright stands against. One that stands against a divider may touch the wall
     * with a corner as well, and has no face that way.
     */
    private Face face(String label) {
        Ring ring = pieces.piece(label).place().plan();
        List<Face> faces = new ArrayList<>();
        for (JointPlan plan : pieces.into(label)) {
            if (plan.hold() == Hold.WALL_TO_UPRIGHT) {
                faces.add(Face.of(ring, pieces.side(plan.side()).inwards()));
            }
        }
        for (JointPlan plan : pieces.into(label)) {
            if (plan.hold() == Hold.DIVIDER_TO_UPRIGHT) {
                Piece board = pieces.divider(plan.through()).get(0);
                Contact.between(board.place().plan(), ring)
                        .ifPresent(contact -> faces.add(Face.of(ring, contact.into())));
            }
        }
        return faces.stream()
                .filter(face -> face.lengthMm() >= LEG_MM)
                .findFirst()
                .or(() -> faces.stream().max(Comparator.comparingDouble(Face::lengthMm)))
                .orElseThrow(() -> new IllegalArgumentException(label + " stands against nothing"));
    }
}
