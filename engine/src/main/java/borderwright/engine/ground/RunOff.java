package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
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
    private final UnitSystem units;
    private final double leastFootMm;

    /** @param leastFootMm least room wanted under the boards, mm */
    RunOff(Outline outline, UnitSystem units, double leastFootMm) {
        this.outline = outline;
        this.units = units;
        this.leastFootMm = leastFootMm;
    }

    List<SiteClearance> of(List<Box> boxes, List<BoxGround> grounds, List<Message> notes, List<Problem> unmet) {
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
                    ClearanceMessage.CLEARANCE_FROM_WATER_BELOW.of(),
                    ClearanceMessage.CLEARANCE_OF_FEET.of(),
                    leastFootMm,
                    room,
                    SiteClearance.of(leastFootMm, room)));
            Point downhill = downhill(middle(boxes.get(b)));
            double fall = downhill.lengthMm();
            double over = units == UnitSystem.METRIC ? 1000 : FEET_4_MM;
            rows.add(new SiteClearance(
                    name,
                    ClearanceMessage.CLEARANCE_FROM_STANDING_WATER.of(),
                    levelled
                            ? ClearanceMessage.CLEARANCE_OF_FALL.of(over)
                            : ClearanceMessage.CLEARANCE_OF_UNKNOWN_FALL.of(),
                    LEAST_FALL * over,
                    fall * over,
                    levelled && fall >= LEAST_FALL - LEVEL / 10 ? Verdict.HOLDS : Verdict.NOT_SHOWN));
            if (levelled && fall > LEVEL) {
                towards(name, downhill, fall, notes, unmet);
            }
        }
        if (!levelled && !boxes.isEmpty()) {
            notes.add(GroundMessage.RUN_OFF_UNKNOWN.of());
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

    /** Notes which edge the water runs to: the one that lies most squarely downhill. */
    private void towards(String box, Point downhill, double fall, List<Message> notes, List<Problem> unmet) {
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
        if (outline.edges().get(edge).kind() == EdgeKind.HOUSE) {
            unmet.add(new Problem("ground.surface", GroundMessage.RUN_OFF.of(box, 1 / fall, name)));
        } else {
            notes.add(GroundMessage.RUN_OFF_SIDE.of(box, 1 / fall, name));
        }
    }
}
