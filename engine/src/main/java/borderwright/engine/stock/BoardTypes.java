package borderwright.engine.stock;

import java.util.Arrays;

/** The types of boards that pieces are cut from. One array for each figure, since inner loops run over one figure of all types. */
public final class BoardTypes {
    /** For {@link #available}: as many as needed. */
    static final int UNLIMITED = Integer.MAX_VALUE;

    final long[] capacity;
    final long[] cost;
    final int[] pack;
    final int[] available;
    final int[] least;

    private BoardTypes(long[] capacity, long[] cost, int[] pack, int[] available, int[] least) {
        for (int j = 0; j < capacity.length; j++) {
            if (cost[j] < 0 || pack[j] < 1 || available[j] < 0) {
                throw new IllegalArgumentException("a board needs cost >= 0, pack >= 1, available >= 0, at " + j);
            }
        }
        this.capacity = capacity;
        this.cost = cost;
        this.pack = pack;
        this.available = wholePacks(available, pack);
        this.least = least;
    }

    private static int[] wholePacks(int[] available, int[] pack) {
        int[] whole = available.clone();
        for (int j = 0; j < whole.length; j++) {
            whole[j] -= whole[j] == UNLIMITED ? 0 : whole[j] % pack[j];
        }
        return whole;
    }

    /**
     * Boards that are sold one by one, as many as needed.
     *
     * @param capacity capacity of each type, at least 0
     * @param cost cost of one board of each, at least 0
     */
    public static BoardTypes singly(long[] capacity, long[] cost) {
        int[] one = new int[capacity.length];
        int[] any = new int[capacity.length];
        Arrays.fill(one, 1);
        Arrays.fill(any, UNLIMITED);
        return new BoardTypes(capacity.clone(), cost.clone(), one, any, new int[capacity.length]);
    }

    /** The same in packs of so many boards each, at least 1; the cost is that of a pack. */
    public BoardTypes inPacks(int[] boards) {
        return new BoardTypes(capacity, cost, boards.clone(), available, least);
    }

    /** The same where so many boards of each are to be had, {@link StockCase#UNLIMITED} for no limit; only whole packs count. */
    public BoardTypes available(int[] boards) {
        return new BoardTypes(capacity, cost, pack, boards, least);
    }

    /** The same where so many packs of each are sold at least; 0 or 1 for any number. */
    public BoardTypes soldFrom(int[] packs) {
        return new BoardTypes(capacity, cost, pack, available, packs.clone());
    }

    BoardTypes atCosts(long[] ofPacks) {
        return new BoardTypes(capacity, ofPacks.clone(), pack, available, least);
    }
}
