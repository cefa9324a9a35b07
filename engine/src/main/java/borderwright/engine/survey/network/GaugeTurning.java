package borderwright.engine.survey.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Settles which way a gauge angle turns: a gauge shows no side. The side is taken from the places, and tried the other
 * way where the corner is so flat that the places do not decide.
 */
public final class GaugeTurning {
    private static final int MOST_ROUNDS = 4;
    /** Within this many standard deviations of straight, both ways are tried. */
    private static final double NEARLY_STRAIGHT = 6;

    private GaugeTurning() {}

    /** The network adjusted from these places, each gauge angle turned to its side. */
    public static Optional<Adjustment> settled(Network network, Positions start) {
        Network turned = turned(network, start);
        Optional<Adjustment> adjusted = LeastSquares.adjust(turned, start);
        for (int round = 0; round < MOST_ROUNDS && adjusted.isPresent(); round++) {
            Network again = turned(network, adjusted.get().positions());
            if (again.observations().equals(adjusted.get().network().observations())) {
                break;
            }
            Optional<Adjustment> next =
                    LeastSquares.adjust(again, adjusted.get().positions());
            if (next.isEmpty() || next.get().weightedSquares() >= adjusted.get().weightedSquares()) {
                break;
            }
            adjusted = next;
        }
        return adjusted.map(GaugeTurning::straightOnes);
    }

    /** Every gauge angle turned to the side on which the places have it. */
    private static Network turned(Network network, Positions at) {
        return network.with(
                network.observations().stream().map(o -> o.sidedAs(at)).toList());
    }

    private static Adjustment straightOnes(Adjustment adjusted) {
        Adjustment best = adjusted;
        for (int i = 0; i < best.network().observations().size(); i++) {
            if (best.network().observations().get(i) instanceof Observation.Gauge gauge
                    && StrictMath.PI - Math.abs(gauge.measured()) < NEARLY_STRAIGHT * gauge.sd()) {
                List<Observation> other = new ArrayList<>(best.network().observations());
                other.set(i, gauge.toOtherSide());
                Optional<Adjustment> tried = LeastSquares.adjust(best.network().with(other), best.positions());
                if (tried.isPresent() && tried.get().weightedSquares() < best.weightedSquares()) {
                    best = tried.get();
                }
            }
        }
        return best;
    }
}
