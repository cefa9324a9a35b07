package borderwright.pack.figures;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.vocabulary.EdgeKind;
import java.util.Locale;

/** Names of things, the same on drawings and in tables. */
public final class PartWords {
    private PartWords() {}

    public static String edge(EdgeKind kind) {
        return kind == EdgeKind.OPEN ? "open ground" : kind.name().toLowerCase(Locale.ROOT);
    }

    /** What a piece does. */
    public static String role(Piece.Role role) {
        return switch (role) {
            case WALL -> "wall board";
            case DIVIDER -> "divider board";
            case POST -> "corner post";
            case BRACE -> "brace";
            case TIE -> "tie";
            case BEARER -> "bearer";
            case LEG -> "leg";
            case SLAT -> "slat";
            case CAPPING -> "capping";
        };
    }

    /** What several of them are called. */
    public static String roles(Piece.Role role) {
        return role == Piece.Role.CAPPING ? "capping boards" : role(role) + "s";
    }

    /** Where the long point of an end lies, for a reader who has the face that goes out, or up, before them. */
    public static String longPoint(Piece.Role role, EndCut.LongPoint point) {
        return switch (point) {
            case NONE -> "none";
            case MARKED_FACE -> role == Piece.Role.WALL ? "outside" : "on the marked face";
            case HIDDEN_FACE -> role == Piece.Role.WALL ? "inside" : "on the unmarked face";
            case LOWER_EDGE -> role == Piece.Role.CAPPING ? "on the outer edge" : "on the lower edge";
            case UPPER_EDGE -> role == Piece.Role.CAPPING ? "on the inner edge" : "on the upper edge";
        };
    }
}
