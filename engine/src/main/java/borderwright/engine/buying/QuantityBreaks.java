package borderwright.engine.buying;

import borderwright.engine.stock.Budget;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Prices that hold from a number of boards or of goods on.
 *
 * <p>A tree over these prices. At its root every price holds for any number: what that costs is a bound. Where a basket takes
 * a price without reaching its number, one branch leaves the price out, the other buys the number first and goes on from
 * there. The node with the least bound comes next; mostly the root is the end.
 */
final class QuantityBreaks {
    private final Budget budget;
    private final Progress progress;
    private final PriorityQueue<Node> open =
            new PriorityQueue<>(Comparator.comparingLong(Node::bound).thenComparingInt(Node::number));
    /** Bound of what could neither be solved to its end nor branched any further. */
    private long unsettled = Long.MAX_VALUE;

    private @Nullable ShoppingAnswer best;
    private int made;
    private int unpriced;

    private QuantityBreaks(Budget budget, Progress progress) {
        this.budget = budget;
        this.progress = progress;
    }

    /**
     * A basket that takes a price without reaching its number.
     *
     * @param problem what it serves
     * @param boards the price, of boards
     * @param goods the price, of goods; one of the two is null
     * @param bound nothing below this node costs less
     * @param number in the order of making
     */
    private record Node(
            ShoppingProblem problem,
            @Nullable BoardOffer boards,
            @Nullable GoodsOffer goods,
            long bound,
            int number) {
        ShoppingProblem withoutPrice() {
            return problem.withOffers(
                    problem.boards().stream().filter(b -> !b.equals(boards)).toList(),
                    problem.goods().stream().filter(g -> !g.equals(goods)).toList());
        }

        Optional<ShoppingProblem> buyingFirst() {
            if (boards != null) {
                return boards.available() >= boards.leastPacks() * boards.pack()
                        ? Optional.of(problem.buyingFirst(boards))
                        : Optional.empty();
            }
            return Optional.ofNullable(goods).map(problem::buyingFirst);
        }
    }

    static boolean has(ShoppingProblem problem) {
        return problem.boards().stream().anyMatch(BoardOffer::hasBreak)
                || problem.goods().stream().anyMatch(GoodsOffer::hasBreak);
    }

    static ShoppingAnswer buy(ShoppingProblem problem, Budget budget, Progress progress) {
        return new QuantityBreaks(budget, progress).run(problem);
    }

    private ShoppingAnswer run(ShoppingProblem asked) {
        // Goods whose number cannot be had at all have no price; boards fall out on their own, since every piece is
        // needed.
        ShoppingProblem problem = asked.withOffers(
                asked.boards(),
                asked.goods().stream().filter(g -> g.available() >= g.least()).toList());
        ShoppingAnswer root = Shopper.buyAsPriced(problem, budget);
        unpriced = root.unpriced().size();
        take(problem, root, 0);
        while (!open.isEmpty()) {
            Node next = open.peek();
            if (best != null && (next.bound >= best.cost() || budget.isSpent())) {
                break;
            }
            open.remove();
            ShoppingProblem without = next.withoutPrice();
            take(without, Shopper.buyAsPriced(without, budget), next.bound);
            Optional<ShoppingProblem> first = next.buyingFirst();
            if (first.isPresent()) {
                take(first.get(), Shopper.buyAsPriced(first.get(), budget), next.bound);
            }
        }
        long bound = Math.min(unsettled, open.isEmpty() ? Long.MAX_VALUE : open.peek().bound);
        if (best == null) {
            return none(root, bound);
        }
        return best.withBound(bound).withAlternatives(alone(root, best.equals(root)));
    }

    private void take(ShoppingProblem problem, ShoppingAnswer answer, long above) {
        // Without a price that some goods need, they are not served.
        if (answer.status() == ShoppingAnswer.Status.IMPOSSIBLE
                || answer.unpriced().size() > unpriced) {
            return;
        }
        if (answer.status() == ShoppingAnswer.Status.STOPPED) {
            unsettled = Math.min(unsettled, above);
            return;
        }
        long bound = Math.max(above, answer.bound());
        Optional<BoardOffer> price = shortOf(problem, answer);
        Optional<GoodsOffer> goodsPrice = price.isPresent() ? Optional.empty() : shortOfGoods(answer);
        if (price.isPresent() || goodsPrice.isPresent()) {
            open.add(new Node(problem, price.orElse(null), goodsPrice.orElse(null), bound, made++));
            return;
        }
        if (best == null || answer.cost() < best.cost()) {
            best = answer;
            progress.better(answer.cost(), Math.min(answer.cost(), above));
        }
        if (bound < answer.cost()) {
            unsettled = Math.min(unsettled, bound);
        }
    }

    /** A price that a basket takes for fewer boards than it holds from. */
    private static Optional<BoardOffer> shortOf(ShoppingProblem problem, ShoppingAnswer answer) {
        Map<BoardOffer, Long> packs = new HashMap<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            order.boards().forEach(line -> packs.merge(line.offer(), (long) line.packs(), Long::sum));
        }
        return problem.boards().stream()
                .filter(b -> b.hasBreak() && packs.containsKey(b) && packs.getOrDefault(b, 0L) < b.leastPacks())
                .findFirst();
    }

    private static Optional<GoodsOffer> shortOfGoods(ShoppingAnswer answer) {
        return answer.orders().stream()
                .flatMap(order -> order.goods().stream())
                .filter(line -> line.count() < line.offer().least())
                .map(ShoppingAnswer.GoodsLine::offer)
                .findFirst();
    }

    /** Leaving a price out or buying in advance says nothing of a supplier alone; the bound at the root does. */
    private static List<ShoppingAnswer.Alternative> alone(ShoppingAnswer root, boolean isBest) {
        return root.alternatives().stream()
                .map(a -> isBest ? a : a.costing(Long.MAX_VALUE))
                .toList();
    }

    private static ShoppingAnswer none(ShoppingAnswer root, long bound) {
        boolean impossible = bound == Long.MAX_VALUE;
        if (root.status() == (impossible ? ShoppingAnswer.Status.IMPOSSIBLE : ShoppingAnswer.Status.STOPPED)) {
            return root;
        }
        return new ShoppingAnswer(
                impossible ? ShoppingAnswer.Status.IMPOSSIBLE : ShoppingAnswer.Status.STOPPED,
                0,
                0,
                List.of(),
                List.of(),
                root.unpriced(),
                List.of(),
                List.of(
                        impossible
                                ? "The boards to be had cannot give all pieces at prices that hold for so few of them."
                                : "No basket was found within the work allowed, and none was shown to be impossible."));
    }
}
