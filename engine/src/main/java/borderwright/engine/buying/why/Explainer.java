package borderwright.engine.buying.why;

import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.suppliers.ShoppingCase;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;

/**
 * Explains a basket by asking again with one thing changed.
 *
 * <p>The price at which a board wins is sought from below: the best basket with the board for nothing is kept, and its price
 * raised until that basket costs as much as the one explained; then the best basket at one unit more is asked for, and so on
 * until none is cheaper. A few searches settle one board, since every basket's cost is a straight line in the price.
 */
public final class Explainer {
    /** Different lengths of pieces beyond which asking again takes longer than a person waits. */
    private static final int MOST_SIZES = 200;

    /** Rows of the list beyond which even reading it again takes a while. */
    private static final int MOST_ROWS = 10_000;

    private static final int MOST_BOARDS = 12;
    private static final int MOST_PROBES = 30;
    private static final long PROBE_WORK = 100_000;
    private static final int WHOLE = 1000;

    private final ShoppingProblem problem;
    private final ShoppingProblem bare;
    private final ShoppingAnswer answer;
    private final Budget budget;
    private final ShoppingCase shopping;

    private Explainer(ShoppingProblem problem, ShoppingProblem bare, ShoppingAnswer answer, Budget budget) {
        this.problem = problem;
        this.bare = bare;
        this.answer = answer;
        this.budget = budget;
        this.shopping = new ShoppingCase(problem);
    }

    /**
     * Explains a basket.
     *
     * @param problem what was asked
     * @param answer what was found; only what it pays for is told where it is not proven
     * @param budget how much work asking again may take; what is not settled within it is left out
     */
    public static Explanation explain(ShoppingProblem problem, ShoppingAnswer answer, Budget budget) {
        return explain(problem, problem, answer, budget);
    }

    /**
     * Explains a basket whose pieces may nest.
     *
     * @param problem each piece with its whole length: what it buys can be cut
     * @param bare each piece with the least length that nesting may leave it: nothing costs less
     * @param answer what was found, proven by the bare list
     * @param budget as above
     */
    public static Explanation explain(
            ShoppingProblem problem, ShoppingProblem bare, ShoppingAnswer answer, Budget budget) {
        if (answer.status() != ShoppingAnswer.Status.FOUND) {
            return Explanation.NONE;
        }
        return new Explainer(problem, bare, answer, budget).explain();
    }

    private Explanation explain() {
        boolean asks = answer.proven()
                && problem.demands().size() <= MOST_ROWS
                && problem.demands().stream()
                                .map(d -> List.of(d.section(), d.lengthTicks()))
                                .distinct()
                                .limit(MOST_SIZES + 1L)
                                .count()
                        <= MOST_SIZES;
        // In the order of their use to a person, since the work may not do for all.
        List<Explanation.DearerLength> dearer = asks ? dearer() : List.of();
        List<Explanation.SupplierWins> suppliers = asks ? suppliers() : List.of();
        List<Explanation.BoardWins> boards = asks ? boards() : List.of();
        return new Explanation(boards, suppliers, dearer, deliveries(), spares(), 0);
    }

    private Set<BoardOffer> bought() {
        Set<BoardOffer> bought = new HashSet<>();
        answer.orders().forEach(order -> order.boards().forEach(line -> bought.add(line.offer())));
        return bought;
    }

    private List<BoardOffer> wanted() {
        Set<String> sections = new HashSet<>();
        problem.demands().forEach(d -> sections.add(d.section()));
        return problem.boards().stream()
                .filter(b -> sections.contains(b.section()) && b.available() >= b.pack())
                .toList();
    }

    private List<Explanation.BoardWins> boards() {
        Set<BoardOffer> bought = bought();
        List<BoardOffer> others = wanted().stream()
                .filter(b -> !bought.contains(b) && b.packPrice() > 0)
                .sorted(Comparator.comparingDouble(this::perTick))
                .limit(MOST_BOARDS)
                .toList();
        List<Explanation.BoardWins> wins = new ArrayList<>();
        for (BoardOffer offer : others) {
            mark(offer.packPrice(), price -> at(offer, price))
                    .ifPresent(m -> wins.add(new Explanation.BoardWins(offer, m.at, m.sharp)));
        }
        wins.sort(Comparator.comparingDouble(
                w -> 1 - w.atPrice() / (double) w.offer().packPrice()));
        return wins;
    }

