package borderwright.engine.buying;

/**
 * Boards already in the shed; they cost nothing and lose no trim.
 *
 * @param section their section
 * @param lengthTicks true length of each, ticks
 * @param count how many
 * @param label where they lie, or the mark on them
 */
public record OwnedStock(String section, long lengthTicks, int count, String label) {
    public OwnedStock {
        if (lengthTicks <= 0 || count < 0) {
            throw new IllegalArgumentException("an owned board needs a length, got " + lengthTicks + " x " + count);
        }
    }
}
