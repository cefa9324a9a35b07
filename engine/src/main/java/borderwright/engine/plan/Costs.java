package borderwright.engine.plan;

import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.UsualPrices;
import borderwright.engine.message.Message;
import borderwright.engine.shopping.UnpricedItem;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What everything that the job needs costs.
 *
 * @param listed cost of the basket at the suppliers' prices, delivery and tax included; zero without a basket
 * @param unpriced what no supplier prices, with its usual price
 * @param use whether usual prices count
 * @param usual sum of those usual prices, tax included, delivery not
 * @param inAll listed and usual together; empty without a basket
 * @param overBudget how far that is over the budget, negative when under; empty without a budget or a basket
 */
public record Costs(
        Money listed,
        List<UnpricedItem> unpriced,
        UsualPrices.Use use,
        Money usual,
        Optional<Money> inAll,
        Optional<Money> overBudget) {
    public Costs {
        unpriced = List.copyOf(unpriced);
    }

    /** Of what is bought for a garden. */
    static Costs of(Garden garden, ShoppingAnswer answer) {
        Money listed = Money.ofMinor(garden.currency(), answer.cost() - answer.counted());
        List<UnpricedItem> unpriced = UnpricedItem.of(answer.unpriced(), garden.usualPrices(), garden.currency());
        Money usual = unpriced.stream()
                .flatMap(item -> item.usual().stream())
                .map(UnpricedItem.UsualCost::sum)
                .reduce(Money.zero(garden.currency()), Money::plus);
        Optional<Money> inAll =
                answer.status() == ShoppingAnswer.Status.FOUND ? Optional.of(listed.plus(usual)) : Optional.empty();
        Optional<Money> over = inAll.flatMap(cost -> budget(garden).map(most -> cost.minus(most)));
        return new Costs(listed, unpriced, garden.usualPrices().use(), usual, inAll, over);
    }

    /** The most that a garden may cost, if it is limited. */
    static Optional<Money> budget(Garden garden) {
        return garden.budget().map(most -> Money.of(garden.currency(), most, RoundingMode.HALF_UP));
    }

    /** How many things have neither a price nor a usual one: they are not in the sum. */
    public int notCounted() {
        return (int) unpriced.stream().filter(item -> item.usual().isEmpty()).count();
    }

    /** What the sum in all holds. */
    public Message covers() {
        if (inAll.isEmpty()) {
            return CostMessage.NO_BASKET.of();
        }
        int left = notCounted();
        if (left == 0 || use == UsualPrices.Use.COUNTED) {
            Message covered = usual.isZero()
                    ? CostMessage.COVERS_LISTED.of()
                    : CostMessage.COVERS_LISTED_AND_USUAL.of(listed, usual);
            return left == 0 ? covered : CostMessage.COVERS_NOT_ALL.of(left, covered);
        }
        return use == UsualPrices.Use.PUT_OFF
                ? CostMessage.USUAL_PRICES_PUT_OFF.of(left)
                : CostMessage.NO_USUAL_PRICES.of(listed.getCurrencyUnit().getCode(), left);
    }

    /** How far the sum in all is over or under the budget; nothing without a budget or a basket. */
    public Optional<Message> againstBudget() {
        int left = notCounted();
        return overBudget.map(over -> {
            if (over.isPositive()) {
                return CostMessage.BUDGET_EXCEEDED.of(over);
            }
            if (left > 0) {
                return CostMessage.BUDGET_KEPT_SO_FAR.of(left, over.abs());
            }
            return over.isZero() ? CostMessage.BUDGET_JUST_MET.of() : CostMessage.BUDGET_KEPT.of(over.abs());
        });
    }

    /** What is known of whether the listed goods could be cheaper; the reason why not, without a basket. */
    public Message proof(Basket basket) {
        if (inAll.isEmpty()) {
            return CostMessage.NOTHING_PROVEN.of();
        }
        return basket.proven()
                ? CostMessage.BASKET_PROVEN_CHEAPEST.of()
                : CostMessage.BASKET_BEST_FOUND.of(basket.bound());
    }
}
