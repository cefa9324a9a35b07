package borderwright.engine.filling;

import static borderwright.engine.message.Slot.areaLoad;
import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.site;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.weight;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Layers of the filling, and what a person should know of weights and loads. */
enum FillMessage implements MessageCode {
    LAYER_OF_DRAINAGE,
    LAYER_OF_COARSE_FILL,
    LAYER_OF_DUG_EARTH,
    LAYER_OF_SOIL,
    /** One of several parts of the soil. */
    LAYER_OF_MIX,
    ROOF_LIMIT_MISSING(text("box"), areaLoad("load")),
    ROOF_OVERLOADED(text("box"), areaLoad("load"), areaLoad("limit")),
    ROOF_BEARS(text("box"), areaLoad("load"), areaLoad("limit")),
    STANDS_OVER_SERVICE(text("box"), message("service"), choice("shape"), site("length"), areaLoad("load")),
    HEAVY_PIECE(text("piece"), weight("weight"), weight("lift"), count("people")),
    EVERY_BOX_TOO_HEAVY_TO_CARRY(count("boxes"), weight("heaviest"), count("people")),
    BOXES_TOO_HEAVY_TO_CARRY(count("heavy"), count("boxes"), weight("heaviest"), count("people"));

    /** What of a service lies under a box. */
    enum Shape {
        LENGTH,
        POINT
    }

    private final List<Slot> slots;

    FillMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
