package borderwright.pack.alike;

import borderwright.engine.buildup.parts.Piece;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pieces that do the same and come from the same section, under one heading of the piece table.
 *
 * @param heading what they are
 * @param rows pieces that differ in nothing but their label share a row
 */
public record PieceGroup(String heading, List<List<Piece>> rows) {
    public PieceGroup {
        rows = List.copyOf(rows);
    }

    /** All pieces of a box, in the order in which each kind first comes. */
    public static List<PieceGroup> of(List<Piece> pieces, PrintedFigures f) {
        Map<String, List<Piece>> byHeading = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            byHeading.computeIfAbsent(heading(piece, f), k -> new ArrayList<>()).add(piece);
        }
        List<PieceGroup> groups = new ArrayList<>();
        byHeading.forEach((heading, some) -> groups.add(new PieceGroup(heading, AlikePieces.group(some, f))));
        return groups;
    }

    private static String heading(Piece piece, PrintedFigures f) {
        String what = f.text(
                piece.course() > 0
                        ? PartWords.rolesOfCourse(piece.role(), piece.course())
                        : PartWords.roles(piece.role()));
        return Character.toUpperCase(what.charAt(0)) + what.substring(1) + ": " + piece.section();
    }
}
