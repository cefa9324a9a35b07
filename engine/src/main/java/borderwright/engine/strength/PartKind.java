package borderwright.engine.strength;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Kinds of parts that are checked: of each kind the worst one is reported. */
public enum PartKind implements MessageCode {
    WALL_BOARDS,
    DIVIDER_BOARDS,
    CAPPING,
    TIES,
    POSTS_AND_BRACES,
    WALL_SCREWS,
    TIE_SCREWS,
    DIVIDER_SCREWS,
    CORNER_SCREWS,
    STRAPS,
    STRAP_SCREWS,
    FOOTINGS,
    SLATS,
    BEARERS,
    LEGS,
    GRAVEL_BED,
    GROUND,
    RETAINING_SIDE,
    GROUND_UNDER_RETAINING_BOX;

    private static final String CODE = "part-";

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
    }
}
