package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What has arrived and what is cut already; the plan is made again for the rest.
 *
 * @param boards that lie here
 * @param goods that have arrived
 * @param scope whether these goods are all
 */
public record Receipt(List<ReceivedBoard> boards, List<ReceivedGoods> goods, GoodsScope scope) {
    /** Whether goods that have arrived are those listed, or everything but boards. */
    public enum GoodsScope {
        LISTED,
        EVERYTHING
    }

    /** Nothing has arrived. */
    public static final Receipt NOTHING = new Receipt(List.of(), List.of(), GoodsScope.LISTED);

    public Receipt {
        boards = List.copyOf(boards);
        goods = List.copyOf(goods);
    }

    /** Whether everything but boards is here. */
    public boolean hasAllGoods() {
        return scope == GoodsScope.EVERYTHING;
    }

    /**
     * Boards of one length that have arrived, or one that is cut into already.
     *
     * @param section by its name
     * @param length true length, measured
     * @param usable how many can be used
     * @param sentBy who sent it, or the mark on it
     * @param cut labels of pieces cut from it already
     * @param left length left of a board that is cut into, if it was measured
     */
    public record ReceivedBoard(
            String section,
            Length length,
            int usable,
            Optional<String> sentBy,
            List<String> cut,
            Optional<Length> left) {
        public ReceivedBoard {
            cut = List.copyOf(cut);
        }
    }

    /** Goods that have arrived, in the shopping list's unit. */
    public record ReceivedGoods(String item, BigDecimal quantity) {}
}
