package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.BoardRule;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.stock.BoardTypes;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.OffcutValue;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.PatternRule;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One section of a list: what must be cut, what it can be cut from. Boards of one type have the same index everywhere. */
public final class ShoppingSection {
    public final String name;
    public final StockCase stock;
    private final ShoppingProblem problem;
    private final List<BoardSource> sources;
    private final DemandSizes sizes;

    ShoppingSection(ShoppingCase shopping, String name, List<Demand> demands) {
        this.name = name;
        this.problem = shopping.problem;
        this.sizes = new DemandSizes(demands, problem.kerfTicks());
        this.sources = sources(shopping);
        StockCase plain = plain(shopping);
        StockCase kept = problem.offcuts().counts() ? keeping(plain, shopping.grain) : plain;
        this.stock = problem.rule().equals(BoardRule.LENGTHS_ALONE) ? kept : kept.ruledBy(askedOnce());
    }

    /** What is owned first, then the offers that can be had in their least number and got home. */
    private List<BoardSource> sources(ShoppingCase shopping) {
        List<BoardSource> all = new ArrayList<>();
        for (OwnedStock owned : problem.owned()) {
            if (owned.section().equals(name) && owned.count() > 0) {
                all.add(new BoardSource(null, owned, ShoppingCase.SHED));
            }
        }
        for (BoardOffer offer : problem.boards()) {
            int supplier = shopping.number(offer.supplier());
            if (offer.section().equals(name)
                    && offer.available() / offer.pack() >= offer.leastPacks()
                    && shopping.delivery.carries(supplier, offer)) {
                all.add(new BoardSource(offer, null, supplier));
            }
        }
        return List.copyOf(all);
    }

    /** Sizes, boards and costs, whatever offcuts are worth and may lie together. */
    private StockCase plain(ShoppingCase shopping) {
        int types = sources.size();
        long[] capacity = new long[types];
        long[] cost = new long[types];
        int[] pack = new int[types];
        int[] available = new int[types];
        int[] least = new int[types];
        for (int j = 0; j < types; j++) {
            BoardSource source = sources.get(j);
            capacity[j] = Math.max(0, usable(j) + problem.kerfTicks()) / sizes.unitTicks;
            cost[j] = Math.addExact(
                    shopping.grains(source.packPrice(), source.supplier()),
                    Math.multiplyExact(source.counted(), shopping.grain));
            pack[j] = source.pack();
            available[j] = source.available();
            least[j] = source.leastPacks();
        }
        return new StockCase(
                sizes.size,
                sizes.count,
                BoardTypes.singly(capacity, cost)
                        .inPacks(pack)
                        .available(available)
                        .soldFrom(least));
    }

    private StockCase keeping(StockCase plain, long grain) {
        long[] most = new long[sources.size()];
        boolean[] isBought = new boolean[most.length];
        long[] beyond = new long[most.length];
        for (int j = 0; j < most.length; j++) {
            BoardSource source = sources.get(j);
            isBought[j] = isBought(j);
            beyond[j] = usable(j) - plain.capacity(j) * sizes.unitTicks;
            most[j] = source.isOwned() ? Long.MAX_VALUE / grain : source.pricePerBoard();
        }
        return plain.keeping(new OffcutValue(problem.offcuts(), sizes.unitTicks, beyond, grain, most), isBought);
    }

    /** The problem's rule, asked once for each pattern. */
    private PatternRule askedOnce() {
        Map<CuttingPattern, Boolean> known = new HashMap<>();
        return pattern -> known.computeIfAbsent(pattern, p -> {
            List<String> labels = new ArrayList<>();
            for (int k = 0; k < p.kinds(); k++) {
                int open = p.count(k);
                for (Demand demand : sizes.demands(p.item(k))) {
                    int taken = Math.min(open, demand.quantity());
                    labels.addAll(Collections.nCopies(taken, demand.label()));
                    open -= taken;
                }
            }
            return problem.rule().admits(name, usable(p.board()), labels);
        });
    }

    /** Length of a board between its trims, ticks. */
    private long usable(int j) {
        BoardSource source = sources.get(j);
        return source.lengthTicks() - 2 * source.trimTicks(problem.trimTicks());
    }

    /** Types of boards. */
    int types() {
        return sources.size();
    }

    /** Where boards of a type come from. */
    public BoardSource source(int j) {
        return sources.get(j);
    }

    /** Supplier of boards of a type; {@link ShoppingCase#SHED} where they are owned. */
    int supplier(int j) {
        return sources.get(j).supplier();
    }

    /** Price of a pack of a type as priced, minor units; 0 when owned. */
    long value(int j) {
        return sources.get(j).packPrice();
    }

    /** Whether boards of a type are bought and not owned. */
    boolean isBought(int j) {
        return supplier(j) != ShoppingCase.SHED;
    }

    /** Demands of a size, in the order in which they are given. */
    public List<Demand> demands(int i) {
        return sizes.demands(i);
    }

    /** Boards of an answer to another list of the same pieces, as a packing; null where one is not among these or cannot be cut so. */
    @Nullable
    Packing packing(List<LaidBoard> laid) {
        Map<String, Integer> size = sizes.sizeByLabel();
        Packing packing = new Packing();
        int[] used = new int[stock.boards()];
        for (LaidBoard board : laid) {
            int[] counts = new int[stock.sizes()];
            for (LaidBoard.LaidPiece piece : board.pieces()) {
                Integer i = size.get(piece.label());
                if (i == null) {
                    return null;
                }
                counts[i]++;
            }
            int j = typeOf(board, used);
            CuttingPattern pattern = CuttingPattern.ofCounts(Math.max(0, j), counts);
            if (j < 0 || pattern.used(stock) > stock.capacity(j)) {
                return null;
            }
            used[j] += board.count();
            packing.add(pattern, board.count());
        }
        return stock.admits(packing) ? packing : null;
    }

    /** The first type that is like a laid board and still has so many; -1 when there is none. */
    private int typeOf(LaidBoard board, int[] used) {
        for (int j = 0; j < used.length; j++) {
            BoardSource source = sources.get(j);
            if (source.from().equals(board.supplier())
                    && source.isOwned() == board.owned()
                    && source.lengthTicks() == board.lengthTicks()
                    && source.pricePerBoard() == board.price()
                    && used[j] + board.count() <= stock.available(j)) {
                return j;
            }
        }
        return -1;
    }

    /** Sizes that no board to be had can give. */
    public int[] tooLong() {
        long longest = stock.longest();
        int[] all = new int[stock.sizes()];
        int n = 0;
        for (int i = 0; i < all.length; i++) {
            if (stock.size(i) > longest) {
                all[n++] = i;
            }
        }
        return Arrays.copyOf(all, n);
    }
}