    private ShoppingProblem at(BoardOffer offer, long price) {
        return problem.withOffers(
                problem.boards().stream()
                        .map(b -> b.equals(offer) ? b.withPrice(price) : b)
                        .toList(),
                problem.goods());
    }

    private List<Explanation.SupplierWins> suppliers() {
        Set<String> used = new HashSet<>();
        answer.orders().forEach(order -> used.add(order.supplier()));
        List<Explanation.SupplierWins> wins = new ArrayList<>();
        for (SupplierTerms terms : shopping.suppliers) {
            if (!used.contains(terms.name())) {
                mark(WHOLE, share -> allAt(terms.name(), share))
                        .ifPresent(m -> wins.add(new Explanation.SupplierWins(terms.name(), (int) m.at, m.sharp)));
            }
        }
        return wins;
    }

    private ShoppingProblem allAt(String supplier, long share) {
        return problem.withOffers(
                problem.boards().stream()
                        .map(b -> b.supplier().equals(supplier) ? b.withPrice(shared(b.packPrice(), share)) : b)
                        .toList(),
                problem.goods().stream()
                        .map(g -> g.supplier().equals(supplier) ? g.withPrice(shared(g.price(), share)) : g)
                        .toList());
    }

    /** The rounding rule: up, so that a cut is never told too small. */
    private static long shared(long price, long share) {
        return Math.floorDiv(Math.addExact(Math.multiplyExact(price, share), WHOLE - 1), WHOLE);
    }

    private record Mark(long at, boolean sharp) {}

    /** Greatest value below {@code whole} at which a cheaper basket was found; empty when there is none or work ran out. */
    private Optional<Mark> mark(long whole, LongFunction<ShoppingProblem> changed) {
        long found = -1;
        for (int probe = 0; probe < MOST_PROBES; probe++) {
            if (budget.isSpent()) {
                return Optional.empty();
            }
            long at = found + 1;
            if (at >= whole) {
                // At its own price nothing is cheaper: that was proven before.
                return Optional.of(new Mark(found, nothingNests()));
            }
            ShoppingProblem then = changed.apply(at);
            ShoppingAnswer other = buy(then);
            if (other.status() != ShoppingAnswer.Status.FOUND || other.cost() >= answer.cost()) {
                boolean sharp = nothingNests()
                        && other.status() == ShoppingAnswer.Status.FOUND
                        && other.bound() >= answer.cost();
                return found < 0 ? Optional.empty() : Optional.of(new Mark(found, sharp));
            }
            found = breakEven(other, then, at, whole, changed);
        }
        return Optional.of(new Mark(found, false));
    }

