package borderwright.engine.survey.shape;

import borderwright.engine.geometry.Point;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;

/** Where one clue lets a point lie, once the other points of that clue have a place. */
sealed interface Locus {

    /** How far a place is from obeying the clue, as a length. */
    double misfit(Point at);

    /** The curves that make it up, for intersecting: circles and rays. */
    List<Curve> curves();

    /** How unsure it is, as a length near a place. */
    double unsure(Point at);

    /** A circle, or a ray when the radius is infinite. */
    record Curve(Point centre, double radius, Point direction) {
        static Curve circle(Point centre, double radius) {
            return new Curve(centre, radius, new Point(1, 0));
        }

        static Curve ray(Point from, double bearing) {
            return new Curve(
                    from, Double.POSITIVE_INFINITY, new Point(StrictMath.cos(bearing), StrictMath.sin(bearing)));
        }

        boolean isRay() {
            return Double.isInfinite(radius);
        }
    }

    /** At a distance from a point. */
    record Around(Point centre, double radius, double sd) implements Locus {
        @Override
        public double misfit(Point at) {
            return Math.abs(at.distanceMm(centre) - radius);
        }

        @Override
        public List<Curve> curves() {
            return List.of(Curve.circle(centre, radius));
        }

        @Override
        public double unsure(Point at) {
            return sd;
        }
    }

    /** In one of some directions from a point. */
    record Towards(Point from, List<Double> bearings, double sd) implements Locus {
        @Override
        public double misfit(Point at) {
            Point arm = at.minus(from);
            double bearing = StrictMath.atan2(arm.yMm(), arm.xMm());
            double least = Double.POSITIVE_INFINITY;
            for (double allowed : bearings) {
                least = Math.min(least, Math.abs(Observation.wrapped(bearing - allowed)));
            }
            return least * arm.lengthMm();
        }

        @Override
        public List<Curve> curves() {
            return bearings.stream().map(b -> Curve.ray(from, b)).toList();
        }

        @Override
        public double unsure(Point at) {
            return sd * at.distanceMm(from);
        }
    }

    /** Where two points are seen under an angle (a resection). */
    record Seeing(Point first, Point second, double angle, double sd, boolean eitherWay) implements Locus {
        @Override
        public double misfit(Point at) {
            Point a = first.minus(at);
            Point b = second.minus(at);
            double seen = StrictMath.atan2(a.cross(b), a.dot(b));
            double off = Math.abs(Observation.wrapped(seen - angle));
            if (eitherWay) {
                off = Math.min(off, Math.abs(Observation.wrapped(-seen - angle)));
            }
            return off * Math.min(a.lengthMm(), b.lengthMm());
        }

        @Override
        public List<Curve> curves() {
            double sine = StrictMath.sin(angle);
            if (Math.abs(sine) < 1e-9) {
                return List.of();
            }
            double chord = first.distanceMm(second);
            double radius = Math.abs(chord / (2 * sine));
            Point middle = first.towards(second, 0.5);
            double stand = Math.sqrt(Math.max(radius * radius - chord * chord / 4, 0));
            Point square = second.minus(first).unit().left().times(stand);
            return List.of(Curve.circle(middle.plus(square), radius), Curve.circle(middle.minus(square), radius));
        }

        @Override
        public double unsure(Point at) {
            return sd * Math.min(at.distanceMm(first), at.distanceMm(second));
        }
    }

    /** At a place, as a point on a line through two placed points is. */
    record Spot(Point place) implements Locus {
        @Override
        public double misfit(Point at) {
            return at.distanceMm(place);
        }

        @Override
        public List<Curve> curves() {
            return List.of(Curve.circle(place, 0));
        }

        @Override
        public double unsure(Point at) {
            return 0;
        }
    }

    /** Places where two curves meet; where two circles miss each other, the place halfway between them. */
    static List<Point> meet(Curve one, Curve other) {
        if (one.isRay() && other.isRay()) {
            return raysMeet(one, other);
        }
        if (one.isRay()) {
            return rayMeetsCircle(one, other);
        }
        return other.isRay() ? rayMeetsCircle(other, one) : circlesMeet(one, other);
    }

    private static List<Point> circlesMeet(Curve one, Curve other) {
        Point between = other.centre().minus(one.centre());
        double d = between.lengthMm();
        if (d == 0) {
            return List.of();
        }
        double r = one.radius();
        double along = (d * d + r * r - other.radius() * other.radius()) / (2 * d);
        double square = r * r - along * along;
        Point u = between.unit();
        if (square <= 0) {
            // nearest approach: between the two circles on the line of their centres
            double near = along > 0 ? r : -r;
            double far = along > d ? d + other.radius() : d - other.radius();
            return List.of(one.centre().plus(u.times((near + far) / 2)));
        }
        Point foot = one.centre().plus(u.times(along));
        Point off = u.left().times(Math.sqrt(square));
        return List.of(foot.plus(off), foot.minus(off));
    }

    private static List<Point> rayMeetsCircle(Curve ray, Curve circle) {
        Point start = ray.centre().minus(circle.centre());
        double half = start.dot(ray.direction());
        double square = half * half - start.dot(start) + circle.radius() * circle.radius();
        if (square <= 0) {
            return half < 0 ? List.of(ray.centre().plus(ray.direction().times(-half))) : List.of();
        }
        List<Point> meets = new ArrayList<>();
        double root = Math.sqrt(square);
        for (double t : new double[] {-half + root, -half - root}) {
            if (t > 0) {
                meets.add(ray.centre().plus(ray.direction().times(t)));
            }
        }
        return meets;
    }

    private static List<Point> raysMeet(Curve one, Curve other) {
        double cross = one.direction().cross(other.direction());
        if (Math.abs(cross) < 1e-4) {
            return List.of();
        }
        Point between = other.centre().minus(one.centre());
        double t = between.cross(other.direction()) / cross;
        double s = between.cross(one.direction()) / cross;
        return t > 0 && s > 0 ? List.of(one.centre().plus(one.direction().times(t))) : List.of();
    }
}
