package borderwright.pack.sheets;

import borderwright.engine.buying.why.Basket;
import borderwright.engine.plan.Plan;

/**
 * What to buy, from whom.
 *
 * @param plan the plan
 */
public record ShoppingSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Shopping list";
    }

    /** A supplier's terms in a sentence. */
    public String terms(Basket.Order order) {
        return plan.garden().suppliers().stream()
                .filter(s -> s.name().equals(order.supplier()))
                .map(s -> (s.isTaxIncluded() ? "Prices include tax." : "Prices without tax; it is added below.")
                        + s.quoted()
                                .map(day -> " Quoted " + day + ": ask again if that is over two weeks ago.")
                                .orElse(""))
                .findFirst()
                .orElse("");
    }
}
