package borderwright.engine.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;

/**
 * The rise of a circular arc over a known chord from all that was measured of it: offsets from the chord and tapes laid along the
 * arc, by least squares (Gauss-Newton in one unknown).
 *
 * <p>With chord {@code c}, rise {@code v} and radius {@code R = (c^2/4 + v^2) / 2v}, the offset so far {@code x} from the middle is
 * {@code v - x^2 / (R + sqrt(R^2 - x^2))}, and the arc is {@code c (1 + t^2) atan(t) / t} long with {@code t = 2v/c}; both grow
 * with the rise up to a half circle.
 */
final class CurveFit {
    /** A reading off by more of its standard deviations is wrong: a false alarm in a thousand (Baarda 1968). */
    private static final double MOST_DEVIATIONS = 3.29;

    private static final double LEAST_RISE_MM = 1e-3;
    private static final double STEP_MM = 1e-3;
    private static final int HALVINGS = 80;
    private static final int ITERATIONS = 30;

    private final double chordMm;
    private final List<Seen> seen = new ArrayList<>();

    CurveFit(double chordMm) {
        this.chordMm = chordMm;
    }

    /** A reading, what it would be for a rise, and its standard deviation, mm. */
    private record Seen(double readMm, double sdMm, DoubleUnaryOperator predicted) {
        /** How much the reading grows with the rise. */
        double slope(double riseMm) {
            return (predicted.applyAsDouble(riseMm + STEP_MM) - predicted.applyAsDouble(riseMm - STEP_MM))
                    / (2 * STEP_MM);
        }

        double weight() {
            return 1 / (sdMm * sdMm);
        }
    }

    /**
     * The rise.
     *
     * @param riseMm between 0 and half the chord
     * @param sdMm its standard deviation
     * @param wrong number of the reading that the others contradict most; empty where they agree
     * @param impliedMm what that reading would be by all of them; 0 where they agree
     */
    record Rise(double riseMm, double sdMm, OptionalInt wrong, double impliedMm) {}

    void offset(double alongMm, double readMm, double sdMm) {
        seen.add(new Seen(readMm, sdMm, rise -> offsetMm(chordMm, rise, alongMm)));
    }

    void tape(double readMm, double sdMm) {
        seen.add(new Seen(readMm, sdMm, rise -> lengthMm(chordMm, rise)));
    }

    /** How far an arc stands off its chord. */
    static double offsetMm(double chordMm, double riseMm, double alongMm) {
        double x = alongMm - chordMm / 2;
        double radius = (chordMm * chordMm / 4 + riseMm * riseMm) / (2 * riseMm);
        return riseMm - x * x / (radius + StrictMath.sqrt(radius * radius - x * x));
    }

    static double lengthMm(double chordMm, double riseMm) {
        double t = 2 * riseMm / chordMm;
        return chordMm * (1 + t * t) * StrictMath.atan(t) / t;
    }

    boolean isEmpty() {
        return seen.isEmpty();
    }

    /** The most that a reading can be: on a half circle. */
    double mostMm(int reading) {
        return seen.get(reading).predicted.applyAsDouble(chordMm / 2);
    }

    boolean isBeyondHalfCircle(int reading) {
        return seen.get(reading).readMm > mostMm(reading);
    }

    Rise fit() {
        double rise = start();
        for (int i = 0; i < ITERATIONS; i++) {
            double at = rise;
            double normal = seen.stream()
                    .mapToDouble(s -> s.slope(at) * s.slope(at) * s.weight())
                    .sum();
            double right = seen.stream()
                    .mapToDouble(s -> s.slope(at) * s.weight() * (s.readMm - s.predicted.applyAsDouble(at)))
                    .sum();
            rise = StrictMath.min(chordMm / 2, StrictMath.max(2 * LEAST_RISE_MM, at + right / normal));
        }
        return judged(rise);
    }

    /** Of the reading that holds the rise best by itself. */
    private double start() {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (Seen one : seen) {
            double alone = alone(one);
            double sd = one.sdMm / one.slope(alone);
            if (sd < least) {
                least = sd;
                best = alone;
            }
        }
        return best;
    }

    private double alone(Seen one) {
        double low = 2 * LEAST_RISE_MM;
        double high = chordMm / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (one.predicted.applyAsDouble(middle) < one.readMm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private Rise judged(double rise) {
        double normal = seen.stream()
                .mapToDouble(s -> s.slope(rise) * s.slope(rise) * s.weight())
                .sum();
        double worst = MOST_DEVIATIONS;
        OptionalInt wrong = OptionalInt.empty();
        double implied = 0;
        for (int i = 0; i < seen.size(); i++) {
            Seen one = seen.get(i);
            double redundancy = 1 - one.slope(rise) * one.slope(rise) * one.weight() / normal;
            double off = StrictMath.abs(one.readMm - one.predicted.applyAsDouble(rise));
            if (redundancy > 1e-9 && off / (one.sdMm * StrictMath.sqrt(redundancy)) > worst) {
                worst = off / (one.sdMm * StrictMath.sqrt(redundancy));
                wrong = OptionalInt.of(i);
                implied = one.predicted.applyAsDouble(rise);
            }
        }
        return new Rise(rise, 1 / StrictMath.sqrt(normal), wrong, implied);
    }
}
