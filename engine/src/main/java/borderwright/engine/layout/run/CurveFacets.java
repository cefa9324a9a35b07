package borderwright.engine.layout.run;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Arc;
import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.room.Leg;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A curved edge as straight lengths for planters.
 *
 * <p>The back line is parallel to the curve, a circle of radius R. Along an outward bulge the facets are its chords,
 * along an inward one its tangents, so that no box comes nearer to the edge than its clearance. Over an angle a at the
 * centre a chord stands off by R (1 - cos(a / 2)) in its middle, a tangent by R (1 / cos(a / 2) - 1) at its ends.
 *
 * <p>Joined planters bend in their middles, so that the dividers stand square in the middles of the facets, clear of
 * the bends; the two end facets are half as long. Separate planters stand whole on whole facets where there are enough
 * planters for that.
 *
 * <p>See docs/decisions/0022.
 *
 * @param edge index of the edge
 * @param arc the edge
 * @param backMm clearance of the planters' back, mm
 * @param kind what lies along it
 * @param depthMm depth of the planters, mm
 * @param fromFraction where the planters begin, as a fraction of the arc
 * @param toFraction where they end
 */
public record CurveFacets(
        int edge, Arc arc, double backMm, EdgeKind kind, double depthMm, double fromFraction, double toFraction) {

    /**
     * Facets for a number of planters.
     *
     * @param bends how many bends the back line has
     * @param sagMm how far a facet stands off the curve, mm
     * @param legs the facets in order
     * @param bent whether planters go round the bends; otherwise they end there
     */
    public record Facets(int bends, double sagMm, List<Leg> legs, boolean bent) {}

    CurveFacets between(double from, double to) {
        return new CurveFacets(edge, arc, backMm, kind, depthMm, from, to);
    }

    boolean isOutward() {
        return arc.riseMm() > 0;
    }

    /** Radius of the circle at the planters' back, mm. */
    double backRadiusMm() {
        return arc.radiusMm() + (isOutward() ? -backMm : backMm);
    }

    /** Length along the planters' middle, mm. */
    double middleMm() {
        return (backRadiusMm() + (isOutward() ? -depthMm / 2 : depthMm / 2)) * sweep();
    }

    private double sweep() {
        return Math.abs(arc.sweep()) * (toFraction - fromFraction);
    }

    /** How many millimetres along the back make one whole arc. */
    double wholeMm() {
        return backRadiusMm() * Math.abs(arc.sweep());
    }

    /** The arc's direction at one of its ends, as a line parallel to it at the planters' back. */
    Line backAt(double fraction) {
        double bearing = arc.startBearing() + fraction * arc.sweep();
        Point out = new Point(StrictMath.cos(bearing), StrictMath.sin(bearing));
        Point along = isOutward() ? out.left() : out.left().times(-1);
        return new Line(arc.polar(backRadiusMm(), bearing), along);
    }

    /** Where the back's circle crosses a line, as the fraction nearest to {@code near}; that itself where it does not. */
    double crossing(Line line, double near) {
        double step = 0.005;
        for (int i = 0; i < 90; i++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double a = near + sign * i * step;
                double b = a + sign * step;
                if (line.offsetMm(backPoint(a)) * line.offsetMm(backPoint(b)) <= 0) {
                    return bisect(line, a, b);
                }
            }
        }
        return near;
    }

    private double bisect(Line line, double from, double to) {
        double a = from;
        double b = to;
        double atA = line.offsetMm(backPoint(a));
        for (int i = 0; i < 60; i++) {
            double middle = (a + b) / 2;
            double at = line.offsetMm(backPoint(middle));
            if (atA * at <= 0) {
                b = middle;
            } else {
                a = middle;
                atA = at;
            }
        }
        return (a + b) / 2;
    }

    private Point backPoint(double fraction) {
        return arc.polar(backRadiusMm(), arc.startBearing() + fraction * arc.sweep());
    }

    /**
     * For planters with gaps between them: the fewest whole planters to a facet that keep a wanted sag, so that none is
     * bent; where no number does, as for joined ones.
     */
    public Optional<Facets> forSeparatePlanters(int planters, double sagMm, LayoutRules rules) {
        for (int facets = 2; facets <= planters; facets++) {
            if (planters % facets == 0 && sagMm(facets) <= sagMm && wholeFacetMm(facets) >= rules.leastPlanterMm()) {
                return Optional.of(facets(facets, false, planters));
            }
        }
        return forJoinedPlanters(planters, sagMm, rules);
    }

    /**
     * The fewest facets that keep a wanted sag and leave every side its least length; where no number does both, the
     * most that leave it. Empty where the curve is too tight for even one bend.
     */
    public Optional<Facets> forJoinedPlanters(int planters, double sagMm, LayoutRules rules) {
        Optional<Facets> best = Optional.empty();
        for (int bends : bendCounts(planters)) {
            if (endFacetMm(bends) < rules.leastEdgeMm()) {
                continue;
            }
            best = Optional.of(facets(bends, true, planters));
            if (sagMm(bends) <= sagMm) {
                return best;
            }
        }
        return best;
    }

    /** Numbers of bends that fall in the middles of planters, rising: every odd number of planters, or some in each. */
    private static List<Integer> bendCounts(int planters) {
        List<Integer> counts = new ArrayList<>();
        for (int bends = 1; bends <= planters; bends++) {
            if (planters % bends == 0 && planters / bends % 2 == 1) {
                counts.add(bends);
            }
        }
        for (int each = 2; each <= 12; each++) {
            counts.add(planters * each);
        }
        return counts;
    }

    /** How far facets stand off the curve when there are so many whole ones, mm. */
    double sagMm(int facets) {
        double half = sweep() / facets / 2;
        return isOutward()
                ? Arc.sagMm(backRadiusMm(), 2 * half)
                : backRadiusMm() * (1 / StrictMath.cos(Math.min(half, 1.5)) - 1);
    }

    /** Shorter side of the half facet at an end, mm. */
    private double endFacetMm(int bends) {
        double half = sweep() / bends / 2;
        if (half > StrictMath.PI / 4) {
            return 0;
        }
        return isOutward()
                ? 2 * backRadiusMm() * StrictMath.sin(half / 2) - depthMm * StrictMath.tan(half)
                : backRadiusMm() * StrictMath.tan(half);
    }

    private double wholeFacetMm(int facets) {
        double half = sweep() / facets / 2;
        if (half > StrictMath.PI / 4) {
            return 0;
        }
        return 2 * backRadiusMm() * StrictMath.sin(half) - (isOutward() ? 2 * depthMm * StrictMath.tan(half) : 0);
    }

    private Facets facets(int count, boolean bent, int planters) {
        double half = sweep() / count / 2;
        double bendRadius = isOutward() ? backRadiusMm() : backRadiusMm() / StrictMath.cos(half);
        List<Point> corners = new ArrayList<>();
        corners.add(polar(bent ? backRadiusMm() : bendRadius, 0));
        for (int i = bent ? 0 : 1; i < count; i++) {
            corners.add(polar(bendRadius, (i + (bent ? 0.5 : 0)) / count));
        }
        corners.add(polar(bent ? backRadiusMm() : bendRadius, 1));
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i + 1 < corners.size(); i++) {
            Line back = Line.between(corners.get(i), corners.get(i + 1));
            boolean end = bent && (i == 0 || i + 2 == corners.size());
            double share = planters / (double) count / (end ? 2 : 1);
            double lengthMm = corners.get(i).distanceMm(corners.get(i + 1));
            legs.add(new Leg(edge, back.offset(-backMm), lengthMm, backMm, kind, share, sagMm(count)));
        }
        return new Facets(bent ? count : count - 1, sagMm(count), legs, bent);
    }

    private Point polar(double radiusMm, double used) {
        double fraction = fromFraction + (toFraction - fromFraction) * used;
        return arc.polar(radiusMm, arc.startBearing() + fraction * arc.sweep());
    }
}
