package borderwright.engine.stock;

/**
 * Pieces of one length wanted from one section.
 *
 * @param section name of the section
 * @param lengthTicks length of each, long point to long point, ticks
 * @param quantity how many, at least 1
 * @param label mark of the pieces; equal demands may carry different labels
 */
public record Demand(String section, long lengthTicks, int quantity, String label) {
    public Demand {
        if (lengthTicks <= 0 || quantity <= 0) {
            throw new IllegalArgumentException(
                    "a demand needs a length and a quantity, got " + lengthTicks + " ticks x " + quantity);
        }
    }
}
