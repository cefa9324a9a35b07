package borderwright.engine.strength;

/**
 * What is known of a box's strength. There is no fourth verdict, and none is given by default.
 *
 * @param kind which of the three
 * @param reason with numbers, or what is missing
 */
public record Verdict(Kind kind, String reason) {
    /** The verdict while no load path is modelled. */
    public static final Verdict NOT_MODELLED = new Verdict(
            Kind.NOT_SHOWN_TO_HOLD,
            "no load path is modelled yet, so neither the bow of long sides nor the screws have been worked out;"
                    + " brace long thin sides generously, and ask a licensed engineer where ground or a building is held back");

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
