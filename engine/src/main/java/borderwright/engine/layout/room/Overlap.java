package borderwright.engine.layout.room;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Areas in common and left over, by JTS's overlay that holds for sides that nearly coincide too. */
public final class Overlap {
    private Overlap() {}

    public static double areaMm2(Geometry one, Geometry other) {
        return one.getEnvelopeInternal().intersects(other.getEnvelopeInternal())
                ? OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION).getArea()
                : 0;
    }

    public static Geometry without(Geometry whole, Geometry taken) {
        return OverlayNGRobust.overlay(whole, taken, OverlayNG.DIFFERENCE);
    }
}
