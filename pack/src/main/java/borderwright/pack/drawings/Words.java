package borderwright.pack.drawings;

import borderwright.engine.buildup.Piece;
import borderwright.engine.garden.EdgeKind;
import java.util.Locale;

/** Names of things, the same on drawings and in tables. */
public final class Words {
    private Words() {}

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
}
