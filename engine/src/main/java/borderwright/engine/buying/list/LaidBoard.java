package borderwright.engine.buying.list;

import borderwright.engine.stock.Demand;
import java.util.List;

/**
 * Boards of one kind cut alike.
 *
 * @param supplier who sells them, or where they lie when owned
 * @param owned whether they are already there
 * @param section their section
 * @param lengthTicks length of each, ticks
 * @param trimTicks waste at each end, ticks
 * @param price price of one, minor units as priced, rounded down where a pack does not divide evenly
 * @param count how many boards are cut alike
 * @param pieces what is cut from each, in order
 */
public record LaidBoard(
        String supplier,
        boolean owned,
        String section,
        long lengthTicks,
        long trimTicks,
        long price,
        int count,
        List<LaidPiece> pieces) {
    public LaidBoard {
        pieces = List.copyOf(pieces);
    }

    /** The same board cut otherwise. */
    public LaidBoard with(List<LaidPiece> others) {
        return new LaidBoard(supplier, owned, section, lengthTicks, trimTicks, price, count, others);
    }

    /** Whether some of it is to be held back. */
    public boolean holdsBack() {
        return pieces.stream().anyMatch(piece -> Demand.isHeldBack(piece.label()));
    }

    /** Whether it is held back as a whole. */
    public boolean isHeldBack() {
        return holdsBack() && pieces.size() == 1;
    }

    /**
     * A piece on a board.
     *
     * @param label its label
     * @param lengthTicks its length, ticks
     */
    public record LaidPiece(String label, long lengthTicks) {}

    public static Builder builder(String supplier, String section) {
        return new Builder(supplier, section);
    }

    /** The parts of a board, set one by one; a single bought board that is not cut, where nothing else is set. */
    public static final class Builder {
        private final String supplier;
        private final String section;
        private boolean owned;
        private long lengthTicks;
        private long trimTicks;
        private long price;
        private int count = 1;
        private List<LaidPiece> pieces = List.of();

        private Builder(String supplier, String section) {
            this.supplier = supplier;
            this.section = section;
        }

        public Builder owned(boolean set) {
            owned = set;
            return this;
        }

        public Builder lengthTicks(long set) {
            lengthTicks = set;
            return this;
        }

        public Builder trimTicks(long set) {
            trimTicks = set;
            return this;
        }

        public Builder price(long set) {
            price = set;
            return this;
        }

        public Builder count(int set) {
            count = set;
            return this;
        }

        public Builder pieces(List<LaidPiece> set) {
            pieces = set;
            return this;
        }

        public LaidBoard build() {
            return new LaidBoard(supplier, owned, section, lengthTicks, trimTicks, price, count, pieces);
        }
    }
}
