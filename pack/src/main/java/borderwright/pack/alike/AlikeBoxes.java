package borderwright.pack.alike;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Ring;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts boxes together whose pieces are all the same, so that sixty like boxes are explained once. */
public final class AlikeBoxes {
    private AlikeBoxes() {}

    /** Groups in the order of their first boxes. */
    public static List<List<Box>> group(List<Box> boxes, PrintedFigures f) {
        Map<String, List<Box>> groups = new LinkedHashMap<>();
        for (Box box : boxes) {
            groups.computeIfAbsent(signature(box, f), k -> new ArrayList<>()).add(box);
        }
        return List.copyOf(groups.values());
    }

    private static String signature(Box box, PrintedFigures f) {
        StringBuilder out = new StringBuilder();
        Ring ring = box.plan().outline();
        for (int i = 0; i < ring.size(); i++) {
            // Tenths of a millimetre: boxes that differ by less are built from the same pieces.
            out.append(StrictMath.round(ring.sideMm(i) * 10)).append(' ');
            out.append(box.plan().sides().get(i).role()).append(' ');
        }
        for (Piece piece : box.pieces()) {
            out.append('\n').append(piece.side()).append(' ').append(AlikePieces.signature(piece, f));
        }
        return out.toString();
    }
}
