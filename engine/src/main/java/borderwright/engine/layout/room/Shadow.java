package borderwright.engine.layout.room;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import java.util.Optional;

/**
 * Which stations of a strip an obstacle takes.
 *
 * <p>A square cut at a station is the segment across the strip there. It is nearer to the obstacle than the clearance
 * exactly where it meets the obstacle grown by the clearance, a convex shape (a segment grown to a stadium). So the
 * stations taken are one span, and its ends lie on the round ends or the straight sides of the stadium, within the strip.
 */
final class Shadow {
    private final double nearMm;
    private final double farMm;
    private double fromMm = Double.POSITIVE_INFINITY;
    private double toMm = Double.NEGATIVE_INFINITY;

    private Shadow(double nearMm, double farMm) {
        this.nearMm = nearMm;
        this.farMm = farMm;
    }

    /**
     * Stations taken by a segment and the clearance round it; empty when it leaves the strip free.
     *
     * @param leg along which the strip lies
     * @param nearMm offset of the strip's near side
     * @param farMm offset of its far side
     */
    static Optional<Span> of(Segment obstacle, double clearanceMm, Leg leg, double nearMm, double farMm) {
        Point from = local(leg, obstacle.from());
        Point to = local(leg, obstacle.to());
        if (Math.min(from.yMm(), to.yMm()) - clearanceMm > farMm
                || Math.max(from.yMm(), to.yMm()) + clearanceMm < nearMm) {
            return Optional.empty();
        }
        Shadow shadow = new Shadow(nearMm, farMm);
        shadow.addRoundEnd(from, clearanceMm);
        shadow.addRoundEnd(to, clearanceMm);
        Point sideways = to.minus(from).unit().left().times(clearanceMm);
        shadow.addSide(from.plus(sideways), to.plus(sideways));
        shadow.addSide(from.minus(sideways), to.minus(sideways));
        return shadow.fromMm > shadow.toMm ? Optional.empty() : Optional.of(new Span(shadow.fromMm, shadow.toMm));
    }

    private static Point local(Leg leg, Point point) {
        return new Point(leg.stationMm(point), leg.line().offsetMm(point));
    }

    private void addRoundEnd(Point centre, double radiusMm) {
        double offset = Math.max(nearMm, Math.min(farMm, centre.yMm()));
        double off = offset - centre.yMm();
        if (Math.abs(off) <= radiusMm) {
            double half = Math.sqrt(radiusMm * radiusMm - off * off);
            add(centre.xMm() - half);
            add(centre.xMm() + half);
        }
    }

    private void addSide(Point from, Point to) {
        double rise = to.yMm() - from.yMm();
        if (rise == 0) {
            if (from.yMm() >= nearMm && from.yMm() <= farMm) {
                add(from.xMm());
                add(to.xMm());
            }
            return;
        }
        double a = (nearMm - from.yMm()) / rise;
        double b = (farMm - from.yMm()) / rise;
        double first = Math.max(0, Math.min(a, b));
        double last = Math.min(1, Math.max(a, b));
        if (first <= last) {
            add(from.towards(to, first).xMm());
            add(from.towards(to, last).xMm());
        }
    }

    private void add(double stationMm) {
        fromMm = Math.min(fromMm, stationMm);
        toMm = Math.max(toMm, stationMm);
    }
}
