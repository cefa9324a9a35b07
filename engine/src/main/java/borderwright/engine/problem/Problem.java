package borderwright.engine.problem;

/**
 * One fault in what a person said, in a sentence that they can act on.
 *
 * @param code stable short name of the kind of fault, lower case with hyphens, documented in docs/problems.md
 * @param where field path in the garden document, such as {@code survey.measures[3].is}; empty for the whole document
 * @param what what is wrong, with the value found and its unit
 * @param right what would be right; empty when {@code what} already says it
 */
public record Problem(String code, String where, String what, String right) {
    public Problem {
        if (code.isBlank() || what.isBlank()) {
            throw new IllegalArgumentException(
                    "a problem needs a code and a sentence, got '" + code + "', '" + what + "'");
        }
    }

    /** The whole sentence without the place: what is wrong and what would be right. */
    public String sentence() {
        return right.isEmpty() ? what : what + " " + right;
    }
}
