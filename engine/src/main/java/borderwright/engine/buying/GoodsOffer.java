package borderwright.engine.buying;

import java.math.BigDecimal;

/**
 * Goods that can be bought, by the box, roll, bag, tin or load.
 *
 * @param supplier who sells it
 * @param item its name on the shopping list
 * @param price price of one as priced, minor units
 * @param contains how much is in one, in the shopping list's unit
 * @param available how many are to be had, {@link Integer#MAX_VALUE} for as many as needed
 */
public record GoodsOffer(String supplier, String item, long price, BigDecimal contains, int available) {
    public GoodsOffer {
        if (price < 0 || contains.signum() <= 0 || available < 0) {
            throw new IllegalArgumentException("offer of " + item + " needs a price of 0 or more and a content");
        }
    }

    GoodsOffer withPrice(long other) {
        return new GoodsOffer(supplier, item, other, contains, available);
    }
}
