package borderwright.pack.bench;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What stands on the sheets for the bench beside the figures. */
enum BenchMessage implements MessageCode {
    BENCH_RANGE(text("from"), text("to")),
    LEFT_OF_HOOK(text("off"), choice("on")),
    OVERHANGS_HOOK(text("off"), text("to"), choice("on")),
    ALONG_AND_ACROSS(text("along"), text("across")),
    BENCH_UP(text("range")),
    BENCH_LABELS(text("first"), text("last")),
    LABELS_OF_OWN_BOX(text("box")),
    LABELS_THERE(text("wall"), text("labels")),
    LABEL_FOR_LABEL(text("label"), text("drawn")),
    PART_OF_BOX(text("part"), text("box")),
    FLOOR_OF(text("planter")),
    FIXINGS_OF(count("count"), text("item")),
    FLOOR_FROM_ABOVE(text("planter"), text("scale")),
    STRIP_FAR_EDGE(text("range")),
    STRIP_HEIGHT(text("range")),
    STRIP_NOTCHED(choice("edge"), length("from"), length("to"), length("depth")),
    SCREW_HOLES(text("item"), text("pilot"), text("clearance"), text("countersink")),
    ABOVE_LOWER_EDGE(text("heights")),
    ABOVE_LOWER_EDGE_IN(count("number"), text("courses"), text("heights")),
    TWO_IN_EVERY_BOARD(text("heights")),
    THROUGH_DIVIDER(choice("face"), text("what"), text("heights")),
    BEFORE_THE_BOARDS(text("heights")),
    TWO_IN_LAPPING_BOARDS(text("heights")),
    IN_A_LINE_DOWN(text("edge")),
    SIDEWAYS_THROUGH_TIE(text("end"), text("heights")),
    AT_THE_CORNER,
    ROUND_THE_INNER_CORNER(length("first"), length("second"), length("leg")),
    STRAP_OVER(text("from"), text("to"), text("heights"), count("count")),
    TWO_AT_EACH_PLACE(text("edge")),
    SCREWS_INTO(text("place"), text("upright"), count("count")),
    SCREWS_AT(text("place"), count("count")),
    SCREWS_IN_COURSES(text("place"), count("number"), text("courses"), count("count")),
    SCREWS_THROUGH_AT(text("piece"), text("place"), count("count")),
    SCREWS_THROUGH_INTO_AT(text("piece"), text("upright"), text("place"), count("count")),
    STEP_LYING(count("step"), text("side")),
    STEP_CORNERS(count("step")),
    STEP_STANDING(count("step"), choice("kind")),
    BOX_CORNER(count("number")),
    WALL_ON_BENCH(choice("kind"), text("mark"), text("box"), count("of"), text("number"), text("scale")),
    ROW_OF_UPRIGHTS,
    ROW_OF_OTHERS,
    UPRIGHT_DEEP(text("depth")),
    UPRIGHT_OF_NEIGHBOUR,
    UPRIGHT_NEAR,
    UPRIGHT_FAR,
    UPRIGHT_FAR_EDGES(text("range")),
    BEHIND_WALL,
    BOARD_LONG(text("length")),
    BOARD_OTHER_FACE(choice("kind"), text("range")),
    CAP_OUTSIDE(text("off")),
    CAP_INNER(text("range"));

    private final List<Slot> slots;

    BenchMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
