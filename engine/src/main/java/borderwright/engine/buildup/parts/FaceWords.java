package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.FaceOut;
import org.jspecify.annotations.Nullable;

/** Which face of a board goes out or up, and how it is told: the rings at its end grain curve round the heart. */
public final class FaceWords {
    public static final String UPRIGHT = "any face; ground end down, uncut factory end where there is one";

    private FaceWords() {}

    public static String out(BuildSpec rules) {
        return told(rules.faceOut(), "out");
    }

    public static String up(BuildSpec rules) {
        return told(rules.faceOut(), "up");
    }

    private static String told(@Nullable FaceOut wish, String where) {
        if (wish == null || wish == FaceOut.HEART_OUT) {
            return "heart side " + where + " (the rings at the end arch towards the other face)"
                    + (where.equals("up") ? ": it sheds water as it cups" : ": its edges cup into the box");
        }
        return wish == FaceOut.BARK_OUT
                ? "bark side " + where + " (the rings at the end arch towards this face)"
                : "better face " + where;
    }
}
