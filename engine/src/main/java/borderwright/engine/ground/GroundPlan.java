package borderwright.engine.ground;

import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.message.Message;
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
 * @param sheet the sheet in the dug bed; empty where none is given
 * @param near what has to be kept clear of, and where it lies
 * @param clearances how far planters keep from what they have to keep clear of
 * @param standsOver boxes that stand over services in the ground
 * @param notes what a person should know of it
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
        List<Message> notes,
        List<Problem> unmet) {
    public GroundPlan {
        boxes = List.copyOf(boxes);
        near = List.copyOf(near);
        clearances = List.copyOf(clearances);
        standsOver = List.copyOf(standsOver);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }

    /** The ground of a garden, set part by part; what is left out is empty. */
    static final class Builder {
        private final List<BoxGround> boxes;
        private final Spoil spoil;
        private double gravelM3;
        private double gravelLooseM3;
        private Optional<SheetPlan> sheet = Optional.empty();
        private List<NearbyPlace> near = List.of();
        private List<SiteClearance> clearances = List.of();
        private List<StandsOver> standsOver = List.of();
        private List<Message> notes = List.of();
        private List<Problem> unmet = List.of();

        Builder(List<BoxGround> boxes, Spoil spoil) {
            this.boxes = boxes;
            this.spoil = spoil;
        }

        /** Gravel compacted and as it is ordered, m3. */
        Builder gravel(double compactedM3, double looseM3) {
            gravelM3 = compactedM3;
            gravelLooseM3 = looseM3;
            return this;
        }

        Builder sheet(Optional<SheetPlan> cut) {
            sheet = cut;
            return this;
        }

        Builder near(List<NearbyPlace> places, List<SiteClearance> kept, List<StandsOver> over) {
            near = places;
            clearances = kept;
            standsOver = over;
            return this;
        }

        Builder notes(List<Message> known, List<Problem> notMet) {
            notes = known;
            unmet = notMet;
            return this;
        }

        GroundPlan build() {
            return new GroundPlan(
                    boxes, spoil, gravelM3, gravelLooseM3, sheet, near, clearances, standsOver, notes, unmet);
        }
    }

    /** What marks a corner of a box on the ground while it is set out. */
    public enum CornerMark {
        /** A peg driven into the ground. */
        PEG,
        /** A chalk mark: nothing is driven into paving, a roof or a deck. */
        CHALK;

        public static CornerMark on(GroundSurface surface) {
            return surface.isHard() ? CHALK : PEG;
        }
    }

    /**
     * A box over a service.
     *
     * @param box its name
     * @param service its name
     * @param lengthMm how much of the service lies under it, mm; 0 for a cover or another point
     */
    public record StandsOver(String box, Message service, double lengthMm) {}

    /** Area made ready, m2. */
    public double areaM2() {
        return boxes.stream().mapToDouble(BoxGround::areaM2).sum();
    }

    /** Number of feet on hard ground. */
    public int feet() {
        return boxes.stream().mapToInt(b -> b.feet().size()).sum();
    }
}
