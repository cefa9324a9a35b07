package borderwright.engine.cutting;

import borderwright.engine.buildup.Piece;
import borderwright.engine.buying.LaidBoard;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.ShoppingAnswer;
import borderwright.engine.buying.ShoppingProblem;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.BoardNest;
import borderwright.engine.stock.Budget;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.EndShape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The cheapest basket where slanted ends of neighbours may nest.
 *
 * <p>How much two neighbours save depends on which they are, so no length of a piece alone tells it. Two lists bracket the
 * truth. In the full list each piece has its whole length: what it buys can be cut in any order. In the bare list each end
 * gives up half of the most that it could ever pass another end; since no joint saves more than the halves of its two ends,
 * what the bare list costs is a bound for every way to nest. A basket of the bare list is laid out board by board; where
 * pieces do not fit they get their whole length back, and the list is bought again.
 */
public final class NestedBasket {
    private static final int MOST_ROUNDS = 5;

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
     * @param job pieces, sections, saws and habits; its boards are not used
     * @param full each piece with its whole length, and anything else
     * @param budget for both lists together
     */
    public static Bought buy(CuttingJob job, ShoppingProblem full, Budget budget) {
        return new NestedBasket(job, full).buy(budget);
    }

    private Bought buy(Budget budget) {
        ShoppingAnswer plain = Shopper.buy(full, budget);
        Map<String, Long> given = mostGiven();
        if (given.isEmpty()) {
            return new Bought(plain, full, 0);
        }
        ShoppingProblem bare = shortened(given);
        ShoppingAnswer answer = Shopper.buy(bare, budget);
        long bound = answer.bound();
        List<ShoppingAnswer.Alternative> alone = answer.alternatives().stream()
                .map(a -> new ShoppingAnswer.Alternative(a.supplier(), a.possible(), Long.MAX_VALUE, a.bound()))
                .toList();
        Map<String, Long> left = new LinkedHashMap<>(given);
        for (int round = 0; round < MOST_ROUNDS && isBetter(answer, plain); round++) {
            Set<String> open = unfit(answer);
            if (open.isEmpty()) {
                ShoppingAnswer nested = with(answer, trueLengths(answer), bound, alone);
                long saved = isFound(plain) ? plain.cost() - nested.cost() : 0;
                return new Bought(nested, bare, saved);
            }
            left.keySet().removeAll(open);
            answer = Shopper.buy(shortened(left), budget);
        }
        return new Bought(
                isFound(plain) ? with(plain, plain.boards(), Math.min(plain.cost(), bound), alone) : plain, bare, 0);
    }

    private static boolean isFound(ShoppingAnswer answer) {
        return answer.status() == ShoppingAnswer.Status.FOUND;
    }

    private static boolean isBetter(ShoppingAnswer answer, ShoppingAnswer plain) {
        return isFound(answer) && (!isFound(plain) || answer.cost() < plain.cost());
    }

    private static ShoppingAnswer with(
            ShoppingAnswer of, List<LaidBoard> boards, long bound, List<ShoppingAnswer.Alternative> alone) {
        return new ShoppingAnswer(
                of.status(),
                of.cost(),
                Math.min(bound, of.cost()),
                of.orders(),
                boards,
                of.unpriced(),
                alone,
                of.reasons());
    }

    /** For each piece the most that nesting could ever save it, ticks; pieces without are left out. */
    private Map<String, Long> mostGiven() {
        Map<String, Set<EndShape>> lefts = new HashMap<>();
        Map<String, Set<EndShape>> rights = new HashMap<>();
        List<Piece> now = job.pieces().stream().filter(p -> !p.waits()).toList();
        for (Piece piece : now) {
            BoardNest.Shape shape = job.shape(piece);
            for (BoardNest.Way way : shape.ways()) {
                lefts.computeIfAbsent(piece.section(), s -> new LinkedHashSet<>())
                        .add(shape.leftAs(way));
                rights.computeIfAbsent(piece.section(), s -> new LinkedHashSet<>())
                        .add(shape.rightAs(way));
            }
        }
        Map<String, Long> given = new LinkedHashMap<>();
        for (Piece piece : now) {
            BoardNest.Shape shape = job.shape(piece);
            if (!shape.left().isFull() || !shape.right().isFull()) {
                long most = 0;
                for (BoardNest.Way way : shape.ways()) {
                    long left = most(shape.leftAs(way), rights.getOrDefault(piece.section(), Set.of()));
                    long right = most(shape.rightAs(way), lefts.getOrDefault(piece.section(), Set.of()));
                    most = Math.max(most, left + right);
                }
                if (most > 1) {
                    given.put(piece.label(), most / 2);
                }
            }
        }
        return given;
    }

    private static long most(EndShape end, Set<EndShape> facing) {
        return facing.stream().mapToLong(end::overlap).max().orElse(0);
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

    /** Labels of pieces on boards that cannot give them, however they are laid. */
    private Set<String> unfit(ShoppingAnswer answer) {
        Set<String> open = new HashSet<>();
        for (LaidBoard board : answer.boards()) {
            List<String> labels = new ArrayList<>();
            List<Piece> laid = new ArrayList<>();
            boolean others = false;
            for (LaidBoard.LaidPiece piece : board.pieces()) {
                labels.add(piece.label());
                Piece whole = pieces.get(piece.label());
                others |= whole == null;
                if (whole != null) {
                    laid.add(whole);
                }
            }
            BoardInHand hand = new BoardInHand(
                    "", board.section(), new Length(board.lengthTicks()), board.supplier(), board.owned(), labels);
            if (others
                    ? laid.stream().anyMatch(p -> !isFull(p))
                    : !BoardRow.of(job, hand, laid).fits()) {
                open.addAll(labels);
            }
        }
        return open;
    }

    private boolean isFull(Piece piece) {
        BoardNest.Shape shape = job.shape(piece);
        return shape.left().isFull() && shape.right().isFull();
    }

    private List<LaidBoard> trueLengths(ShoppingAnswer answer) {
        List<LaidBoard> boards = new ArrayList<>();
        for (LaidBoard board : answer.boards()) {
            List<LaidBoard.LaidPiece> laid = new ArrayList<>();
            for (LaidBoard.LaidPiece piece : board.pieces()) {
                Piece whole = pieces.get(piece.label());
                laid.add(new LaidBoard.LaidPiece(
                        piece.label(),
                        whole == null
                                ? piece.lengthTicks()
                                : Math.max(piece.lengthTicks(), whole.length().ticks())));
            }
            boards.add(new LaidBoard(
                    board.supplier(),
                    board.owned(),
                    board.section(),
                    board.lengthTicks(),
                    board.price(),
                    board.count(),
                    laid));
        }
        return boards;
    }
}
