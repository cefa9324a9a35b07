package borderwright.engine.layout.run;

import static borderwright.engine.message.Slot.area;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a person should know of a layout: its sizes, its levels, what stays open. */
public enum LayoutNote implements MessageCode {
    LAYOUT_GIVES_WAY(text("edge"), text("run"), length("from"), length("to"), text("corner")),
    LAYOUT_EDGE_PLANTED(text("edge"), commas("parts")),
    LAYOUT_ROW_PLANTED(length("offset"), text("edge"), commas("parts")),
    /** {@code measured} is {@code dividers} where lengths count from divider to divider, or {@code outside}. */
    LAYOUT_EQUAL_PLANTERS(count("planters"), length("length"), text("measured")),
    LAYOUT_UNEQUAL_PLANTERS(count("planters"), length("least"), length("most"), text("measured")),
    LAYOUT_WING(length("length")),
    LAYOUT_LONG_PLANTERS(text("edge"), length("length"), length("board")),
    LAYOUT_FACETS(text("edge"), length("radius"), count("bends"), length("sag")),

    LAYOUT_ON_FEET(length("fall"), text("run"), length("feet")),
    LAYOUT_LEVEL_RUN(length("fall"), text("run"), length("height"), length("shown")),
    LAYOUT_STEPPED_BOX(
            text("box"),
            message("bed"),
            length("wall"),
            message("low"),
            message("high"),
            length("buried"),
            length("least")),
    LAYOUT_STEPPED_BOXES(
            text("first"),
            text("last"),
            message("bed"),
            length("wall"),
            message("low"),
            message("high"),
            length("buried")),
    LAYOUT_STEP(text("from"), text("to"), text("way"), length("step"), count("courses")),
    LAYOUT_AT_DATUM,
    LAYOUT_ABOVE_DATUM(length("height")),
    LAYOUT_BELOW_DATUM(length("height")),
    LAYOUT_SHOWS(length("height")),
    LAYOUT_SHOWS_NOTHING,

    LAYOUT_NO_ACCESS(commas("planters")),
    LAYOUT_REACH(commas("planters"), length("farthest"), length("reach")),

    LAYOUT_OPEN_TIP(text("corner"), length("reach"), length("nose"), length("before"), area("area")),
    LAYOUT_OPEN_GAP(text("corner"), length("apart"), area("area")),
    LAYOUT_OPEN_WEDGE(text("edge"), area("area"));

    private final List<Slot> slots;

    LayoutNote(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
