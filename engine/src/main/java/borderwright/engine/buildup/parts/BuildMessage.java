package borderwright.engine.buildup.parts;

import static borderwright.engine.message.Slot.angle;
import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a builder should know of a box, and what could not be built as asked. */
public enum BuildMessage implements MessageCode {
    COURSES_OF_DRY_BOARDS(
            length("requested"),
            count("courses"),
            piece("width"),
            text("capped"),
            length("built"),
            piece("tolerance"),
            length("least"),
            length("most")),
    COURSES_OF_WET_BOARDS(
            length("requested"),
            count("courses"),
            piece("width"),
            text("capped"),
            length("built"),
            length("dry"),
            piece("tolerance"),
            length("least"),
            length("most")),
    /** {@code heights} is 2 where a second height would do as well, else 1. */
    HEIGHT_NOT_WHOLE_COURSES(
            text("box"), length("requested"), text("section"), length("dry"), count("heights"), length("other")),
    WALLS_MEET(text("box"), piece("thickness")),
    CORNER_BEYOND_SAWS(count("corner"), text("box"), angle("angle"), text("style"), angle("cut")),
    CORNER_OF_OTHER_STYLE(count("corner"), text("box"), angle("angle"), text("style"), text("requested"), angle("cut")),
    CORNER_WITHOUT_POST(count("corner"), text("box"), angle("angle")),
    CORNER_POST_RIPPED(count("corner"), text("box"), angle("angle")),
    CORNER_POSTS_TREATED(count("corner"), text("box"), angle("angle")),
    CORNER_POSTS_UNRIPPED(count("corner"), text("box"), angle("angle"), text("section")),
    CORNER_POST_ON_ONE_BOARD(count("corner"), text("box"), angle("angle")),
    SIDE_LONGER_THAN_BOARDS(text("side"), text("box"), length("length"), text("section"), piece("longest")),
    DIVIDER_LONGER_THAN_BOARDS(count("divider"), text("box"), piece("length"), text("section"), piece("longest")),
    JOINTS_IN_LINE(text("side"), text("box")),
    NO_ROOM_FOR_BRACE(text("side"), text("box"), length("at")),
    NO_ROOM_FOR_TIE(text("side"), text("box"), length("at")),
    WALL_TOO_LOW_FOR_TIES(text("box"), text("section")),
    TIES_BEFORE_SOIL(length("below")),
    DIVIDER_WITHOUT_UPRIGHT(count("divider"), text("box"), text("side")),
    PLATFORM_OUT_OF_REACH(length("height"), text("box"), piece("least"), length("most"), length("below")),
    /** {@code on} is legs or bearers. */
    FLOOR_STANDS(text("box"), length("height"), text("on")),
    FLOOR_STANDS_WITH_GAPS(text("box"), length("height"), text("on"), piece("gap")),
    PLANTER_TOO_NARROW_FOR_SLATS(text("box"), text("section")),
    SLAT_LEFT_OUT(text("box"), text("planter")),
    CAPPING_DOES_NOT_FIT(text("section"), text("box"), text("why")),
    UPRIGHTS_INTO_GROUND(text("box"), length("depth")),
    TREATED_TIMBER(commas("sections")),
    HEADS_COVERED(count("screws"), text("box"), commas("uprights")),
    SHORT_PIECES,
    CUTS_BEYOND_SAWS,
    RIPPING_WITH_CARE,
    PILOT_HOLES(length("end"));

    private final List<Slot> slots;

    BuildMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
