package borderwright.app.document;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import borderwright.pack.language.Language;
import java.util.Comparator;

/**
 * A fault with its place in the document.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param problem what is wrong and what would be right
 */
public record LocatedProblem(int line, int column, Problem problem) {
    /** In the order of the document. */
    public static final Comparator<LocatedProblem> BY_PLACE =
            Comparator.comparingInt(LocatedProblem::line).thenComparingInt(LocatedProblem::column);

    public LocatedProblem {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("lines and columns count from 1, got " + line + ":" + column);
        }
    }

    /** One line for a person: {@code FILE:LINE:COLUMN: FIELD: what is wrong. What would be right.} */
    public String print(String file) {
        String field = problem.where().isEmpty() ? "" : problem.where() + ": ";
        return file + ":" + line + ":" + column + ": " + field
                + problem.sentence(Language.english().in(UnitSystem.METRIC));
    }
}
