package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the water goes that runs out of planters on hard ground: how far the ground falls, which way, and what room the feet
 * leave it under the boards.
 *
 * <p>Paving falls 1 in 80 at the least (common practice, no source). Water that runs towards a house is for somebody to stop
 * before anything is built.
 */
final class RunOff {
    private static final double LEAST_FALL = 1.0 / 80;
    private static final double STEP_MM = 500;
    private static final double FEET_4_MM = 1219.2;
    private static final double LEVEL = 0.0005;

    private final Outline outline;
    private final LengthFormat format;
    private final double leastFootMm;

    /** @param leastFootMm least room wanted under the boards, mm */
    RunOff(Outline outline, LengthFormat format, double leastFootMm) {
        this.outline = outline;
        this.format = format;
        this.leastFootMm = leastFootMm;
    }

    List<SiteClearance> of(List<Box> boxes, List<BoxGround> grounds, List<String> notes, List<Problem> unmet) {
        List<SiteClearance> rows = new ArrayList<>();
        boolean levelled = !outline.ground().spots().isEmpty();
        for (int b = 0; b < boxes.size(); b++) {
            String name = boxes.get(b).plan().name();
            double room = grounds.get(b).feet().stream()
                    .mapToDouble(BoxGround.Foot::heightMm)
                    .min()
                    .orElse(0);
            rows.add(new SiteClearance(
                    name,
                    "water under its boards",
                    "room left by its feet",
                    leastFootMm,
                    room,
                    SiteClearance.of(leastFootMm, room)));
            Point downhill = downhill(middle(boxes.get(b)));
            double fall = downhill.lengthMm();
            double over = format.units() == UnitSystem.METRIC ? 1000 : FEET_4_MM;
            rows.add(new SiteClearance(
                    name,
                    "standing water",
                    levelled
                            ? "fall of the ground over " + format.length(over)
                            : "fall of the ground, which was not levelled,",
                    LEAST_FALL * over,
                    fall * over,
                    levelled && fall >= LEAST_FALL - LEVEL / 10 ? Verdict.HOLDS : Verdict.NOT_SHOWN));
            if (levelled && fall > LEVEL) {
                towards(name, downhill, fall, notes, unmet);
            }
        }
        if (!levelled && !boxes.isEmpty()) {
            notes.add(
                    "Not shown to hold: no levels were taken, so nobody knows where water from the planters runs. Pour a"
                            + " bucket out before you choose where outlets go, and take levels.");
        }
        return rows;
    }

    private static Point middle(Box box) {
        var centre = box.plan().outline().toJts().getCentroid();
        return new Point(centre.getX(), centre.getY());
    }

    /** How far the ground falls for the way along it, and which way. */
    private Point downhill(Point at) {
        double x = outline.ground().heightMm(at.plus(new Point(STEP_MM, 0)))
                - outline.ground().heightMm(at.minus(new Point(STEP_MM, 0)));
        double y = outline.ground().heightMm(at.plus(new Point(0, STEP_MM)))
                - outline.ground().heightMm(at.minus(new Point(0, STEP_MM)));
        return new Point(-x / (2 * STEP_MM), -y / (2 * STEP_MM));
    }

    /** Says which edge the water runs to: the one that lies most squarely downhill. */
    private void towards(String box, Point downhill, double fall, List<String> notes, List<Problem> unmet) {
        int edge = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int e = 0; e < outline.edges().size(); e++) {
            Point outwards = outline.ring().direction(e).left().times(-1);
            double along = outwards.dot(downhill.unit());
            if (along > most) {
                most = along;
                edge = e;
            }
        }
        String name = outline.edgeName(edge);
        String falls = "The ground under " + box + " falls 1 in " + Math.round(1 / fall) + " towards " + name;
        if (outline.edges().get(edge).kind() == EdgeKind.HOUSE) {
            unmet.add(new Problem(
                    "run-off",
                    "ground.surface",
                    falls + ", which is the house: water from the planter would run against it.",
                    "Put outlets on the other side, keep a channel or a drain along the house, and have somebody who"
                            + " knows the building look before you build."));
        } else {
            notes.add(falls + ": put its outlets on that side, and leave the gaps under its boards open.");
        }
    }
}
