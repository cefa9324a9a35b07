package borderwright.engine.buying.why;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.suppliers.ShoppingCase;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a basket pays for besides the boards that are cut: delivery, and boards that stay whole. */
final class PaidBesides {
    private final ShoppingCase shopping;
    private final ShoppingAnswer answer;

    PaidBesides(ShoppingCase shopping, ShoppingAnswer answer) {
        this.shopping = shopping;
        this.answer = answer;
    }

    /** How each order gets home, where that costs anything or there is another way. */
    List<Explanation.Delivery> deliveries() {
        List<Explanation.Delivery> deliveries = new ArrayList<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            SupplierTerms terms = shopping.suppliers.get(shopping.number(order.supplier()));
            Optional<DeliveryOption> next = terms.ways().stream()
                    .filter(w -> !w.fetched() && !order.fetched())
                    .filter(w -> w.fromValue() > order.value() && w.charge() < order.delivery())
                    .min(Comparator.comparingLong(DeliveryOption::fromValue));
            Optional<DeliveryOption> other = terms.ways().stream()
                    .filter(w -> w.fetched() != order.fetched() && w.fromValue() <= order.value())
                    .min(Comparator.comparingLong(DeliveryOption::charge));
            if (order.delivery() > 0 || other.isPresent()) {
                deliveries.add(new Explanation.Delivery(
                        order.supplier(),
                        order.fetched(),
                        order.delivery(),
                        next.map(w -> w.fromValue() - order.value()).orElse(SupplierTerms.NEVER),
                        next.map(DeliveryOption::charge).orElse(0L),
                        other.orElse(null),
                        terms.ways().stream()
                                .filter(w -> w.fetched() == order.fetched())
                                .mapToLong(DeliveryOption::longestTicks)
                                .min()
                                .orElse(DeliveryOption.ANY_LENGTH)));
            }
        }
        return deliveries;
    }

    /** Boards that are bought and not cut. */
    List<Explanation.Spare> spares() {
        List<Explanation.Spare> spares = new ArrayList<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            List<List<Object>> done = new ArrayList<>();
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                BoardOffer offer = line.offer();
                List<Object> kind = List.of(offer.section(), offer.lengthTicks());
                if (done.contains(kind)) {
                    continue;
                }
                done.add(kind);
                long there = 0;
                long paid = 0;
                for (ShoppingAnswer.BoardLine same : order.boards()) {
                    if (kind.equals(List.of(same.offer().section(), same.offer().lengthTicks()))) {
                        there += (long) same.packs() * same.offer().pack();
                        paid += same.packs() * same.offer().packPrice();
                    }
                }
                long spare = there - cut(order.supplier(), offer);
                if (spare > 0) {
                    spares.add(new Explanation.Spare(offer, spare, paid * spare / there));
                }
            }
        }
        return spares;
    }

    private long cut(String supplier, BoardOffer offer) {
        return answer.boards().stream()
                .filter(b -> !b.owned()
                        && b.supplier().equals(supplier)
                        && b.section().equals(offer.section())
                        && b.lengthTicks() == offer.lengthTicks())
                .mapToLong(LaidBoard::count)
                .sum();
    }
}
