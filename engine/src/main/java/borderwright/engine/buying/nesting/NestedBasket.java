package borderwright.engine.buying.nesting;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.BoardRule;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.BoardNest;
import borderwright.engine.stock.row.BoardRow;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cheapest basket where slanted ends of neighbours may nest.
 *
 * <p>How much two neighbours save depends on which they are, so no length of a piece alone tells it. Two lists bracket the
 * truth. In the full list each piece has its whole length: what it buys can be cut in any order. In the bare list each end
 * gives up half of the most that it could ever pass another end; since no joint saves more than the halves of its two ends,
 * what the bare list costs is a bound for every way to nest. A basket of the bare list is laid out board by board, and
 * pieces change places until all fit; those that do not fit get length back, and the list is bought again. What is left open
 * then is searched once more, each board laid out before a basket may cut it so.
 *
 * <p>See docs/decisions/0055.
 */
public final class NestedBasket {
    private static final int MOST_ROUNDS = 6;
    private static final long SWAP_WORK = 20_000;

    private final CuttingJob job;
    private final ShoppingProblem full;
    private final Map<String, Piece> pieces = new HashMap<>();

    private NestedBasket(CuttingJob job, ShoppingProblem full) {
        this.job = job;
        this.full = full;
        job.pieces().forEach(piece -> pieces.put(piece.label(), piece));
    }

    /**
     * What is bought.
     *
     * @param answer the basket; its bound holds however pieces are nested
     * @param bare the list whose cost is that bound; the full list itself where nothing nests
     * @param saved how much the basket costs less than the best one found without nesting, minor units
     */
    public record Bought(ShoppingAnswer answer, ShoppingProblem bare, long saved) {}

    /**
     * Buys.
     *
     * @param job pieces, sections, saws and how the person cuts; its boards are not used
     * @param full each piece with its whole length, and anything else
     * @param budget for both lists together
     */
    public static Bought buy(CuttingJob job, ShoppingProblem full, Budget budget) {
        return new NestedBasket(job, full).buy(budget);
    }

    private Bought buy(Budget budget) {
        ShoppingAnswer plain = Shopper.buy(full, budget);
        Map<String, Long> given = NestingAllowance.of(job, full);
        if (given.isEmpty()) {
            return new Bought(plain, full, 0);
        }
        ShoppingProblem bare = shortened(given);
        ShoppingAnswer answer = Shopper.buy(bare, budget);
        long bound = answer.bound();
        List<ShoppingAnswer.Alternative> alone = alone(plain, answer);
        Map<String, Long> left = new LinkedHashMap<>(given);
        for (int round = 0; round < MOST_ROUNDS && isBetter(answer, plain); round++) {
            BasketLayout layout = new BasketLayout(job, pieces, answer);
            if (layout.fits(budget.part(SWAP_WORK))) {
                ShoppingAnswer nested =
                        answer.withBoards(layout.boards()).withBound(bound).withAlternatives(atLeast(alone, answer));
                return searched(nested, plain, bare, given, alone, budget);
            }
            // Half of what they gave is asked back first: often a few millimetres are all that is missing.
            boolean half = round < MOST_ROUNDS / 2;
            left.replaceAll((label, less) -> layout.isOpen(label) ? (half ? less / 2 : 0L) : less);
            answer = Shopper.buy(shortened(left), budget);
        }
        if (!isFound(plain)) {
            return new Bought(plain, bare, 0);
        }
        return searched(plain.withBound(bound).withAlternatives(alone), plain, bare, given, alone, budget);
    }

    /**
     * The best basket that is known, proven or bettered by a search of the bare list in which every board is laid out before
     * it is cut so.
     */
    private Bought searched(
            ShoppingAnswer known,
            ShoppingAnswer plain,
            ShoppingProblem bare,
            Map<String, Long> given,
            List<ShoppingAnswer.Alternative> alone,
            Budget budget) {
        ShoppingAnswer best = known;
        if (!known.proven() && !budget.isSpent()) {
            Rows rows = new Rows();
            ShoppingAnswer searched = Shopper.buy(toldApart(given).under(rows), known, budget, (cost, bound) -> {});
            long bound = rows.isUnsure ? known.bound() : Math.max(known.bound(), searched.bound());
            BasketLayout layout = isFound(searched) ? new BasketLayout(job, pieces, searched) : null;
            if (layout != null && searched.cost() < known.cost() && layout.fits(budget.part(0))) {
                best = searched.withBoards(layout.boards()).withAlternatives(atLeast(alone, searched));
            }
            best = isFound(searched) ? best.withBound(Math.min(bound, best.cost())) : best;
        }
        return new Bought(best, bare, isFound(plain) ? plain.cost() - best.cost() : 0);
    }

