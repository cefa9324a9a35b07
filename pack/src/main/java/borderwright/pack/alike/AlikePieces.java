package borderwright.pack.alike;

import borderwright.engine.buildup.parts.Piece;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts pieces together that differ in nothing but their label and place, so that they share a row of a table. */
public final class AlikePieces {
    private AlikePieces() {}

    /** Groups in the order of their first pieces. */
    public static List<List<Piece>> group(List<Piece> pieces, PrintedFigures f) {
        Map<String, List<Piece>> groups = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            groups.computeIfAbsent(signature(piece, f), k -> new ArrayList<>()).add(piece);
        }
        return List.copyOf(groups.values());
    }

    /** All that a row of the piece table holds; which face goes out stands apart. */
    public static String signature(Piece piece, PrintedFigures f) {
        return String.join(
                "|",
                piece.role().name(),
                Integer.toString(piece.course()),
                piece.section(),
                Long.toString(piece.length().ticks()),
                Long.toString(piece.shortLength().ticks()),
                f.text(piece.left().words()),
                f.text(piece.right().words()),
                piece.rip() == null ? "" : f.text(piece.rip().words()),
                piece.notches().toString(),
                Boolean.toString(piece.waits()),
                Boolean.toString(piece.touchesGround()));
    }

    /** Which face of each piece goes out, a sentence for each different one. */
    public static List<String> faces(List<Piece> pieces, PrintedFigures f) {
        Map<Piece.Role, Map<String, List<String>>> byRole = new EnumMap<>(Piece.Role.class);
        for (Piece piece : pieces) {
            byRole.computeIfAbsent(piece.role(), k -> new LinkedHashMap<>())
                    .computeIfAbsent(f.text(piece.faceOut()), k -> new ArrayList<>())
                    .add(piece.label());
        }
        List<String> sentences = new ArrayList<>();
        byRole.forEach((role, faces) -> faces.forEach((face, labels) -> {
            String which = faces.size() == 1 ? "" : " " + String.join(", ", labels);
            sentences.add(f.text(PartWords.role(role)) + which + ": " + face + ".");
        }));
        return sentences;
    }
}
