package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * The loads of one member in one of its own directions, and what they do between its ends (Macaulay's method).
 *
 * <p>All sums run over the loads to the left of the place asked for; an evenly varying load is taken as one that starts
 * and never ends, less the same from where it stops.
 */
final class SpanLoad {
    private final List<double[]> pieces = new ArrayList<>();

    /** Adds one load by its component in this direction. */
    void add(Loads.OnMember load, double component) {
        if (component != 0) {
            pieces.add(new double[] {load.from(), load.to(), load.atFrom() * component, load.atTo() * component});
        }
    }

    boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** Sum of the loads left of {@code x}, after integrating {@code times} times: 1 force, 2 its moment about x, and so on. */
    double integral(double x, int times) {
        double sum = 0;
        for (double[] p : pieces) {
            if (p[0] == p[1]) {
                sum += p[2] * power(x - p[0], times - 1);
            } else {
                double slope = (p[3] - p[2]) / (p[1] - p[0]);
                sum += p[2] * power(x - p[0], times) + slope * power(x - p[0], times + 1);
                sum -= p[3] * power(x - p[1], times) + slope * power(x - p[1], times + 1);
            }
        }
        return sum;
    }

    /** {@code <x>^n / n!}, zero left of the place. */
    private static double power(double x, int n) {
        if (x < 0) {
            return 0;
        }
        double value = 1;
        for (int i = 1; i <= n; i++) {
            value *= x / i;
        }
        return value;
    }

    /** Where the load changes its law. */
    List<Double> breaks() {
        List<Double> at = new ArrayList<>();
        for (double[] p : pieces) {
            at.add(p[0]);
            at.add(p[1]);
        }
        return at;
    }

    /**
     * Forces by which clamped ends hold a beam of length {@code l}: start force, start moment, end force, end moment.
     * Positive force against the load, moments by the right-hand rule for a beam that bends towards y.
     */
    double[] clampedEnds(double l) {
        double force = integral(l, 1);
        double moment = integral(l, 2);
        double slope = integral(l, 3);
        double sag = integral(l, 4);
        // Free end at l under the load alone, then brought back by the start force and moment.
        double start = 12 * sag / (l * l * l) - 6 * slope / (l * l);
        double startMoment = 6 * sag / (l * l) - 2 * slope / l;
        double endForce = -force - start;
        double endMoment = -(startMoment - start * l - moment);
        return new double[] {start, startMoment, endForce, endMoment};
    }
}
