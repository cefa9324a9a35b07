package borderwright.engine.stock.row;

import borderwright.engine.measure.Length;
import borderwright.engine.stock.Demand;
import java.util.List;

/**
 * A board that is there, or will be when the order comes.
 *
 * @param number chalked on it, unique
 * @param section its section
 * @param length its true length
 * @param from supplier, or where in the shed it lies
 * @param owned whether it is there already
 * @param trim cut off each end first, kerf included
 * @param meantFor labels of the pieces that the basket cuts from it, in order; empty when nothing is known
 */
public record BoardInHand(
        int number, String section, Length length, String from, boolean owned, Length trim, List<String> meantFor) {
    public BoardInHand {
        meantFor = List.copyOf(meantFor);
    }

    /** A board that comes with the order, meant for nothing yet. */
    public static BoardInHand bought(int number, String section, Length length, String supplier, Length trim) {
        return new BoardInHand(number, section, length, supplier, false, trim, List.of());
    }

    /** The same board where the basket cuts some pieces from it. */
    public BoardInHand meantFor(List<String> labels) {
        return new BoardInHand(number, section, length, from, owned, trim, labels);
    }

    /** Whether it is kept whole until the last planter stands. */
    public boolean isHeldBack() {
        return meantFor.stream().anyMatch(Demand::isHeldBack);
    }
}
