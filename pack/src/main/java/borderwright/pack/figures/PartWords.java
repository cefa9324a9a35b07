package borderwright.pack.figures;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.message.Message;

/** Names of things, the same on drawings and in tables. */
public final class PartWords {
    private PartWords() {}

    public static Message edge(EdgeKind kind) {
        return PartMessage.PART_EDGE.of(kind);
    }

    /** What a piece does. */
    public static Message role(Piece.Role role) {
        return PartMessage.PART_ROLE.of(role);
    }

    /** What several of them are called. */
    public static Message roles(Piece.Role role) {
        return PartMessage.PART_ROLES.of(role);
    }

    /** The same of those of one course; begins with a small letter. */
    public static Message rolesOfCourse(Piece.Role role, int course) {
        return PartMessage.PIECES_OF_COURSE.of(roles(role), Integer.toString(course));
    }

    /** Where the long point of an end lies, for a reader who has the face that goes out, or up, before them. */
    public static Message longPoint(Piece.Role role, EndCut.LongPoint point) {
        return PartMessage.PART_LONG_POINT.of(point, role);
    }
}
