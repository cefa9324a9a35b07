package borderwright.engine.buying.why;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.suppliers.ShoppingCase;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.SupplierTerms;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Explains a basket by buying the same list again with one thing changed: a price, a supplier, a length left out. */
public final class Explainer {
    /** Different lengths of pieces beyond which asking again takes longer than a person waits. */
    private static final int MOST_SIZES = 200;

    /** Rows of the list beyond which even reading it again takes a while. */
    private static final int MOST_ROWS = 10_000;

    private static final int MOST_BOARDS = 12;
    private static final int WHOLE = 1000;

    private final ShoppingProblem problem;
    private final ShoppingProblem bare;
    private final ShoppingAnswer answer;
    private final Budget budget;
    private final ShoppingCase shopping;
    private final BreakEvenSearch search;

    private Explainer(ShoppingProblem problem, ShoppingProblem bare, ShoppingAnswer answer, Budget budget) {
        this.problem = problem;
        this.bare = bare;
        this.answer = answer;
        this.budget = budget;
        this.shopping = new ShoppingCase(problem);
        boolean isExact = problem.equals(bare);
        this.search = new BreakEvenSearch(shopping, answer, isExact, budget);
    }

    /**
     * Explains a basket.
     *
     * @param problem what was asked
     * @param answer what was found; where it is not proven, only what it pays for is explained
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
        PaidBesides paid = new PaidBesides(shopping, answer);
        return new Explanation(boards, suppliers, dearer, paid.deliveries(), paid.spares(), 0);
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
            search.find(offer.packPrice(), price -> at(offer, price))
                    .ifPresent(found -> wins.add(new Explanation.BoardWins(offer, found.at(), found.sharp())));
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
                search.find(WHOLE, share -> allAt(terms.name(), share))
                        .ifPresent(found ->
                                wins.add(new Explanation.SupplierWins(terms.name(), (int) found.at(), found.sharp())));
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

    /** The rounding rule: up, so that a cut in prices is never reported too small. */
    private static long shared(long price, long share) {
        return Math.floorDiv(Math.addExact(Math.multiplyExact(price, share), WHOLE - 1), WHOLE);
    }

    private double perTick(BoardOffer offer) {
        return shopping.grains(offer.packPrice(), shopping.number(offer.supplier()))
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
            ShoppingAnswer without = search.buy(bare.withOffers(
                    bare.boards().stream().filter(b -> !b.equals(offer)).toList(), bare.goods()));
            boolean possible = without.status() != ShoppingAnswer.Status.IMPOSSIBLE;
            if (!possible || without.bound() > answer.cost()) {
                dearer.add(new Explanation.DearerLength(
                        offer,
                        cheapest,
                        possible,
                        possible ? without.bound() - answer.cost() : 0,
                        offcut(answer, offer.section()),
                        possible && search.isExact() ? offcut(without, offer.section()) : 0));
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
}
