package borderwright.pack.form;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the survey form says. */
public enum FormMessage implements MessageCode {
    FORM_TITLE,
    FORM_SUBJECT,
    FORM_READINGS,
    FORM_GARDEN,
    FORM_DATE,
    FORM_DATUM,
    FORM_HOW_TO_WRITE,
    FORM_FOOT,

    FORM_CAUTIONS,
    FORM_CAUTION_SERVICES,
    FORM_CAUTION_BOUNDARY,
    FORM_CAUTION_WALLS,
    FORM_CAUTION_ROOF,

    FORM_BRING,
    FORM_BRING_TAPES,
    FORM_BRING_PEGS,
    FORM_BRING_LEVEL,
    FORM_BRING_PLUMB,
    FORM_BRING_GAUGE,
    FORM_BRING_PEN,
    FORM_BRING_PHOTOS,
    FORM_BRING_HELPER,

    FORM_SECOND_TAPE,
    FORM_CLOSED_BORDER,
    FORM_CLOSED_BORDER_DRAWN,
    FORM_STRIP,
    FORM_STRIP_DRAWN,

    FORM_SKETCH,
    FORM_SKETCH_HOW,
    FORM_SQUARE,
    FORM_SKETCH_DRAWN(text("cell")),
    FORM_NORTH,

    FORM_EDGES,
    FORM_EDGES_HOW(commas("kinds")),
    FORM_TAPES,
    FORM_TAPES_HOW(commas("held")),
    FORM_LEVELS,
    FORM_LEVELS_HOW,
    FORM_CHAINS,
    FORM_CHAINS_HOW,
    FORM_OFFSETS,
    FORM_OFFSETS_HOW,
    FORM_ANGLES,
    FORM_ANGLES_HOW,
    FORM_LEANS,
    FORM_LEANS_HOW,
    FORM_ARCS,
    FORM_ARCS_HOW(commas("taken"), commas("bulges")),
    FORM_RISES,
    FORM_RISES_HOW,
    FORM_NEAR,
    FORM_NEAR_HOW(commas("kinds")),
    FORM_GROUND,
    FORM_GROUND_HOW;

    private final List<Slot> slots;

    FormMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
