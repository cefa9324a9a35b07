package borderwright.engine.planting;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Crops by name, how they and the gardener fit a planter, and what is not known of the sun. */
enum PlantingMessage implements MessageCode {
    CROP_NAME(choice("crop")),
    CROP_NEEDS(message("crop"), length("least")),
    CROP_FIT(choice("verdict")),
    SUN_EXPOSURE(choice("exposure")),
    SOIL_SHALLOW_FOR_CROPS(length("depth"), commas("crops")),
    RIM_LEVEL(length("height")),
    RIM_FROM_TO(length("least"), length("most")),
    RIMS_OFF_REQUEST(count("boxes"), message("rim"), length("requested"), length("wall")),
    REQUESTED_RIM_DOES_NOT_SUIT(length("requested"), length("least"), length("most"), choice("gardener")),
    NO_RIM_SUITS(count("boxes"), length("least"), length("most"), choice("gardener")),
    RIMS_DO_NOT_SUIT(count("off"), count("boxes"), length("least"), length("most"), choice("gardener")),
    SUN_NOT_SHOWN;

    private final List<Slot> slots;

    PlantingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
