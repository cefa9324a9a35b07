package borderwright.engine.ground;

import static borderwright.engine.message.Slot.area;
import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What comes too near to a tree, a service, a wall or a fence, or is not shown to keep clear of it. */
enum NearbyFinding implements MessageCode {
    AIR_BRICK(text("box"), length("gap"), message("place"), length("over"), length("open")),
    /** Soil stands too high. */
    CLADDING(
            text("box"),
            length("off"),
            choice("way"),
            message("place"),
            length("gap"),
            length("least"),
            length("lower"),
            length("away")),
    CLADDING_AIR(text("box"), length("gap"), message("place"), length("over"), length("least")),
    FENCE_BEARS(text("box"), length("gap"), message("fence"), length("bow"), length("least")),
    TREE_ROOTS(message("finding")),
    DUG_AMONG_ROOTS(text("box"), length("away"), message("tree"), length("reach"), area("among")),
    POST_HOLE_AMONG_ROOTS(text("box"), length("away"), message("tree"), length("reach")),
    SOIL_ON_ROOTS(text("box"), message("tree")),
    SERVICE_NEAR(message("finding"), message("service"), text("box")),
    POST_HOLE_NEAR_SERVICE(text("box"), length("away"), message("service"), length("least")),
    DUG_NEAR_SERVICE(
            text("box"), length("dug"), choice("position"), length("away"), message("service"), length("depth")),
    PEG_NEAR_SERVICE(text("box"), length("reach"), length("away"), message("service"), length("depth")),
    PEG_NEAR_SERVICE_OF_UNKNOWN_DEPTH(text("box"), length("reach"), length("away"), message("service")),
    SERVICE_DEPTH_UNKNOWN(message("service"), text("box"), length("dug"), choice("position"), length("away")),
    DUG_BY_HAND(text("box"), choice("position"), length("away"), message("service"));

    /** Where digging lies. */
    enum Position {
        OVER,
        BESIDE;

        static Position of(double awayMm) {
            return awayMm == 0 ? OVER : BESIDE;
        }
    }

    /** On which side of a level. */
    enum Way {
        ABOVE,
        BELOW;

        /** @param belowMm how far below the level; negative above it, mm */
        static Way of(double belowMm) {
            return belowMm < 0 ? ABOVE : BELOW;
        }
    }

    private final List<Slot> slots;

    NearbyFinding(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
