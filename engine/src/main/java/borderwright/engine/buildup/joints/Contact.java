package borderwright.engine.buildup.joints;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.Optional;

/**
 * Where the faces of two upright solids lie on each other.
 *
 * @param from one end of what they share, on the first one's face
 * @param to the other end
 * @param into unit vector square to the face, out of the first and into the second
 */
record Contact(Point from, Point to, Point into) {
    /** Faces that lean to each other by less bear once the screws are tight (common practice, no source). */
    private static final double LEAN = 0.03;

    private static final double STAND_OFF_MM = 3;
    private static final double LEAST_MM = 5;

    /** The widest of the faces that touch; nothing where none do. */
    static Optional<Contact> between(Ring first, Ring second) {
        Contact best = null;
        for (int i = 0; i < first.size(); i++) {
            Point start = first.corner(i);
            Point along = first.direction(i);
            Point out = along.left().times(-1);
            for (int k = 0; k < second.size(); k++) {
                boolean faces =
                        along.dot(second.direction(k)) < 0 && StrictMath.abs(along.cross(second.direction(k))) < LEAN;
                double near = second.corner(k).minus(start).dot(out);
                double far = second.corner(k + 1).minus(start).dot(out);
                if (!faces || StrictMath.abs((near + far) / 2) > STAND_OFF_MM) {
                    continue;
                }
                double a = StrictMath.max(0, second.corner(k + 1).minus(start).dot(along));
                double b = StrictMath.min(
                        first.sideMm(i), second.corner(k).minus(start).dot(along));
                if (b - a > LEAST_MM && (best == null || b - a > best.lengthMm())) {
                    best = new Contact(start.plus(along.times(a)), start.plus(along.times(b)), out);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The same seen from the second solid. */
    Contact turned() {
        return new Contact(to, from, into.times(-1));
    }

    double lengthMm() {
        return from.distanceMm(to);
    }

    Point middle() {
        return from.towards(to, 0.5);
    }

    /** So far off the middle towards its second end; a negative distance towards its first. */
    Point aside(double mm) {
        return middle().plus(to.minus(from).unit().times(mm));
    }

    /** How thick a solid is behind a place on its face, mm. */
    static double thickMm(Ring ring, Point face, Point back) {
        double thick = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point along = ring.direction(i);
            double speed = back.cross(along);
            if (StrictMath.abs(speed) < 1e-9) {
                continue;
            }
            Point off = ring.corner(i).minus(face);
            double far = off.cross(along) / speed;
            double on = off.cross(back) / speed;
            if (on >= -1e-6 && on <= ring.sideMm(i) + 1e-6) {
                thick = StrictMath.max(thick, far);
            }
        }
        return thick;
    }
}
