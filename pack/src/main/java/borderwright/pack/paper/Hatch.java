package borderwright.pack.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Parallel strokes across a shape.
 *
 * @param angleDeg their direction, anticlockwise from the x axis, degrees
 * @param spacingMm distance between them, mm
 * @param pen what they are drawn with
 */
public record Hatch(double angleDeg, double spacingMm, Pen pen) {
    /** Wood that is cut through. */
    public static final Hatch WOOD = new Hatch(45, 0.9, Pen.HAIR);
    /** Ground. */
    public static final Hatch GROUND = new Hatch(60, 1.2, Pen.HAIR);
    /** What is thrown away, or kept clear. */
    public static final Hatch WASTE = new Hatch(-45, 1.6, Pen.HAIR);

    /**
     * The strokes inside a simple polygon, by the even-odd rule along each stroke.
     *
     * <p>Strokes lie on one grid for the whole sheet, so that neighbours' hatches meet.
     */
    List<List<Spot>> strokes(List<Spot> shape) {
        double turn = StrictMath.toRadians(angleDeg);
        Spot along = new Spot(StrictMath.cos(turn), -StrictMath.sin(turn));
        Spot across = along.left();
        double low = shape.stream().mapToDouble(s -> s.dot(across)).min().orElseThrow();
        double high = shape.stream().mapToDouble(s -> s.dot(across)).max().orElseThrow();
        List<List<Spot>> strokes = new ArrayList<>();
        for (double at = StrictMath.ceil(low / spacingMm) * spacingMm; at < high; at += spacingMm) {
            List<Spot> hits = hits(shape, across, at);
            hits.sort(Comparator.comparingDouble(s -> s.dot(along)));
            for (int i = 0; i + 1 < hits.size(); i += 2) {
                strokes.add(List.of(hits.get(i), hits.get(i + 1)));
            }
        }
        return strokes;
    }

    private static List<Spot> hits(List<Spot> shape, Spot across, double at) {
        List<Spot> hits = new ArrayList<>();
        for (int i = 0; i < shape.size(); i++) {
            Spot a = shape.get(i);
            Spot b = shape.get((i + 1) % shape.size());
            double da = a.dot(across) - at;
            double db = b.dot(across) - at;
            // A corner on the stroke belongs to its upper side only, so that hits stay even.
            if ((da >= 0) != (db >= 0)) {
                hits.add(a.towards(b, da / (da - db)));
            }
        }
        return hits;
    }
}
