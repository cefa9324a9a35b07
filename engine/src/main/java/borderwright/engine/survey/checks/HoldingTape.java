package borderwright.engine.survey.checks;

import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.List;
import java.util.Optional;

/**
 * A new length that would hold the worst corner.
 *
 * @param from one end
 * @param to the other
 * @param heldMm half the long axis of the worst corner's ellipse with it, mm
 */
record HoldingTape(String from, String to, double heldMm) {
    /** Lengths tried one by one for a corner that is all but free to move. */
    private static final int MOST_TRIED = 200;

    /**
     * The new length that helps the worst corner most; empty when none can be taken. A corner that is all but free has
     * cofactors of rounding, so each length is put into the network afresh.
     */
    static Optional<HoldingTape> best(FieldBook book, Adjustment adjustment) {
        Network network = adjustment.network();
        Optional<HoldingTape> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        List<PossibleMeasures.Possible> tapes = new PossibleMeasures(book, adjustment).tapes();
        for (PossibleMeasures.Possible possible : tapes.subList(0, Math.min(tapes.size(), MOST_TRIED))) {
            Network more = network.inserting(network.observations().size(), possible.observation());
            double worst = Adjustment.at(more, adjustment.positions())
                    .map(with -> worstMm(book, with))
                    .orElse(Double.POSITIVE_INFINITY);
            // the same but for rounding: the first in the order of the corners
            if (worst < least * (1 - 1e-6) && possible.observation() instanceof Observation.Distance tape) {
                least = worst;
                best = Optional.of(new HoldingTape(network.name(tape.a()), network.name(tape.b()), worst));
            }
        }
        return best;
    }

    /** Half the long axis of the worst corner's ellipse, mm. */
    static double worstMm(FieldBook book, Adjustment adjusted) {
        double worst = 0;
        for (int corner : book.order().corners()) {
            worst = Math.max(worst, adjusted.ellipse(corner).majorMm());
        }
        return worst;
    }
}
