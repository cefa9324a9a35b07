package borderwright.engine.buying;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The least cost by trying everything: every number of packs of every board, every number of every goods, and for each
 * whether all pieces can be cut. Only for problems of a few pieces.
 */
public final class BruteForce {
    /** Above every mark that a small problem sets. */
    private static final long REACH = 100;

    private final ShoppingProblem problem;
    private final List<long[]> kinds = new ArrayList<>();
    private final List<String> kindSection = new ArrayList<>();
    private final Map<List<Integer>, Boolean> cuttable = new HashMap<>();
    private final List<Demand> pieces = new ArrayList<>();

    private BruteForce(ShoppingProblem problem) {
        this.problem = problem;
        for (BoardOffer b : problem.boards()) {
            kinds.add(new long[] {b.lengthTicks() - 2 * problem.trimTicks() + problem.kerfTicks()});
            kindSection.add(b.section());
        }
        for (OwnedStock o : problem.owned()) {
            kinds.add(new long[] {o.lengthTicks() - 2 * o.trimTicks() + problem.kerfTicks()});
            kindSection.add(o.section());
        }
        for (Demand d : problem.demands()) {
            for (int q = 0; q < d.quantity(); q++) {
                pieces.add(new Demand(d.section(), d.lengthTicks(), 1, d.label()));
            }
        }
        pieces.sort((a, b) -> Long.compare(b.lengthTicks(), a.lengthTicks()));
    }

    /** The least cost; -1 when the list cannot be served. */
    public static long leastCost(ShoppingProblem problem) {
        long least = new BruteForce(problem).overPacks(new int[problem.boards().size()], 0, 0, Long.MAX_VALUE);
        return least == Long.MAX_VALUE ? -1 : least;
    }

    /** More than this of anything is dearer than what it could be for: {@link #REACH} covers every mark and piece. */
    private int most(long price, int available) {
        long useful = Math.max(pieces.size(), price == 0 ? 0 : REACH / price + 1);
        return (int) Math.min(available, useful);
    }

    private long overPacks(int[] packs, int at, long spent, long best) {
        if (spent >= best) {
            return best;
        }
        if (at == packs.length) {
            return canCut(packs) ? overGoods(packs, new int[problem.goods().size()], 0, spent, best) : best;
        }
        long least = best;
        BoardOffer offer = problem.boards().get(at);
        int most = Math.max(
                (int) Math.min(offer.leastPacks(), offer.available() / offer.pack()),
                most(offer.packPrice(), offer.available() / offer.pack()));
        for (int n = 0; n <= most; n++) {
            if (n > 0 && n < offer.leastPacks()) {
                continue;
            }
            packs[at] = n;
            least = overPacks(packs, at + 1, spent + n * offer.packPrice(), least);
        }
        packs[at] = 0;
        return least;
    }

    private long overGoods(int[] packs, int[] goods, int at, long spent, long best) {
        if (spent >= best) {
            return best;
        }
        if (at == goods.length) {
            return Math.min(best, cost(packs, goods));
        }
        long least = best;
        GoodsOffer offer = problem.goods().get(at);
        int most = Math.min(offer.available(), Math.max(8, most(offer.price(), offer.available())));
        for (int n = 0; n <= most; n++) {
            if (n > 0 && n < offer.least()) {
                continue;
            }
            goods[at] = n;
            least = overGoods(packs, goods, at + 1, spent + n * offer.price(), least);
        }
        goods[at] = 0;
        return least;
    }

