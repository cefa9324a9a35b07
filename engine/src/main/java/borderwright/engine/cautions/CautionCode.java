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
    /** On a roof a box beside a guard lowers it by the height of its rim. */
    CLEAR_OF_GUARDS(length("tallest")),
    KEEP_RUN_OFF_AWAY,
    DIG_ENQUIRY,
    /** A service in the ground. */
    TRACE_SERVICE(message("service"), length("depth")),
    TRACE_SERVICE_OF_UNKNOWN_DEPTH(message("service")),
    /** Around a tree's trunk the ground is left as it is. */
    LEAVE_ROOTS_ALONE(message("tree"), length("reach")),
    FOOTINGS_AND_ROOTS,
    STRUCK_MAIN,
    /** Earth that is dug here may carry lead, ash or old treated wood. */
    FOOD_IN_DUG_EARTH,
    TETANUS,
    TAMPER,
    TREATED_BOARDS,
    FOOD_BESIDE_TREATED_WOOD,
    RECLAIMED_WOOD,
    SAW_MANUAL,
    SAWDUST,
    ROUGH_BOARDS,
    FREEHAND_CUTS,
    NAILER,
    SCREW_POINTS,
    ASK_FOR_HELP(weight("lift")),
    /** What is to be moved is more than a day's lifting. */
    STAGGER_LIFTING(weight("filled")),
    PROP_WALLS,
    ON_THE_ROAD,
    FIT_TIES_FIRST,
    BAGS_AND_DUST,
    RIMS_ARE_NO_STEPS,
    CHILDREN_CLIMB,
    /** A fall from a rim is higher than the limit. */
    CHILDREN_CLIMB_HIGH(length("tallest"), length("limit")),
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
