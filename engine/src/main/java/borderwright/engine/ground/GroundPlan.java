package borderwright.engine.ground;

import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * The ground of a whole garden made ready.
 *
 * @param boxes box by box, in the layout's order
 * @param spoil what is dug and moved
 * @param gravelM3 gravel, m3 compacted
 * @param gravelLooseM3 gravel to order, m3 loose
 * @param sheet the sheet in the dug bed; empty where none is wished
 * @param near what has to be kept clear of, and where it lies
 * @param clearances how far planters keep from what they have to keep clear of
 * @param standsOver boxes that stand over services in the ground
 * @param notes what a person should know of it, each a sentence with numbers
 * @param unmet what stops the work until someone has decided, with the reason
 */
public record GroundPlan(
        List<BoxGround> boxes,
        Spoil spoil,
        double gravelM3,
        double gravelLooseM3,
        Optional<SheetPlan> sheet,
        List<NearbyPlace> near,
        List<SiteClearance> clearances,
        List<StandsOver> standsOver,
        List<String> notes,
        List<Problem> unmet) {
    public GroundPlan {
        boxes = List.copyOf(boxes);
        near = List.copyOf(near);
        clearances = List.copyOf(clearances);
        standsOver = List.copyOf(standsOver);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }

    /**
     * A box over a service.
     *
     * @param box its name
     * @param service in words
     * @param lengthMm how much of the service lies under it, mm; 0 for a cover or another point
     */
    public record StandsOver(String box, String service, double lengthMm) {}

    /** Area made ready, m2. */
    public double areaM2() {
        return boxes.stream().mapToDouble(BoxGround::areaM2).sum();
    }

    /** Number of feet on hard ground. */
    public int feet() {
        return boxes.stream().mapToInt(b -> b.feet().size()).sum();
    }
}