    private long cost(int[] packs, int[] goods) {
        for (GoodsNeed need : problem.needs()) {
            double got = 0;
            for (int g = 0; g < goods.length; g++) {
                GoodsOffer offer = problem.goods().get(g);
                got += offer.item().equals(need.item())
                        ? goods[g] * offer.contains().doubleValue()
                        : 0;
            }
            if (got < need.quantity().doubleValue()) {
                return Long.MAX_VALUE;
            }
        }
        Map<String, Long> value = new HashMap<>();
        Map<String, Long> longest = new HashMap<>();
        Set<String> byLorry = new HashSet<>();
        long counted = 0;
        for (int j = 0; j < packs.length; j++) {
            BoardOffer offer = problem.boards().get(j);
            counted += packs[j] * offer.instead().counted();
            if (packs[j] > 0) {
                value.merge(offer.supplier(), packs[j] * offer.packPrice(), Long::sum);
                longest.merge(offer.supplier(), offer.lengthTicks(), Math::max);
            }
        }
        for (int g = 0; g < goods.length; g++) {
            GoodsOffer offer = problem.goods().get(g);
            if (goods[g] > 0) {
                value.merge(offer.supplier(), goods[g] * offer.price(), Long::sum);
                if (offer.deliveredOnly()) {
                    byLorry.add(offer.supplier());
                }
            }
        }
        long sum = counted;
        for (Map.Entry<String, Long> order : value.entrySet()) {
            SupplierTerms terms = problem.terms().stream()
                    .filter(t -> t.name().equals(order.getKey()))
                    .findFirst()
                    .orElse(SupplierTerms.none(order.getKey()));
            if (order.getValue() < terms.minimumOrder()) {
                return Long.MAX_VALUE;
            }
            long paid = ShoppingCheck.leastPaid(
                    terms,
                    order.getValue(),
                    longest.getOrDefault(order.getKey(), 0L),
                    byLorry.contains(order.getKey()));
            if (paid == Long.MAX_VALUE) {
                return paid;
            }
            sum += paid;
        }
        return sum;
    }

    private boolean canCut(int[] packs) {
        List<Integer> boards = new ArrayList<>();
        for (int j = 0; j < packs.length; j++) {
            boards.add(packs[j] * problem.boards().get(j).pack());
        }
        return cuttable.computeIfAbsent(boards, this::canCutFrom);
    }

    private boolean canCutFrom(List<Integer> boards) {
        List<long[]> rooms = new ArrayList<>();
        for (int j = 0; j < boards.size(); j++) {
            for (int n = 0; n < boards.get(j); n++) {
                rooms.add(new long[] {kinds.get(j)[0], j});
            }
        }
        for (int o = 0; o < problem.owned().size(); o++) {
            for (int n = 0; n < problem.owned().get(o).count(); n++) {
                rooms.add(new long[] {kinds.get(boards.size() + o)[0], boards.size() + o});
            }
        }
        return !isShort(rooms) && place(0, rooms);
    }

    private boolean place(int at, List<long[]> rooms) {
        if (at == pieces.size()) {
            return true;
        }
        Demand piece = pieces.get(at);
        long size = piece.lengthTicks() + problem.kerfTicks();
        for (int r = 0; r < rooms.size(); r++) {
            long[] room = rooms.get(r);
            if (room[0] >= size
                    && kindSection.get((int) room[1]).equals(piece.section())
                    && isFirstOfItsLike(rooms, r)) {
                room[0] -= size;
                boolean fits = place(at + 1, rooms);
                room[0] += size;
                if (fits) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether no room before this one has the same length left of the same kind: what fits there was tried there. */
    private static boolean isFirstOfItsLike(List<long[]> rooms, int at) {
        for (int r = 0; r < at; r++) {
            if (Arrays.equals(rooms.get(r), rooms.get(at))) {
                return false;
            }
        }
        return true;
    }

    /** Whether the pieces of any section are longer together than all its rooms: no need to try those. */
    private boolean isShort(List<long[]> rooms) {
        Map<String, Long> left = new HashMap<>();
        rooms.forEach(room -> left.merge(kindSection.get((int) room[1]), Math.max(0, room[0]), Long::sum));
        pieces.forEach(piece -> left.merge(piece.section(), -piece.lengthTicks() - problem.kerfTicks(), Long::sum));
        return left.values().stream().anyMatch(over -> over < 0);
    }
}
