package borderwright.engine.stock;

/**
 * Pieces of one length wanted from one section.
 *
 * @param section name of the section
 * @param lengthTicks length of each, long point to long point, ticks
 * @param quantity how many, at least 1
 * @param label label of the pieces; equal demands may carry different labels
 */
public record Demand(String section, long lengthTicks, int quantity, String label) {
    private static final String HELD_BACK = "held back ";

    public Demand {
        if (lengthTicks <= 0 || quantity <= 0) {
            throw new IllegalArgumentException(
                    "a demand needs a length and a quantity, got " + lengthTicks + " ticks x " + quantity);
        }
    }

    /**
     * A board to keep whole until the last planter stands.
     *
     * @param number from 1 in its section
     */
    public static Demand heldBack(String section, long lengthTicks, int number) {
        return new Demand(section, lengthTicks, 1, HELD_BACK + number + " of " + section);
    }

    /** Whether a label is that of a board to keep whole. */
    public static boolean isHeldBack(String label) {
        return label.startsWith(HELD_BACK);
    }
}
