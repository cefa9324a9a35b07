package borderwright.engine.buying.boards;

import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.Collections;
import java.util.List;

/**
 * What is decided together: the boards of some sections, and further columns and rows that couple them, such as goods
 * and the value of an order.
 *
 * <p>Side rows read "at least {@code need}".
 */
public final class BoardModel {
    public final List<StockCase> parts;
    final long[] need;
    private final List<List<Side>> sides;
    final List<Extra> extras;
    final List<Floor> floors;

    /**
     * What one of something counts in a side row.
     *
     * @param row index of the side row; -1 for none
     * @param value what it counts there, at least 0
     */
    public record Side(int row, long value) {
        /** In no row. */
        public static final Side NONE = new Side(-1, 0);

        boolean isNone() {
            return row < 0;
        }
    }

    /**
     * A whole-number column besides boards: goods.
     *
     * @param cost cost of one
     * @param sides the side rows it counts in
     * @param least below which none can be taken, at least 1
     * @param most the most that any sensible answer takes
     */
    public record Extra(long cost, List<Side> sides, int least, int most) {
        public Extra {
            sides = List.copyOf(sides);
        }
    }

    /** What the packs of a part come to at least, each counted at a value. */
    public static final class Floor {
        public final int part;
        public final long[] value;
        public final long least;

        /**
         * @param part index of the part
         * @param value what a pack of each board counts, at least 0
         * @param least no packs that serve the part come to less
         */
        public Floor(int part, long[] value, long least) {
            this.part = part;
            this.value = value;
            this.least = least;
        }
    }

    public BoardModel(
            List<StockCase> parts, long[] need, List<List<Side>> sides, List<Extra> extras, List<Floor> floors) {
        this.parts = List.copyOf(parts);
        this.need = need;
        this.sides = sides.stream().map(List::copyOf).toList();
        this.extras = List.copyOf(extras);
        this.floors = List.copyOf(floors);
    }

    /** The same with floors, which follow from the parts and so exclude nothing. */
    public BoardModel withFloors(List<Floor> newFloors) {
        return new BoardModel(parts, need, sides, extras, newFloors);
    }

    /** One section on its own. */
    static BoardModel of(StockCase stock) {
        List<Side> none = Collections.nCopies(stock.boards(), Side.NONE);
        return new BoardModel(List.of(stock), new long[0], List.of(none), List.of(), List.of());
    }

    /** What a pack of board {@code j} of part {@code s} counts beside it. */
    Side side(int s, int j) {
        return sides.get(s).get(j);
    }

    /** Whether offcuts count. */
    boolean keeps() {
        return parts.stream().anyMatch(StockCase::keeps);
    }

    /** Whether sizes do not say all of what fits. */
    boolean isRuled() {
        return parts.stream().anyMatch(StockCase::isRuled);
    }

    /** Whether packings, one for each part, can be cut. */
    boolean admits(List<Packing> packings) {
        for (int s = 0; s < packings.size(); s++) {
            if (!parts.get(s).admits(packings.get(s))) {
                return false;
            }
        }
        return true;
    }

    boolean isCoupled() {
        return need.length > 0;
    }

    /** Most boards of a type that any sensible answer of at most {@code cost} uses. */
    long mostBoards(int s, int j, long cost) {
        StockCase stock = parts.get(s);
        long most = stock.available(j);
        // Only a side row gives a reason to buy boards that nothing is cut from, beyond the rest of a pack.
        Side side = side(s, j);
        long uncut = side.isNone() || side.value == 0 ? 0 : (need[side.row] / side.value + 1) * stock.pack(j);
        most = Math.min(most, Math.max(stock.pieces() + uncut, (long) stock.least(j) * stock.pack(j)));
        return stock.cost(j) > 0 ? Math.min(most, (cost / stock.cost(j)) * stock.pack(j)) : most;
    }
}
