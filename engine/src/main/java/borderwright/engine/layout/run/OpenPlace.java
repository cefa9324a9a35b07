package borderwright.engine.layout.run;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.Opening;
import borderwright.engine.layout.room.Overlap;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Ground that a run leaves open, before it is known whether another run takes a part of it.
 *
 * @param ring its outline, mm
 * @param why what it is and why, by the area that is left of it in the end, m2
 */
public record OpenPlace(Ring ring, DoubleFunction<Message> why) {
    /** Smaller leftovers are joints and tolerances, mm2. */
    private static final double LEAST_MM2 = 5_000;

    private static final double TOUCHING_MM2 = 1e-3;

    /** The largest part that no box takes; empty when that is next to nothing. */
    public Optional<Opening> without(STRtree boxes) {
        Polygon whole = ring.toJts();
        Optional<Polygon> left = whole.isValid() ? Optional.of(whole) : Optional.empty();
        for (Object found : boxes.query(whole.getEnvelopeInternal())) {
            Polygon box = (Polygon) found;
            if (left.isPresent() && Overlap.areaMm2(box, left.get()) > TOUCHING_MM2) {
                left = largest(Overlap.without(left.get(), box));
            }
        }
        return left.filter(part -> part.getNumInteriorRing() == 0 && part.getArea() > LEAST_MM2)
                .map(OpenPlace::ring)
                .map(r -> new Opening(r, why.apply(r.areaMm2() / 1e6)));
    }

    private static Optional<Polygon> largest(Geometry parts) {
        Optional<Polygon> largest = Optional.empty();
        for (int i = 0; i < parts.getNumGeometries(); i++) {
            if (parts.getGeometryN(i) instanceof Polygon part
                    && part.getArea() > largest.map(Polygon::getArea).orElse(0.0)) {
                largest = Optional.of(part);
            }
        }
        return largest;
    }

    private static Ring ring(Polygon polygon) {
        List<Point> corners = new ArrayList<>();
        Coordinate[] shell = polygon.getExteriorRing().getCoordinates();
        for (int i = 0; i + 1 < shell.length; i++) {
            corners.add(new Point(shell[i].x, shell[i].y));
        }
        if (Ring.signedAreaMm2(corners) < 0) {
            Collections.reverse(corners);
        }
        return new Ring(corners);
    }
}
