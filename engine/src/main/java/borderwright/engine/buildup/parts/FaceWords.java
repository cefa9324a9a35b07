package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.message.Message;

/** Which face of a board goes out or up: the heart side unless the rules ask for another. */
public final class FaceWords {
    private FaceWords() {}

    /** For a board on edge. */
    public static Message out(BuildSpec rules) {
        return switch (rules.faceOut()) {
            case HEART_OUT -> FaceMessage.HEART_SIDE_OUT.of();
            case BARK_OUT -> FaceMessage.BARK_SIDE_OUT.of();
            case BEST_OUT -> FaceMessage.BETTER_FACE_OUT.of();
        };
    }

    /** For a board lying flat. */
    public static Message up(BuildSpec rules) {
        return switch (rules.faceOut()) {
            case HEART_OUT -> FaceMessage.HEART_SIDE_UP.of();
            case BARK_OUT -> FaceMessage.BARK_SIDE_UP.of();
            case BEST_OUT -> FaceMessage.BETTER_FACE_UP.of();
        };
    }
}