    /** Whether pieces can be cut from one board: laid out in every order and way round, as far as these are looked at. */
    private final class Rows implements BoardRule {
        private final Map<String, Long> whole = new HashMap<>();
        /** Whether a board was refused of whose pieces not every order was looked at. */
        private boolean isUnsure;

        Rows() {
            full.demands().forEach(d -> whole.put(d.label(), d.lengthTicks()));
        }

        @Override
        public boolean admits(String section, long usableTicks, List<String> labels) {
            List<Piece> on = labels.stream()
                    .flatMap(label -> Optional.ofNullable(pieces.get(label)).stream())
                    .toList();
            if (on.size() < labels.size()) {
                // Something that is no piece is kept whole, and what is cut beside it is not nested.
                long kerf = full.kerfTicks();
                long sum = labels.stream()
                        .mapToLong(label -> whole.getOrDefault(label, usableTicks) + kerf)
                        .sum();
                return sum <= usableTicks + kerf;
            }
            BoardInHand board = BoardInHand.bought(0, section, new Length(usableTicks), "", Length.ZERO);
            boolean fits = BoardRow.of(job, board, on).fits();
            isUnsure |=
                    !fits && !BoardNest.isExactFor(on.stream().map(job::shape).toList());
            return fits;
        }
    }

    /** The bare list, pieces of one length that nest otherwise a tick or more apart. */
    private ShoppingProblem toldApart(Map<String, Long> given) {
        Map<String, Map<Long, Object>> kinds = new HashMap<>();
        List<Demand> apart = new ArrayList<>();
        for (Demand demand : shortened(given).demands()) {
            Piece piece = pieces.get(demand.label());
            Object kind = piece == null ? "" : List.of(job.shape(piece), piece.waits());
            Map<Long, Object> taken = kinds.computeIfAbsent(demand.section(), s -> new HashMap<>());
            long length = demand.lengthTicks();
            while (length > 1 && !taken.getOrDefault(length, kind).equals(kind)) {
                length--;
            }
            taken.put(length, kind);
            apart.add(new Demand(demand.section(), length, demand.quantity(), demand.label()));
        }
        return full.withDemands(apart);
    }

    /** What the bare list tells of a supplier alone is a bound and no basket. */
    private static List<ShoppingAnswer.Alternative> atLeast(
            List<ShoppingAnswer.Alternative> alone, ShoppingAnswer nested) {
        List<String> sellers =
                nested.orders().stream().map(ShoppingAnswer.Order::supplier).toList();
        return alone.stream()
                .map(a -> a.costing(sellers.equals(List.of(a.supplier())) ? nested.cost() : Long.MAX_VALUE))
                .toList();
    }

    /** Each supplier alone: the costs of one answer, the bounds of another. */
    private static List<ShoppingAnswer.Alternative> alone(ShoppingAnswer costs, ShoppingAnswer bounds) {
        List<ShoppingAnswer.Alternative> alone = new ArrayList<>();
        for (int k = 0; k < bounds.alternatives().size(); k++) {
            ShoppingAnswer.Alternative bound = bounds.alternatives().get(k);
            long cost = k < costs.alternatives().size()
                    ? costs.alternatives().get(k).cost()
                    : Long.MAX_VALUE;
            alone.add(new ShoppingAnswer.Alternative(
                    bound.supplier(), bound.possible(), cost, Math.min(cost, bound.bound())));
        }
        return alone;
    }

    private static boolean isFound(ShoppingAnswer answer) {
        return answer.status() == ShoppingAnswer.Status.FOUND;
    }

    private static boolean isBetter(ShoppingAnswer answer, ShoppingAnswer plain) {
        return isFound(answer) && (!isFound(plain) || answer.cost() < plain.cost());
    }

    private ShoppingProblem shortened(Map<String, Long> given) {
        List<Demand> demands = new ArrayList<>();
        for (Demand demand : full.demands()) {
            Piece piece = pieces.get(demand.label());
            Long less = given.get(demand.label());
            demands.add(
                    piece == null || less == null
                            ? demand
                            : new Demand(
                                    demand.section(),
                                    Math.max(1, piece.length().ticks() - less),
                                    demand.quantity(),
                                    demand.label()));
        }
        return full.withDemands(demands);
    }
}
