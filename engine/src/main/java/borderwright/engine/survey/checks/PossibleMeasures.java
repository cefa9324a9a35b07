package borderwright.engine.survey.checks;

import borderwright.engine.measure.Instrument;
import borderwright.engine.message.Message;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.shape.LineOfSight;
import java.util.ArrayList;
import java.util.List;

/** The measures that could still be taken between the points there are. */
final class PossibleMeasures {
    private static final double SHORTEST_MM = 100;
    private static final double LONGEST_MM = 60_000;
    /** What a second taking of the same length counts less than a new one. */
    private static final double AGAIN = -2;

    private final Adjustment adjustment;
    private final Network network;
    private final CornerOrder order;

    PossibleMeasures(FieldBook book, Adjustment adjustment) {
        this.adjustment = adjustment;
        this.network = adjustment.network();
        this.order = book.order();
    }

    /**
     * One possible measure.
     *
     * @param observation with the value that it would read now
     * @param name what to do, such as a tape from B to D
     * @param ease how easily it is taken, about -2 to 2
     */
    record Possible(Observation observation, Message name, double ease) {}

    /** Lengths between two points of the plan: those not taped yet, and those taped once, again. */
    List<Possible> tapes() {
        List<Possible> tapes = new ArrayList<>();
        LineOfSight sight = new LineOfSight(order, adjustment.positions());
        for (int a = 0; a < network.points(); a++) {
            for (int b = a + 1; b < network.points(); b++) {
                if (!network.inPlan(a) || !network.inPlan(b)) {
                    continue;
                }
                double length = adjustment
                        .positions()
                        .at(a)
                        .distanceMm(adjustment.positions().at(b));
                if (length < SHORTEST_MM || length > LONGEST_MM) {
                    continue;
                }
                boolean again = isTaped(a, b);
                double ease = (again ? AGAIN : 0) + sight.ease(a, b);
                NextMeasureMessage tape = again ? NextMeasureMessage.NEXT_SECOND_TAPE : NextMeasureMessage.NEXT_TAPE;
                double sd = Instrument.tapeFor(length).lengthSdMm(length);
                tapes.add(new Possible(new Observation.Distance(a, b, length, sd), between(tape, a, b), ease));
            }
        }
        return tapes;
    }

    private boolean isTaped(int a, int b) {
        return network.observations().stream().anyMatch(o -> o.isTape(a, b));
    }

    private Message between(NextMeasureMessage measure, int a, int b) {
        return measure.of(network.name(a), network.name(b));
    }

    /** Angles between neighbouring corners. */
    List<Possible> angles() {
        List<Possible> angles = new ArrayList<>();
        List<Integer> corners = order.corners();
        double sd = StrictMath.toRadians(Instrument.GAUGE.angleSdDeg());
        int ends = order.closed() ? 0 : 1;
        for (int i = ends; i < corners.size() - ends; i++) {
            int before = corners.get(Math.floorMod(i - 1, corners.size()));
            int at = corners.get(i);
            int after = corners.get((i + 1) % corners.size());
            double value = new Observation.Turn(at, after, before, 0, sd).computed(adjustment.positions());
            Message name =
                    NextMeasureMessage.NEXT_ANGLE.of(network.name(at), network.name(before), network.name(after));
            angles.add(new Possible(new Observation.Turn(at, after, before, value, sd), name, 0));
        }
        return angles;
    }

    /** Rises between levelled points, by water level. */
    List<Possible> rises() {
        List<Possible> rises = new ArrayList<>();
        double sd = Instrument.WATER_LEVEL.lengthSdMm(0);
        for (int a = 0; a < network.points(); a++) {
            for (int b = a + 1; b < network.points(); b++) {
                if (network.hasHeight(a) && network.hasHeight(b)) {
                    double value = adjustment.positions().height(b)
                            - adjustment.positions().height(a);
                    Observation rise = new Observation.HeightDifference(a, b, value, sd);
                    rises.add(new Possible(rise, between(NextMeasureMessage.NEXT_RISE, a, b), 0));
                }
            }
        }
        return rises;
    }
}
