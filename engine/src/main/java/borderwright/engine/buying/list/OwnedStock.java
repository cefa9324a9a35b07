package borderwright.engine.buying.list;

/**
 * Boards that are there already; they cost nothing.
 *
 * @param section their section
 * @param lengthTicks true length of each, ticks
 * @param count how many
 * @param label where they lie, or what is written on them
 * @param trimTicks waste at each end, ticks; none for what has lain in the shed, cut clean
 */
public record OwnedStock(String section, long lengthTicks, int count, String label, long trimTicks) {
    /** Boards that lose no trim. */
    public OwnedStock(String section, long lengthTicks, int count, String label) {
        this(section, lengthTicks, count, label, 0);
    }

    public OwnedStock {
        if (lengthTicks <= 0 || count < 0 || trimTicks < 0) {
            throw new IllegalArgumentException("an owned board needs a length, got " + lengthTicks + " x " + count);
        }
    }
}
