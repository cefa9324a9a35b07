package borderwright.engine.buildup.draft;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A side's own coordinates: {@code s} along it from its first corner, {@code w} inwards from its outer face, both in mm.
 *
 * <p>Seen from outside the box, {@code s} runs from left to right.
 *
 * @param side its index
 * @param start its first corner
 * @param along unit vector towards its second corner
 * @param lengthMm its length on the outer face
 * @param startAngle angle inside the box at its first corner, radians
 * @param endAngle angle inside the box at its second corner, radians
 */
public record SideFrame(int side, Point start, Point along, double lengthMm, double startAngle, double endAngle) {
    /** A face that stands off less than this still bears. */
    private static final double STAND_OFF_MM = 2.2;

    private static final double LEAST_BEARING_MM = 5;

    /** The sides of an outline, in order. */
    public static List<SideFrame> of(Ring outline) {
        List<SideFrame> frames = new ArrayList<>(outline.size());
        for (int i = 0; i < outline.size(); i++) {
            int next = (i + 1) % outline.size();
            frames.add(new SideFrame(
                    i,
                    outline.corner(i),
                    outline.direction(i),
                    outline.sideMm(i),
                    outline.insideAngle(i),
                    outline.insideAngle(next)));
        }
        return frames;
    }

    /** Unit vector into the box. */
    public Point inwards() {
        return along.left();
    }

    /** The place {@code s} along it and {@code w} inwards. */
    public Point at(double s, double w) {
        return start.plus(along.times(s)).plus(along.left().times(w));
    }

    /** How far along it a point lies, mm. */
    public double s(Point p) {
        return p.minus(start).dot(along);
    }

    /** How far inwards of its outer face a point lies, mm. */
    public double w(Point p) {
        return p.minus(start).dot(along.left());
    }

    /** Where the inner corner at its start lies along it, for a wall {@code w} thick. */
    public double innerStart(double w) {
        return LapOrMitre.setbackMm(LapOrMitre.MITRED, startAngle, w, 0, w);
    }

    /** Where the inner corner at its end lies along it, for a wall {@code w} thick. */
    public double innerEnd(double w) {
        return lengthMm - LapOrMitre.setbackMm(LapOrMitre.MITRED, endAngle, w, 0, w);
    }

    /**
     * Where an upright bears on a side.
     *
     * @param fromMm along the side
     * @param toMm along the side
     */
    public record Bearing(double fromMm, double toMm) {
        public double middleMm() {
            return (fromMm + toMm) / 2;
        }
    }

    /** Where an upright bears on this side's wall, {@code wallMm} thick; nothing where it does not touch it. */
    public Optional<Bearing> bearing(Ring upright, double wallMm) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Point p : upright.corners()) {
            if (StrictMath.abs(w(p) - wallMm) <= STAND_OFF_MM) {
                from = StrictMath.min(from, s(p));
                to = StrictMath.max(to, s(p));
            }
        }
        boolean bears = to - from > LEAST_BEARING_MM && from > -wallMm && to < lengthMm + wallMm;
        return bears ? Optional.of(new Bearing(from, to)) : Optional.empty();
    }
}
