package borderwright.engine.survey.network;

import borderwright.engine.geometry.Point;

/**
 * One observed quantity as the adjustment sees it: a value, its standard deviation, and how it follows from the places.
 *
 * <p>Lengths in the network's unit of length (mm for a border), angles in radians, anticlockwise positive. Points are
 * numbers within their network.
 */
public sealed interface Observation {

    double measured();

    double sd();

    /** The value at these places. */
    double computed(Positions at);

    /** Adds the derivatives of {@link #computed} by the unknowns. */
    void partials(Positions at, DesignRow row);

    /** Measured less computed: what the adjustment has to explain. */
    default double misclosure(Positions at) {
        return measured() - computed(at);
    }

    /** Whether it is a length taken straight from one of these points to the other. */
    default boolean isTape(int one, int other) {
        return false;
    }

    /** What a small change of it moves the points by: 1 for lengths, the longer arm for angles. */
    default double lengthPerUnit(Positions at) {
        return 1;
    }

    /** Itself as it stands at these places: a gauge angle turns to the side on which they have it. */
    default Observation sidedAs(Positions at) {
        return this;
    }

    /** An angle brought into (-pi, pi]. */
    static double wrapped(double angle) {
        double turned = StrictMath.IEEEremainder(angle, 2 * StrictMath.PI);
        return turned <= -StrictMath.PI ? turned + 2 * StrictMath.PI : turned;
    }

    /** A horizontal distance. */
    record Distance(int a, int b, double measured, double sd) implements Observation {
        @Override
        public boolean isTape(int one, int other) {
            return (a == one && b == other) || (a == other && b == one);
        }

        @Override
        public double computed(Positions at) {
            return at.at(a).distanceMm(at.at(b));
        }

        @Override
        public void partials(Positions at, DesignRow row) {
            Point along = at.at(b).minus(at.at(a));
            double length = Math.max(along.lengthMm(), Double.MIN_NORMAL);
            row.byPlace(a, -along.xMm() / length, -along.yMm() / length);
            row.byPlace(b, along.xMm() / length, along.yMm() / length);
        }
    }

    /** A distance along the slope between the heights of its ends. */
    record SlopeDistance(int a, int b, double measured, double sd) implements Observation {
        @Override
        public boolean isTape(int one, int other) {
            return (a == one && b == other) || (a == other && b == one);
        }

        @Override
        public double computed(Positions at) {
            return StrictMath.hypot(at.at(a).distanceMm(at.at(b)), at.height(b) - at.height(a));
        }

        @Override
        public void partials(Positions at, DesignRow row) {
            Point along = at.at(b).minus(at.at(a));
            double length = Math.max(computed(at), Double.MIN_NORMAL);
            row.byPlace(a, -along.xMm() / length, -along.yMm() / length);
            row.byPlace(b, along.xMm() / length, along.yMm() / length);
            double slope = (at.height(b) - at.height(a)) / length;
            row.byHeight(a, -slope);
            row.byHeight(b, slope);
        }
    }

    /** The angle at a point, turned anticlockwise from the direction of one point to that of another. */
    record Turn(int at, int from, int to, double measured, double sd) implements Observation {
        @Override
        public double computed(Positions p) {
            Point first = p.at(from).minus(p.at(at));
            Point second = p.at(to).minus(p.at(at));
            return StrictMath.atan2(first.cross(second), first.dot(second));
        }

        @Override
        public double misclosure(Positions p) {
            return wrapped(measured - computed(p));
        }

        @Override
        public double lengthPerUnit(Positions p) {
            return Math.max(p.at(at).distanceMm(p.at(from)), p.at(at).distanceMm(p.at(to)));
        }

        @Override
        public void partials(Positions p, DesignRow row) {
            turning(at, to, p, row, 1);
            turning(at, from, p, row, -1);
        }
    }

    /**
     * The angle between two directions as a gauge shows it, which turns to one side or the other.
     *
     * @param shown the angle shown, at most a half turn
     * @param left whether it is taken to turn to the left (anticlockwise) from {@code from} to {@code to}
     */
    record Gauge(int at, int from, int to, double shown, double sd, boolean left) implements Observation {
        static Gauge toTheLeft(int at, int from, int to, double shown, double sd) {
            return new Gauge(at, from, to, shown, sd, true);
        }

