package borderwright.engine.strength;

/**
 * What is known of a box's strength. There is no fourth verdict, and none is given by default.
 *
 * @param kind which of the three
 * @param reason with numbers, or what is missing
 */
public record Verdict(Kind kind, String reason) {
    /** The three verdicts. */
    public enum Kind {
        HOLDS("holds"),
        DOES_NOT_HOLD("does not hold"),
        NOT_SHOWN_TO_HOLD("not shown to hold");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The verdict in a sentence. */
    public String sentence() {
        return kind.words() + ": " + reason;
    }
}
