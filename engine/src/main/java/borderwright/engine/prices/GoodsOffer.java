package borderwright.engine.prices;

import java.math.BigDecimal;

/**
 * Goods that can be bought, by the box, roll, bag, tin or load.
 *
 * @param supplier who sells it
 * @param item its name on the shopping list
 * @param price price of one as priced, minor units
 * @param contains how much is in one, in the shopping list's unit
 * @param available how many are to be had, {@link Integer#MAX_VALUE} for as many as needed
 * @param least how many from which the price holds for all of them, 1 for any number
 * @param deliveredOnly whether it comes by the supplier's lorry only, as a load of soil does
 */
public record GoodsOffer(
        String supplier,
        String item,
        long price,
        BigDecimal contains,
        int available,
        int least,
        boolean deliveredOnly) {
    public GoodsOffer {
        if (price < 0 || contains.signum() <= 0 || available < 0 || least < 1) {
            throw new IllegalArgumentException("offer of " + item + " needs a price of 0 or more and a content");
        }
    }

    /** A price for any number, of what can be fetched. */
    public GoodsOffer(String supplier, String item, long price, BigDecimal contains, int available) {
        this(supplier, item, price, contains, available, 1, false);
    }

    /** Whether the price holds only from more than one on. */
    public boolean hasBreak() {
        return least > 1;
    }

    /** The same where its price holds for so many or more. */
    public GoodsOffer soldFrom(int count) {
        return new GoodsOffer(supplier, item, price, contains, available, count, deliveredOnly);
    }

    /** The same where it comes by the supplier's lorry only. */
    public GoodsOffer byLorryOnly() {
        return new GoodsOffer(supplier, item, price, contains, available, least, true);
    }

    public GoodsOffer withPrice(long other) {
        return new GoodsOffer(supplier, item, other, contains, available, least, deliveredOnly);
    }
}
