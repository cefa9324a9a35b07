package borderwright.engine.strength.timber;

import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the figures of a worked check of timber and fixings are. */
public enum TimberStep implements MessageCode {
    ALL_FASTENERS,
    ALL_SCREWS,
    NUMBER_THAT_COUNTS,
    NUMBER_TIMES_SCREW,
    NUMBER_TIMES_ONE,
    ROOT_OF_SQUARES,
    LATERAL_PLUS_PULL,
    EFFECTIVE_DIAMETER,
    HEAD_SIDE_THICKNESS,
    POINT_SIDE_PENETRATION,
    PENETRATION,
    EMBEDMENT,
    EMBEDMENT_HEAD_SIDE,
    EMBEDMENT_POINT_SIDE,
    A_THIRD_IN_END_GRAIN,
    NO_PULL_IN_END_GRAIN,
    NO_PULL_ON_SMOOTH_NAILS,
    NO_PULL_BY_NDS,
    THREAD_IN_RECEIVER,
    THREAD_TOO_SHALLOW,
    RINGS_TOO_SHALLOW,
    POINT_TOO_SHALLOW_BY_NDS,
    HEAD_PULL_THROUGH,
    THE_LESSER,
    DIAMETER_FACTOR,
    WITHDRAWAL_PARAMETER,
    RINGED_NAIL,
    ROOT_MODE_B,
    SIZE_FACTOR,
    AXIAL_AND_BENDING,
    TENSION_AND_BENDING,
    MOMENT,
    SECTION_MODULUS,
    BY_SLENDERNESS,
    RIGID_TURN,
    HINGE_POINT_SIDE,
    HINGE_HEAD_SIDE,
    TWO_HINGES,
    SIDE_MEMBER,
    BY_DIAMETER,
    LEAST_OF_SIX_MODES,
    WOOD_SCREW_OR_NAIL,
    SIZE,
    WET_SERVICE,
    STRESS,
    DESIGN_FACTOR(message("duration")),
    POINT_TOO_SHALLOW(piece("least")),
    ROPE_EFFECT(number("share", 1)),
    LEAST_MODE(text("mode"));

    private static final String CODE = "timber-";

    private final List<Slot> slots;

    TimberStep(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
    }
}
