package borderwright.engine.filling;

import borderwright.engine.message.Message;

/**
 * One thing that planters are filled with.
 *
 * @param item its name in the price lists
 * @param layer what it is for
 * @param filledM3 volume once settled, m3
 * @param orderedM3 loose volume to have, m3
 * @param bought whether it must be bought; otherwise it is at hand
 */
public record Material(String item, Message layer, double filledM3, double orderedM3, boolean bought) {
    static Material bought(String item, Message layer, double filledM3, double orderedM3) {
        return new Material(item, layer, filledM3, orderedM3, true);
    }

    static Material atHand(String item, Message layer, double filledM3, double orderedM3) {
        return new Material(item, layer, filledM3, orderedM3, false);
    }
}
