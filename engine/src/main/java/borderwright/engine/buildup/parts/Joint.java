package borderwright.engine.buildup.parts;

import borderwright.engine.message.Message;
import java.util.List;

/**
 * What holds two pieces of a box to each other, and where each of its screws goes.
 *
 * @param hold which joint it is
 * @param use what it holds, as on the shopping list
 * @param item name of the screw or other fixing
 * @param side index of the side that it is on; of {@link Box.Hold#DIVIDER_TO_UPRIGHT} the index of the divider
 * @param through label of what lies under the heads; empty for every board of the wall or divider
 * @param into label of what the screws end in; empty for every board of the wall or divider
 * @param screws where each goes
 */
public record Joint(
        Box.Hold hold, Message use, String item, int side, String through, String into, List<ScrewLine> screws) {
    public Joint {
        screws = List.copyOf(screws);
    }

    /** Whether one of the box's counted fixings is of its kind. */
    public boolean isOf(Box.Fixing fixing) {
        return fixing.hold() == hold
                && fixing.item().equals(item)
                && fixing.use().equals(use);
    }
}
