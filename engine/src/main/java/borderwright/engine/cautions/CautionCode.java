package borderwright.engine.cautions;

import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.weight;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What is to be careful of. */
public enum CautionCode implements MessageCode {
    BOUNDARY_AND_PERMITS,
    /** Stop: walls are higher than the limit, and any wall that retains is for an engineer. */
    ENGINEER_FOR_TALL_WALLS(length("tallest"), length("limit")),
    /** Stop: any wall that retains is for an engineer. */
    ENGINEER_FOR_RETAINING_WALLS,
    SOIL_BELOW_DAMP_COURSE(length("least")),
    FENCE_CARRIES_NO_SOIL,
    ROOF_LOAD_LIMIT,
    KEEP_RUN_OFF_AWAY,
    DIG_ENQUIRY,
    /** A service in the ground. */
    TRACE_SERVICE(message("service"), length("depth")),
    TRACE_SERVICE_OF_UNKNOWN_DEPTH(message("service")),
    /** Around a tree's trunk the ground is left as it is. */
    LEAVE_ROOTS_ALONE(message("tree"), length("reach")),
    FOOTINGS_AND_ROOTS,
    STRUCK_MAIN,
    TAMPER,
    TREATED_BOARDS,
    FOOD_BESIDE_TREATED_WOOD,
    RECLAIMED_WOOD,
    SAW_MANUAL,
    ROUGH_BOARDS,
    FREEHAND_CUTS,
    NAILER,
    SCREW_POINTS,
    /** Some piece is heavier than one person lifts. */
    /** No piece is heavier than one person lifts. */
    ASK_FOR_HELP(weight("lift")),
    PROP_WALLS,
    ON_THE_ROAD,
    FIT_TIES_FIRST,
    BAGS_AND_DUST,
    FINISH_RAGS,
    YEARLY_LOOK;

    private final List<Slot> slots;

    CautionCode(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
