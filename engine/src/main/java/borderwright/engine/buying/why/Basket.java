package borderwright.engine.buying.why;

import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * What to buy where, and what it costs with tax and delivery.
 *
 * @param orders one for each supplier that is bought from
 * @param total what is paid in all, tax and delivery included
 * @param bound no basket that serves the list can cost less
 * @param proven whether the bound proves the total: nothing can be cheaper
 * @param unpriced things on the shopping list that no supplier prices, not in the total
 * @param reasons why this basket: each supplier alone against the mix and the like; without a basket why there is none
 */
public record Basket(
        List<Order> orders, Money total, Money bound, boolean proven, List<Unpriced> unpriced, List<Message> reasons) {
    public Basket {
        orders = List.copyOf(orders);
        unpriced = List.copyOf(unpriced);
        reasons = List.copyOf(reasons);
    }

    /**
     * The order to one supplier.
     *
     * @param supplier its name
     * @param lines what is bought
     * @param goods sum of the lines as priced
     * @param fetched whether you fetch it yourself; else it is delivered
     * @param delivery delivery charge as priced, or what fetching it costs; zero when free
     * @param tax tax added; zero when prices include it
     * @param total goods, delivery and tax
     */
    public record Order(
            String supplier, List<Line> lines, Money goods, boolean fetched, Money delivery, Money tax, Money total) {
        public Order {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line of an order.
     *
     * @param item section or goods name
     * @param length length of a board; {@link Length#ZERO} for goods
     * @param count boards, or boxes, rolls, bags
     * @param pack boards in a pack, 1 when sold singly
     * @param unitPrice price of one, as priced (of a pack when {@code pack} is more than 1)
     * @param contains how much is in one of the goods, in the unit of the shopping list; 1 for boards
     * @param sum price of the line, as priced
     */
    public record Line(
            String item, Length length, int count, int pack, BigDecimal contains, Money unitPrice, Money sum) {
        /** How many packs of boards these are; the boards themselves where they are sold singly. */
        public int packs() {
            return count / pack;
        }
    }

    /**
     * Something needed that nobody prices.
     *
     * @param item its name on the shopping list
     * @param quantity how much, with its unit, in words
     */
    public record Unpriced(String item, String quantity) {}
}
