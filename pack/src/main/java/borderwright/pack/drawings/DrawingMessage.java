package borderwright.pack.drawings;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Texts on drawings, and what a drawing is called for those who hear it read. */
enum DrawingMessage implements MessageCode {
    DRAWN_SCALE(text("scale")),
    DRAWN_WAITS(text("piece")),
    DRAWN_FACE_DOWN(text("piece")),
    DRAWN_KEEP(piece("length")),
    DRAWN_WASTE(piece("length")),
    DRAWN_BOARD(text("board")),
    DRAWN_PLAN(text("garden"), text("scale")),
    DRAWN_OPENING(text("number")),
    DRAWN_FEET,
    DRAWN_PEG(text("mark"), text("number")),
    DRAWN_PEGS(text("mark")),
    DRAWN_SURVEY,
    DRAWN_READING(text("number")),
    DRAWN_DIVIDER(text("number")),
    DRAWN_ELLIPSES(piece("length")),
    DRAWN_FRONT(text("boxes")),
    DRAWN_FRONT_ALONG(text("boxes"), text("edge")),
    DRAWN_FRONT_OF_SIDE(text("boxes"), text("side")),
    DRAWN_FRONT_OF_SIDE_ALONG(text("boxes"), text("side"), text("edge")),
    DRAWN_FRONT_GOES_ON(text("boxes")),
    DRAWN_FRONTS_ALIKE(text("fronts")),
    DRAWN_SEEN_FROM_OUTSIDE(text("title"), text("scale")),
    DRAWN_DIAGONAL(length("diagonal")),
    DRAWN_BED(length("height")),
    DRAWN_LABELS(text("first"), text("last")),
    LAYER_COURSE(text("course")),
    LAYER_UPRIGHTS,
    LAYER_FALSE_FLOOR,
    LAYER_PLATFORM,
    LAYER_CAPPING,
    LAYER_FROM_ABOVE(text("scale")),
    LAYER_DRAWN_APART(text("scale")),
    LAYER_OF_BOX(message("layer"), text("box")),
    BULGE_LARGER(text("times")),
    BULGE_SMALLER(text("times")),
    BULGE_KEY(message("bulge")),
    BULGE_KEY_WITH_LIMIT(message("bulge"), length("limit")),
    BULGE_AT_MOST(message("side"), text("most")),
    BULGE_SIDES(text("box"), text("scale"), message("bulge"), commas("sides")),
    BULGE_OF_SIDES(count("many"), text("sides")),
    BULGE_COURSE(text("course")),
    DRAWN_CARD(count("number")),
    CARD_FROM_ABOVE,
    CARD_NEAR_EDGE,
    CARD_STOP,
    CARD_KEEP,
    CARD_FACE(choice("face")),
    BED_WALL(length("height")),
    BED_SECTION(text("box")),
    BED_TURF(length("depth")),
    BED_GROUND,
    BED_LEVEL,
    BED_GRAVEL(length("depth")),
    BED_GRAVEL_IN_LAYERS(length("depth")),
    BED_DUG_TO,
    BED_DUG_TO_MEMBRANE,
    TEMPLATE_FULL_SIZE(message("title")),
    TEMPLATE_BAR(piece("bar")),
    TEMPLATE_OTHER_BAR(piece("bar")),
    TEMPLATE_INSIDE(angle("angle")),
    TEMPLATE_WALL_FACE,
    TEMPLATE_EDGE,
    TEMPLATE_SQUARE,
    TEMPLATE_CUT,
    TEMPLATE_OF_CORNER(angle("angle")),
    TEMPLATE_OF_CUT(angle("angle")),
    TEMPLATE_NAMES_AND_MORE(text("names"), text("more"));

    private final List<Slot> slots;

    DrawingMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