    /** Greatest value up to which this very basket costs less than the one explained. */
    private long breakEven(
            ShoppingAnswer other, ShoppingProblem then, long from, long whole, LongFunction<ShoppingProblem> changed) {
        long low = from;
        long high = whole;
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (repriced(other, then, changed.apply(middle)) < answer.cost()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** What a basket found for {@code then} costs at the prices of {@code now}, minor units. */
    private long repriced(ShoppingAnswer other, ShoppingProblem then, ShoppingProblem now) {
        IdentityHashMap<Object, Long> price = new IdentityHashMap<>();
        for (int i = 0; i < then.boards().size(); i++) {
            price.put(then.boards().get(i), now.boards().get(i).packPrice());
        }
        for (int i = 0; i < then.goods().size(); i++) {
            price.put(then.goods().get(i), now.goods().get(i).price());
        }
        long sum = 0;
        for (ShoppingAnswer.Order order : other.orders()) {
            long value = 0;
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                value += line.packs() * price.getOrDefault(line.offer(), 0L);
                sum += line.packs() * line.offer().instead().counted();
            }
            for (ShoppingAnswer.GoodsLine line : order.goods()) {
                value += line.count() * price.getOrDefault(line.offer(), 0L);
            }
            int k = supplier(order.supplier());
            if (value < shopping.suppliers.get(k).minimumOrder()) {
                return Long.MAX_VALUE;
            }
            long paid = Long.MAX_VALUE;
            for (DeliveryOption way : shopping.suppliers.get(k).ways()) {
                boolean carries = value >= way.fromValue()
                        && order.boards().stream().allMatch(line -> way.carries(line.offer()))
                        && order.goods().stream().allMatch(line -> way.carries(line.offer()));
                paid = carries ? Math.min(paid, shopping.paid(k, value, way)) : paid;
            }
            if (paid == Long.MAX_VALUE) {
                return paid;
            }
            sum = Math.addExact(sum, paid);
        }
        return sum;
    }

    private int supplier(String name) {
        int k = 0;
        while (!shopping.suppliers.get(k).name().equals(name)) {
            k++;
        }
        return k;
    }

    /** Searches until a basket is cheaper than the one explained, none can be, or the work is spent. */
    private ShoppingAnswer buy(ShoppingProblem changed) {
        boolean[] cheaper = {false};
        Budget part = new Budget(PROBE_WORK, () -> cheaper[0] || budget.isSpent());
        ShoppingAnswer found = Shopper.buy(changed, part, (cost, bound) -> cheaper[0] |= cost < answer.cost());
        // Even a search that ends in its first rules of thumb has read every piece.
        budget.spend(1000 * part.used() + 1000 + problem.demands().size());
        return found;
    }

    private boolean nothingNests() {
        return problem.equals(bare);
    }

    private double perTick(BoardOffer offer) {
        return shopping.grains(offer.packPrice(), supplier(offer.supplier()))
                / ((double) offer.lengthTicks() * offer.pack());
    }

    private List<Explanation.DearerLength> dearer() {
        List<Explanation.DearerLength> dearer = new ArrayList<>();
        Set<BoardOffer> bought = bought();
        for (BoardOffer offer : wanted()) {
            BoardOffer cheapest = wanted().stream()
                    .filter(b -> b.section().equals(offer.section()))
                    .min(Comparator.comparingDouble(this::perTick))
                    .orElse(offer);
            if (!bought.contains(offer) || perTick(cheapest) >= perTick(offer) || budget.isSpent()) {
                continue;
            }
            ShoppingAnswer without = buy(bare.withOffers(
                    bare.boards().stream().filter(b -> !b.equals(offer)).toList(), bare.goods()));
            boolean possible = without.status() != ShoppingAnswer.Status.IMPOSSIBLE;
            if (!possible || without.bound() > answer.cost()) {
                dearer.add(new Explanation.DearerLength(
                        offer,
                        cheapest,
                        possible,
                        possible ? without.bound() - answer.cost() : 0,
                        offcut(answer, offer.section()),
                        possible && nothingNests() ? offcut(without, offer.section()) : 0));
            }
        }
        return dearer;
    }

    /** Length of a section bought beyond the pieces that are cut from bought boards, ticks. */
    private static long offcut(ShoppingAnswer of, String section) {
        long ticks = 0;
        for (ShoppingAnswer.Order order : of.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                BoardOffer offer = line.offer();
                ticks += offer.section().equals(section) ? (long) line.packs() * offer.pack() * offer.lengthTicks() : 0;
            }
        }
        for (LaidBoard board : of.boards()) {
            if (!board.owned() && board.section().equals(section)) {
                for (LaidBoard.LaidPiece piece : board.pieces()) {
                    ticks -= board.count() * piece.lengthTicks();
                }
            }
        }
        return ticks;
    }

    private List<Explanation.Delivery> deliveries() {
        List<Explanation.Delivery> deliveries = new ArrayList<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            SupplierTerms terms = shopping.suppliers.get(supplier(order.supplier()));
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

    private List<Explanation.Spare> spares() {
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
