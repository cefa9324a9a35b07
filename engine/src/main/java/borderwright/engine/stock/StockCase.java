package borderwright.engine.stock;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One section's pieces and boards in whole numbers, resolved for the search.
 *
 * <p>Sizes are lengths with one kerf each, capacities usable lengths with one kerf, both divided by a common divisor:
 * pieces fit on a board exactly when their sizes add up to no more than its capacity. Sizes are distinct and fall.
 */
public final class StockCase {
    /** For {@link #available(int)}: as many as needed. */
    public static final int UNLIMITED = BoardTypes.UNLIMITED;

    private final long[] size;
    private final int[] demand;
    private final BoardTypes types;
    private final @Nullable OffcutValue keeping;
    private final @Nullable PatternRule rule;

    /**
     * Boards whose offcuts count nothing.
     *
     * @param size distinct sizes, falling, each at least 1
     * @param demand pieces of each size, at least 1 each
     * @param types the boards
     */
    public StockCase(long[] size, int[] demand, BoardTypes types) {
        this(size.clone(), demand.clone(), types, null, null);
        for (int i = 0; i < size.length; i++) {
            if (size[i] <= 0 || demand[i] <= 0 || (i > 0 && size[i] >= size[i - 1])) {
                throw new IllegalArgumentException("sizes must be positive and fall, demands positive, at " + i);
            }
        }
    }

    private StockCase(
            long[] size, int[] demand, BoardTypes types, @Nullable OffcutValue keeping, @Nullable PatternRule rule) {
        this.size = size;
        this.demand = demand;
        this.types = types;
        this.keeping = keeping;
        this.rule = rule;
    }

    /** The same boards for other demands, whatever may lie together; sizes without demand are dropped by the index map. */
    public StockCase withDemand(int[] newDemand, int[] keptIndex) {
        long[] sizes = new long[keptIndex.length];
        int[] demands = new int[keptIndex.length];
        for (int i = 0; i < keptIndex.length; i++) {
            sizes[i] = size[keptIndex[i]];
            demands[i] = newDemand[keptIndex[i]];
        }
        return new StockCase(sizes, demands, types, keeping, null);
    }

    /** The same pieces with other numbers of boards to be had. */
    public StockCase withAvailable(int[] newAvailable) {
        return new StockCase(size, demand, types.available(newAvailable), keeping, rule);
    }

    /** The same pieces and boards at other costs of a pack. */
    public StockCase withCosts(long[] newCost) {
        return new StockCase(size, demand, types.atCosts(newCost), keeping, rule);
    }

    /**
     * The same where some boards have a least number of packs, as those at a quantity price.
     *
     * @param newLeast packs of each type below which none is sold; 0 or 1 for any number
     */
    public StockCase soldFrom(int[] newLeast) {
        return new StockCase(size, demand, types.soldFrom(newLeast), keeping, rule);
    }

    /** The same where all boards are sold in any number. */
    public StockCase soldInAnyNumber() {
        return isAnySoldFrom() ? soldFrom(new int[types.least.length]) : this;
    }

    /**
     * The same where offcuts are worth something: a bought board is then cheaper by what all of it is worth, and cutting it
     * costs what that takes off ({@link #use}).
     *
     * @param kept what they are worth
     * @param isBought whether each board is bought for its cost; what is there already is kept whole if it is not cut
     */
    public StockCase keeping(OffcutValue kept, boolean[] isBought) {
        long[] less = types.cost.clone();
        for (int j = 0; j < less.length; j++) {
            less[j] -= isBought[j] ? types.pack[j] * kept.worth(j, types.capacity[j]) : 0;
        }
        return new StockCase(size, demand, types.atCosts(less), kept, rule);
    }

    /** The same where not all that fits by its sizes can be cut from one board. */
    public StockCase ruledBy(PatternRule newRule) {
        return new StockCase(size, demand, types, keeping, newRule);
    }

    /** Whether sizes do not say all of what fits. */
    public boolean isRuled() {
        return rule != null;
    }

    /** Whether a pattern that fits by its sizes can be cut. */
    public boolean admits(CuttingPattern pattern) {
        return rule == null || rule.admits(pattern);
    }

    /** Whether all patterns of a packing can be cut. */
    public boolean admits(Packing packing) {
        boolean admitted = true;
        for (int p = 0; p < packing.kinds() && admitted; p++) {
            admitted = admits(packing.pattern(p));
        }
        return admitted;
    }

    /** Whether offcuts are worth something. */
    public boolean keeps() {
        return keeping != null;
    }

    /** What cutting so much off board {@code j} costs besides the board, at least 0; it never falls as more is cut off. */
    public long use(int j, long used) {
        return keeping == null ? 0 : keeping.worth(j, types.capacity[j]) - keeping.worth(j, types.capacity[j] - used);
    }

    /** What all of board {@code j} is worth as an offcut, in units of cost. */
    public long wholeWorth(int j) {
        return keeping == null ? 0 : keeping.worth(j, types.capacity[j]);
    }

    public int sizes() {
        return size.length;
    }

    public long size(int i) {
        return size[i];
    }

    public int demand(int i) {
        return demand[i];
    }

    public int boards() {
        return types.capacity.length;
    }

    public long capacity(int j) {
        return types.capacity[j];
    }

    /** Cost of one pack. */
    public long cost(int j) {
        return types.cost[j];
    }

    public int pack(int j) {
        return types.pack[j];
    }

    public int available(int j) {
        return types.available[j];
    }

    /** Packs of a type below which none is sold, at least 1. */
    public int least(int j) {
        return Math.max(1, types.least[j]);
    }

    /** Whether any type has a least number of packs above one. */
    public boolean isAnySoldFrom() {
        return Arrays.stream(types.least).anyMatch(l -> l > 1);
    }

    /** Packs that must be bought for so many boards of a type. */
    public long packsFor(int j, int boards) {
        return boards == 0 ? 0 : Math.max(least(j), (boards + (long) types.pack[j] - 1) / types.pack[j]);
    }

    /** Whether packs of this type must be counted apart from boards. */
    public boolean isPacked(int j) {
        return types.pack[j] > 1;
    }

    public boolean isLimited(int j) {
        return types.available[j] != UNLIMITED;
    }

    public long[] copyOfSizes() {
        return size.clone();
    }

    public long[] copyOfCapacities() {
        return types.capacity.clone();
    }

    public int[] copyOfDemand() {
        return demand.clone();
    }

    public int[] copyOfAvailable() {
        return types.available.clone();
    }

    /** Greatest capacity of all boards that can be had, 0 when there is none. */
    public long longest() {
        long longest = 0;
        for (int j = 0; j < types.capacity.length; j++) {
            longest = types.available[j] > 0 ? Math.max(longest, types.capacity[j]) : longest;
        }
        return longest;
    }

    public long pieces() {
        return Arrays.stream(demand).asLongStream().sum();
    }
}
