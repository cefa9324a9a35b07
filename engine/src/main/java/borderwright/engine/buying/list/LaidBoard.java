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
}
