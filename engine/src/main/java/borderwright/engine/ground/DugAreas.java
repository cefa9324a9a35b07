package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The ground dug for each box: its outline and a margin, inside the border, less every other box's outline and what an
 * earlier box's margin took. So no ground is dug twice, and none is dug under a wall of the border.
 */
final class DugAreas {
    private static final double MITRE_LIMIT = 3;

    private DugAreas() {}

    /** One area for each box, in order; a polygon, or several, with or without holes. */
    static List<Geometry> of(List<Box> boxes, Ring border, GroundSpec spec) {
        List<Geometry> outlines = boxes.stream()
                .map(box -> (Geometry) box.plan().outline().toJts())
                .toList();
        Geometry inside = border.toJts();
        List<Geometry> wide = outlines.stream()
                .map(outline -> OverlayNGRobust.overlay(
                        grown(outline, spec.gravel().beyondMm()), inside, OverlayNG.INTERSECTION))
                .toList();
        List<Geometry> areas = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Geometry area = wide.get(i);
            for (int j = 0; j < boxes.size(); j++) {
                if (j != i && wide.get(j).getEnvelopeInternal().intersects(area.getEnvelopeInternal())) {
                    area = less(area, j < i ? wide.get(j) : outlines.get(j));
                }
            }
            // The box's own ground is its own, whatever an earlier one's margin reached.
            areas.add(OverlayNGRobust.overlay(area, outlines.get(i), OverlayNG.UNION));
        }
        return areas;
    }

    /** The part of an area that is dug: all of it, or the strip under the walls and as far inside them. */
    static Geometry dug(Box box, Geometry area, GroundSpec spec) {
        if (spec.bed() == GravelBed.WHOLE) {
            return area;
        }
        Geometry left = area;
        for (Ring inside : box.inside()) {
            left = less(left, grown(inside.toJts(), -spec.gravel().beyondMm()));
        }
        return left;
    }

    private static Geometry less(Geometry area, Geometry taken) {
        return OverlayNGRobust.overlay(area, taken, OverlayNG.DIFFERENCE);
    }

    /** Moved outwards with sharp corners; inwards where negative. */
    static Geometry grown(Geometry area, double byMm) {
        BufferParameters sharp =
                new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        return byMm == 0 ? area : BufferOp.bufferOp(area, byMm, sharp);
    }
}
