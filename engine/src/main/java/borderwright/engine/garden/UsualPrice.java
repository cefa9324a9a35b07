package borderwright.engine.garden;

import java.math.BigDecimal;

/**
 * What goods that no supplier prices usually cost, tax included, delivery not.
 *
 * @param goods the words with which their name on the shopping list begins; empty for whatever else is sold in that unit
 * @param contains how much is in one as sold, above 0
 * @param unit unit of that, as on the shopping list
 * @param price price of one, in the list's currency, above 0
 * @param origin a default, and what it rests on
 */
public record UsualPrice(String goods, BigDecimal contains, String unit, BigDecimal price, Origins.Origin origin) {
    public UsualPrice {
        if (contains.signum() <= 0 || price.signum() <= 0) {
            throw new IllegalArgumentException("a usual price of " + goods
                    + " needs a content and a price above 0, got " + contains + " and " + price);
        }
    }

    /** Whether it prices goods of that name: {@code screw} does so for {@code screw 5 x 70}, not for {@code screwdriver}. */
    boolean names(String item) {
        return goods.isEmpty() || item.equals(goods) || item.startsWith(goods + " ") || item.startsWith(goods + ",");
    }
}