        @Override
        public double measured() {
            return left ? shown : -shown;
        }

        @Override
        public Observation sidedAs(Positions p) {
            return turn().computed(p) > 0 == left ? this : toOtherSide();
        }

        Gauge toOtherSide() {
            return new Gauge(at, from, to, shown, sd, !left);
        }

        private Turn turn() {
            return new Turn(at, from, to, measured(), sd);
        }

        @Override
        public double computed(Positions p) {
            return turn().computed(p);
        }

        @Override
        public double misclosure(Positions p) {
            return turn().misclosure(p);
        }

        @Override
        public double lengthPerUnit(Positions p) {
            return turn().lengthPerUnit(p);
        }

        @Override
        public void partials(Positions p, DesignRow row) {
            turn().partials(p, row);
        }
    }

    /** A direction, anticlockwise from x. */
    record Direction(int from, int to, double measured, double sd) implements Observation {
        @Override
        public double computed(Positions p) {
            Point along = p.at(to).minus(p.at(from));
            return StrictMath.atan2(along.yMm(), along.xMm());
        }

        @Override
        public double misclosure(Positions p) {
            return wrapped(measured - computed(p));
        }

        @Override
        public double lengthPerUnit(Positions p) {
            return p.at(from).distanceMm(p.at(to));
        }

        @Override
        public void partials(Positions p, DesignRow row) {
            turning(from, to, p, row, 1);
        }
    }

    private static void turning(int from, int to, Positions p, DesignRow row, double sign) {
        Point along = p.at(to).minus(p.at(from));
        double square = Math.max(along.dot(along), Double.MIN_NORMAL);
        double dx = -sign * along.yMm() / square;
        double dy = sign * along.xMm() / square;
        row.byPlace(to, dx, dy);
        row.byPlace(from, -dx, -dy);
    }

    /** How far a point lies along the line from {@code a} to {@code b}, counted from {@code a}. */
    record Along(int point, int a, int b, double measured, double sd) implements Observation {
        @Override
        public double computed(Positions at) {
            return at.at(point).minus(at.at(a)).dot(baseline(at, a, b).unit());
        }

        @Override
        public void partials(Positions at, DesignRow row) {
            Point base = baseline(at, a, b);
            Point u = base.unit();
            Point n = u.left();
            double lever = n.dot(at.at(point).minus(at.at(a))) / base.lengthMm();
            row.byPlace(point, u.xMm(), u.yMm());
            row.byPlace(b, lever * n.xMm(), lever * n.yMm());
            row.byPlace(a, -u.xMm() - lever * n.xMm(), -u.yMm() - lever * n.yMm());
        }
    }

    /** How far a point stands square off the line from {@code a} to {@code b}: positive to the left. */
    record Off(int point, int a, int b, double measured, double sd) implements Observation {
        @Override
        public double computed(Positions at) {
            return baseline(at, a, b).unit().cross(at.at(point).minus(at.at(a)));
        }

        @Override
        public void partials(Positions at, DesignRow row) {
            Point base = baseline(at, a, b);
            Point u = base.unit();
            Point n = u.left();
            double share = u.dot(at.at(point).minus(at.at(a))) / base.lengthMm();
            row.byPlace(point, n.xMm(), n.yMm());
            row.byPlace(b, -share * n.xMm(), -share * n.yMm());
            row.byPlace(a, (share - 1) * n.xMm(), (share - 1) * n.yMm());
        }
    }

    private static Point baseline(Positions at, int a, int b) {
        Point base = at.at(b).minus(at.at(a));
        // two ends that fall together while places are still being found: any direction serves for the next step
        return base.lengthMm() > 0 ? base : new Point(1e-6, 0);
    }

    /** How much higher {@code to} is than {@code from}; {@code from} is {@link #DATUM} for a height above the datum. */
    record HeightDifference(int from, int to, double measured, double sd) implements Observation {
        static final int DATUM = -1;

        @Override
        public double computed(Positions at) {
            return at.height(to) - (from == DATUM ? 0 : at.height(from));
        }

        @Override
        public void partials(Positions at, DesignRow row) {
            row.byHeight(to, 1);
            if (from != DATUM) {
                row.byHeight(from, -1);
            }
        }
    }
}
