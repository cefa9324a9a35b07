package borderwright.engine.layout.run;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What of a requested run cannot be met. Edges are given as {@code A-B}; {@code planter} is {@code infill} or {@code corner}. */
enum LayoutProblemMessage implements MessageCode {
    LAYOUT_ALONG(text("run"), text("along"), text("corners")),
    LAYOUT_RANGE(text("field"), length("smaller")),
    LAYOUT_PLANTERS_NOT_GIVEN(text("run")),
    LAYOUT_DEPTH_TOO_SHALLOW(length("depth"), length("least"), piece("wall")),
    LAYOUT_DEPTH_DOES_NOT_FIT(length("depth"), commas("edges"), length("fits")),
    LAYOUT_NARROW(text("edge"), length("depth"), length("lost"), length("from"), length("to"), text("corner")),
    LAYOUT_CORNER_ANGLE(text("corner"), angle("angle"), angle("least"), angle("greatest")),
    LAYOUT_CORNER_ROOM(text("corner"), text("planter"), length("depth")),
    LAYOUT_BEND_ROOM(text("edge"), text("planter"), length("depth")),
    LAYOUT_EDGE_SHORT_FOR_CORNER(text("edge"), length("length"), text("planter"), text("corner"), length("least")),
    LAYOUT_CURVE_WITHOUT_ROOM(text("edge"), length("depth")),
    LAYOUT_EDGE_SHORT(text("edge"), length("free"), length("depth"), length("least")),
    LAYOUT_TAKEN(text("edge"), length("free"), length("depth"), length("least")),
    LAYOUT_PLANTERS(count("requested"), text("edge"), length("free"), length("least"), count("fit"), count("most")),
    LAYOUT_PLANTERS_OF_LENGTH(
            count("requested"),
            length("length"),
            length("offset"),
            text("edge"),
            length("free"),
            count("fit"),
            count("most")),
    LAYOUT_DIVIDERS(text("edge"), count("lost"), length("least")),
    LAYOUT_LENGTH(text("edge"), length("from"), length("to"), count("planters"), length("nearest")),
    LAYOUT_CURVE(text("edge"), length("radius"), length("depth"), length("least")),
    LAYOUT_SAG(text("edge"), length("sag"), length("requested"), length("least"), length("enough")),
    LAYOUT_SLOPE(length("fall"), text("run"), length("height"), message("shown"), length("enough"), text("possible")),
    LAYOUT_OVERLAP(text("planter"), text("other")),
    LAYOUT_OVERLAP_WITH_ITSELF(text("planter"));

    private final List<Slot> slots;

    LayoutProblemMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
