package borderwright.engine.strength;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.force;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.semicolons;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.unitWeight;
import static borderwright.engine.message.Slot.use;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a report on a box tells: verdict and reasons, what is open, what the checks assume. */
public enum StrengthMessage implements MessageCode {
    /** The verdict with its reasons. */
    VERDICT(message("verdict"), semicolons("reasons")),
    BOX_NOT_BUILT,
    BOARDS_HELD_BY_NOTHING,
    SIDE_BOWS_TOO_MUCH(text("side"), piece("bow"), number("course", 0), piece("limit")),
    /** So far that the figure means nothing. */
    SIDE_BOWS_FAR_TOO_MUCH(text("side"), piece("most"), number("course", 0), piece("limit")),
    PART_OVERLOADED(message("part"), message("check"), use("use"), message("loading"), message("clause")),
    STRENGTH_FIGURES(piece("bow"), piece("limit"), use("use"), message("part"), message("check")),
    STRENGTH_FIGURES_OF_BOW(piece("bow"), piece("limit"), use("use")),
    APART_FROM_THAT(message("figures")),

    GROUND_NOT_KNOWN,
    BOARD_MISSING(message("fault")),
    SIDE_RETAINS_GROUND(text("side"), piece("height")),
    SIDE_RETAINS_GROUND_BY_BUILDING(text("side"), piece("height")),

    FILL_ASSUMED(
            unitWeight("moist"),
            unitWeight("soaked"),
            number("friction", 0),
            text("push"),
            number("coefficient", 2),
            piece("below")),
    ARCHING_ASSUMED,
    PERSON_ASSUMED(force("weight")),
    TIMBER_ASSUMED(text("section"), message("grade")),
    SCREW_STIFFNESS_ASSUMED,
    GRAVEL_BED_ASSUMED(piece("gravel")),
    GRAVEL_BED_WITH_FRICTION_ASSUMED(piece("gravel"), number("friction", 2)),
    BARE_BED_ASSUMED,
    BARE_BED_WITH_FRICTION_ASSUMED(number("friction", 2)),
    LEG_PADS(force("force"), piece("side")),
    EMPTY_BOX_STANDS(use("use")),
    EMPTY_BOX_FALLS,
    BRACING_SEARCH_CUT_SHORT(text("box"), count("tried")),
    STRENGTH_GUIDANCE;

    private final List<Slot> slots;

    StrengthMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
