package borderwright.engine.assembly;

import static borderwright.engine.message.Slot.commas;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.piece;
import static borderwright.engine.message.Slot.text;
import static borderwright.engine.message.Slot.weight;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** How walls, dividers and floors lie on the bench, and the steps by which a box is put together. */
public enum AssemblyMessage implements MessageCode {
    BENCH_SIDE(text("side")),
    BENCH_DIVIDER(count("divider")),
    WALL_FACE_UP,
    DIVIDER_FACE_UP,
    FLOOR_FACE_UP,
    TAPE_HOOKS_ON_WALL(text("board"), text("end")),
    TAPE_HOOKS_IN_FLOOR(message("first"), message("second")),
    TAPE_HOOKS_IN_CORNER,
    CORNER_FROM_HOOK(length("off"), text("way"), text("corner")),
    UPRIGHT_PACKED(text("upright"), piece("pack")),
    LAY_WALL(text("side"), count("uprights")),
    LAY_WALL_PACKS(commas("packs")),
    LAY_WALL_FOOTINGS(length("below")),
    STAND_WALL(text("side")),
    STAND_CLEAR_OF_WALL(commas("sides"), count("number"), length("room")),
    BRUSH_BEFORE_MOVING(commas("sides"), count("number")),
    MOVE_WALLS(text("way")),
    BRACE_BEFORE_MOVING,
    WALLS_WEIGH(weight("weight"), count("people")),
    BRUSH_CUT_ENDS,
    JOIN_WALL(text("side"), text("way"), commas("others")),
    PIECES_AS_DRAWN(count("uprights"), count("boards")),
    DRILL_FOR(text("screw"), text("pilot"), text("clearance"), text("countersink")),
    SQUARE_BOX(text("shape")),
    SQUARE_BY_PUSHING(length("within"), text("battens")),
    DIAGONAL_LENGTH(count("from"), count("to"), length("length")),
    FIT_DIVIDERS(count("dividers"), count("first"), count("last")),
    FIT_TIES(count("ties")),
    TIES_LEVEL(length("up")),
    LAY_BEARERS(count("bearers"), count("legs")),
    LAY_SLATS(count("slats")),
    LAY_CAPPING(count("boards")),
    LINE_BOX,
    FABRIC_ON_SLATS,
    PEOPLE_FOR_WALL(count("people"), weight("weight"), text("way")),
    PEOPLE_FOR_PIECE(count("people"), text("piece"), weight("weight")),
    ALONE_BOARD_BY_BOARD;

    private final List<Slot> slots;

    AssemblyMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
