package borderwright.pack.alike;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.layout.plan.BoxShape;
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
        Map<List<Object>, List<Box>> groups = new LinkedHashMap<>();
        for (Box box : boxes) {
            groups.computeIfAbsent(key(box, f), k -> new ArrayList<>()).add(box);
        }
        return List.copyOf(groups.values());
    }

    /** Its shape, and what is printed of its pieces. */
    private static List<Object> key(Box box, PrintedFigures f) {
        List<Object> key = new ArrayList<>();
        key.add(BoxShape.of(box.plan()));
        for (Piece piece : box.pieces()) {
            key.add(piece.side() + " " + AlikePieces.signature(piece, f));
        }
        return key;
    }
}
