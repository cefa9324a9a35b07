package borderwright.engine.buying.boards;

import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.Arrays;
import java.util.List;

/**
 * What is decided together: the boards of some sections, and further columns and rows that couple them, such as goods
 * and the value of an order.
 *
 * <p>Side rows read "at least {@code need}". A pack of board {@code j} of part {@code s} counts {@code sideValue[s][j]} in
 * row {@code sideRow[s][j]}, unless that is -1.
 */
public final class BoardModel {
    public final List<StockCase> parts;
    final long[] need;
    final int[][] sideRow;
    final long[][] sideValue;
    final List<Extra> extras;
    final List<Floor> floors;

    /** A whole-number column besides boards: goods. */
    public static final class Extra {
        final long cost;
        final int[] row;
        public final long[] value;
        final int most;
        public final int least;

        /**
         * @param most the most that any sensible answer takes
         * @param least below which none can be taken, at least 1
         */
        public Extra(long cost, int[] row, long[] value, int most, int least) {
            this.cost = cost;
            this.row = row;
            this.value = value;
            this.most = most;
            this.least = least;
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
            List<StockCase> parts,
            long[] need,
            int[][] sideRow,
            long[][] sideValue,
            List<Extra> extras,
            List<Floor> floors) {
        this.parts = List.copyOf(parts);
        this.need = need;
        this.sideRow = sideRow;
        this.sideValue = sideValue;
        this.extras = List.copyOf(extras);
        this.floors = List.copyOf(floors);
    }

    /** The same with floors, which follow from the parts and so exclude nothing. */
    public BoardModel withFloors(List<Floor> newFloors) {
        return new BoardModel(parts, need, sideRow, sideValue, extras, newFloors);
    }

    /** One section on its own. */
    static BoardModel of(StockCase stock) {
        int[] none = new int[stock.boards()];
        Arrays.fill(none, -1);
        return new BoardModel(
                List.of(stock), new long[0], new int[][] {none}, new long[1][stock.boards()], List.of(), List.of());
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
        long uncut = sideRow[s][j] < 0 || sideValue[s][j] == 0
                ? 0
                : (need[sideRow[s][j]] / sideValue[s][j] + 1) * stock.pack(j);
        most = Math.min(most, Math.max(stock.pieces() + uncut, (long) stock.least(j) * stock.pack(j)));
        return stock.cost(j) > 0 ? Math.min(most, (cost / stock.cost(j)) * stock.pack(j)) : most;
    }
}
