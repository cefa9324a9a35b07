package borderwright.engine.buying;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.CutVerifier;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Checks an answer from the problem and the rules alone; shares nothing with the search. */
public final class ShoppingCheck {
    private ShoppingCheck() {}

    /** All that is wrong with an answer that claims to be found; empty when it is right. */
    public static List<String> faults(ShoppingProblem problem, ShoppingAnswer answer) {
        List<String> faults = new ArrayList<>();
        checkBoards(problem, answer, faults);
        checkPieces(problem, answer, faults);
        checkStock(problem, answer, faults);
        checkGoods(problem, answer, faults);
        checkMoney(problem, answer, faults);
        if (answer.bound() > answer.cost()) {
            faults.add("bound " + answer.bound() + " above cost " + answer.cost());
        }
        return faults;
    }

    private static void checkBoards(ShoppingProblem problem, ShoppingAnswer answer, List<String> faults) {
        for (LaidBoard board : answer.boards()) {
            List<Long> lengths = board.pieces().stream()
                    .map(LaidBoard.LaidPiece::lengthTicks)
                    .toList();
            faults.addAll(
                    CutVerifier.faultsOfBoard(board.lengthTicks(), board.trimTicks(), problem.kerfTicks(), lengths));
        }
    }

    private static void checkPieces(ShoppingProblem problem, ShoppingAnswer answer, List<String> faults) {
        Map<String, Long> open = new TreeMap<>();
        for (Demand d : problem.demands()) {
            open.merge(d.section() + "|" + d.lengthTicks() + "|" + d.label(), (long) d.quantity(), Long::sum);
        }
        for (LaidBoard board : answer.boards()) {
            for (LaidBoard.LaidPiece piece : board.pieces()) {
                open.merge(
                        board.section() + "|" + piece.lengthTicks() + "|" + piece.label(),
                        (long) -board.count(),
                        Long::sum);
            }
        }
        open.forEach((piece, left) -> {
            if (left != 0) {
                faults.add("piece " + piece + " off by " + left);
            }
        });
    }

    private static void checkStock(ShoppingProblem problem, ShoppingAnswer answer, List<String> faults) {
        Map<String, Long> cut = new TreeMap<>();
        for (LaidBoard b : answer.boards()) {
            cut.merge(key(b.owned(), b.supplier(), b.section(), b.lengthTicks()), (long) b.count(), Long::sum);
        }
        Map<String, Long> there = new HashMap<>();
        for (OwnedStock o : problem.owned()) {
            there.merge(key(true, o.label(), o.section(), o.lengthTicks()), (long) o.count(), Long::sum);
        }
        Map<BoardOffer, Long> offered = new HashMap<>();
        problem.boards().forEach(b -> offered.merge(b, (long) b.available(), Long::sum));
        Map<BoardOffer, Long> bought = new HashMap<>();
        for (ShoppingAnswer.Order order : answer.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                BoardOffer o = line.offer();
                long boards = (long) line.packs() * o.pack();
                there.merge(key(false, o.supplier(), o.section(), o.lengthTicks()), boards, Long::sum);
                bought.merge(o, boards, Long::sum);
            }
        }
        bought.forEach((o, boards) -> {
            if (boards < o.least()) {
                faults.add(boards + " bought of " + o + ", whose price holds from " + o.least());
            }
            if (boards > offered.getOrDefault(o, 0L)) {
                faults.add(boards + " bought of " + o);
            }
        });
        cut.forEach((board, count) -> {
            if (count > there.getOrDefault(board, 0L)) {
                faults.add(count + " cut of " + board + ", there are " + there.get(board));
            }
        });
    }

    private static String key(boolean owned, String from, String section, long ticks) {
        return owned + "|" + from + "|" + section + "|" + ticks;
    }

    private static void checkGoods(ShoppingProblem problem, ShoppingAnswer answer, List<String> faults) {
        for (GoodsNeed need : problem.needs()) {
            if (answer.unpriced().contains(need)) {
                continue;
            }
            BigDecimal got = BigDecimal.ZERO;
            for (ShoppingAnswer.Order order : answer.orders()) {
                for (ShoppingAnswer.GoodsLine line : order.goods()) {
                    if (line.offer().item().equals(need.item())) {
                        got = got.add(line.offer().contains().multiply(BigDecimal.valueOf(line.count())));
                    }
                    if (line.count() > line.offer().available()
                            || line.count() < line.offer().least()) {
                        faults.add(line.count() + " bought of " + line.offer());
                    }
                }
            }
            if (got.compareTo(need.quantity()) < 0) {
                faults.add(need.item() + ": " + got + " of " + need.quantity());
            }
        }
    }

    private static void checkMoney(ShoppingProblem problem, ShoppingAnswer answer, List<String> faults) {
        long sum = 0;
        for (ShoppingAnswer.Order order : answer.orders()) {
            SupplierTerms terms = problem.terms().stream()
                    .filter(t -> t.name().equals(order.supplier()))
                    .findFirst()
                    .orElse(SupplierTerms.none(order.supplier()));
            long value = 0;
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                value += line.packs() * line.offer().packPrice();
                sum += line.packs() * line.offer().instead().counted();
            }
            for (ShoppingAnswer.GoodsLine line : order.goods()) {
                value += line.count() * line.offer().price();
            }
            long total = leastPaid(terms, order, value);
            if (total != order.total() || value != order.value()) {
                faults.add("order of " + order.supplier() + " is " + total + ", not " + order.total());
            }
            if (value < terms.minimumOrder()) {
                faults.add("order of " + order.supplier() + " is below its minimum");
            }
            sum += total;
        }
        if (sum != answer.cost()) {
            faults.add("orders cost " + sum + ", not " + answer.cost());
        }
    }

    /** What an order costs by the cheapest way that carries it; {@link Long#MAX_VALUE} where none does. */
    private static long leastPaid(SupplierTerms terms, ShoppingAnswer.Order order, long value) {
        long longest = order.boards().stream()
                .mapToLong(line -> line.offer().lengthTicks())
                .max()
                .orElse(0);
        boolean byLorry = order.goods().stream().anyMatch(line -> line.offer().deliveredOnly());
        return leastPaid(terms, value, longest, byLorry);
    }

    public static long leastPaid(SupplierTerms terms, long value, long longest, boolean byLorry) {
        long least = Long.MAX_VALUE;
        for (DeliveryOption way : terms.ways()) {
            if (value >= way.fromValue() && longest <= way.longestTicks() && !(byLorry && way.fetched())) {
                least = Math.min(
                        least, way.fetched() ? taxed(terms, value) + way.charge() : taxed(terms, value + way.charge()));
            }
        }
        return least;
    }

    /** With tax, rounded half up. */
    private static long taxed(SupplierTerms terms, long value) {
        return BigDecimal.valueOf(value)
                .multiply(BigDecimal.valueOf(100).add(terms.taxPercent()))
                .divide(BigDecimal.valueOf(100), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
