package borderwright.engine.assembly.order;

import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * A distance between two outside corners of a box that fixes its shape.
 *
 * <p>Of four corners both diagonals; of more the distance across each corner, from the one before it to the one after, which
 * with the sides fixes every angle; of three none, since the sides fix them.
 *
 * @param from corner, 0 first
 * @param to corner
 * @param lengthMm between them, mm
 */
public record Diagonal(int from, int to, double lengthMm) {
    public static List<Diagonal> of(Ring outline) {
        int n = outline.size();
        List<Diagonal> diagonals = new ArrayList<>();
        int count = n < 4 ? 0 : n == 4 ? 2 : n;
        for (int i = 0; i < count; i++) {
            int to = (i + 2) % n;
            diagonals.add(new Diagonal(i, to, outline.corner(i).distanceMm(outline.corner(to))));
        }
        return diagonals;
    }
}
