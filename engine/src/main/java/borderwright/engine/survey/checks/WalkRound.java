package borderwright.engine.survey.checks;

import borderwright.engine.geometry.Point;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import borderwright.engine.survey.checks.Tapes.Taped;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Observation;
import java.util.List;
import java.util.Optional;

/** The misclosure of a walk round the border by sides and inside angles, where all of them were measured. */
final class WalkRound {
    private final FieldBook book;
    private final Tapes tapes;

    WalkRound(FieldBook book, Tapes tapes) {
        this.book = book;
        this.tapes = tapes;
    }

    /** Sides and angles all the way round: where the walk ends beside where it began. */
    Optional<Closing> closing() {
        List<Integer> ring = book.order().corners();
        int n = ring.size();
        if (!book.order().closed()) {
            return Optional.empty();
        }
        double[] values = new double[2 * n - 1];
        double[] sds = new double[2 * n - 1];
        for (int i = 0; i < n; i++) {
            Taped side = tapes.firstBetween(ring.get(i), ring.get((i + 1) % n));
            if (side == null || (i > 0 && !insideAngle(ring, i, values, sds))) {
                return Optional.empty();
            }
            values[i] = side.lengthMm();
            sds[i] = side.sdMm();
        }
        return Optional.of(
                Propagation.closing(ClosingMessage.CLOSING_WALK_ROUND.of(), values, sds, v -> misclosure(v, n)));
    }

    /** Finds the angle inside the border at corner {@code i} and puts it behind the sides. */
    private boolean insideAngle(List<Integer> ring, int i, double[] values, double[] sds) {
        int n = ring.size();
        int before = ring.get(i - 1);
        int at = ring.get(i);
        int after = ring.get((i + 1) % n);
        for (Observation observation : book.network().observations()) {
            double angle = 0;
            if (observation instanceof Observation.Gauge g && g.at() == at) {
                angle = joins(g.from(), g.to(), before, after) ? g.measured() * (g.from() == after ? 1 : -1) : 0;
            } else if (observation instanceof Observation.Turn t && t.at() == at) {
                angle = joins(t.from(), t.to(), before, after) ? t.measured() * (t.from() == after ? 1 : -1) : 0;
            }
            if (angle != 0) {
                values[n + i - 1] = angle < 0 ? angle + 2 * StrictMath.PI : angle;
                sds[n + i - 1] = observation.sd();
                return true;
            }
        }
        return false;
    }

    private static boolean joins(int from, int to, int before, int after) {
        return (from == before && to == after) || (from == after && to == before);
    }

    private static double misclosure(double[] values, int sides) {
        Point at = new Point(0, 0);
        double bearing = 0;
        for (int i = 0; i < sides; i++) {
            bearing += i == 0 ? 0 : StrictMath.PI - values[sides + i - 1];
            at = at.plus(new Point(StrictMath.cos(bearing), StrictMath.sin(bearing)).times(values[i]));
        }
        return at.lengthMm();
    }
}
