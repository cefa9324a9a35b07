package borderwright.engine.stock;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * The simplest true lower bound: the pieces' whole length, bought as if every board could be cut without waste, the
 * cheapest length first, as far as boards are to be had. Whole numbers throughout.
 */
public final class MaterialBound {
    private MaterialBound() {}

    /** No packing costs less; {@link Long#MAX_VALUE} when all boards together are too short. */
    public static long of(StockCase stock) {
        BigInteger need = BigInteger.ZERO;
        for (int i = 0; i < stock.sizes(); i++) {
            need = need.add(BigInteger.valueOf(stock.size(i)).multiply(BigInteger.valueOf(stock.demand(i))));
        }
        BigInteger top = BigInteger.ZERO;
        BigInteger bottom = BigInteger.ONE;
        for (int j : byCostPerLength(stock)) {
            if (need.signum() <= 0) {
                break;
            }
            BigInteger perPack = BigInteger.valueOf(stock.capacity(j)).multiply(BigInteger.valueOf(stock.pack(j)));
            BigInteger all = perPack.multiply(BigInteger.valueOf(stock.available(j) / stock.pack(j)));
            BigInteger taken = stock.isLimited(j) ? need.min(all) : need;
            top = top.multiply(perPack)
                    .add(taken.multiply(BigInteger.valueOf(stock.cost(j))).multiply(bottom));
            bottom = bottom.multiply(perPack);
            need = need.subtract(taken);
        }
        if (need.signum() > 0) {
            return Long.MAX_VALUE;
        }
        long bound = top.add(bottom).subtract(BigInteger.ONE).divide(bottom).longValueExact();
        long common = costDivisor(stock);
        return common == 0 ? bound : Math.floorDiv(bound + common - 1, common) * common;
    }

    /** The greatest number that divides the cost of every pack; 0 when all are free. */
    public static long costDivisor(StockCase stock) {
        long common = 0;
        for (int j = 0; j < stock.boards(); j++) {
            long a = stock.available(j) > 0 ? stock.cost(j) : 0;
            while (a != 0) {
                long rest = common % a;
                common = a;
                a = rest;
            }
        }
        return common;
    }

    private static int[] byCostPerLength(StockCase stock) {
        Integer[] order = new Integer[stock.boards()];
        int n = 0;
        long shortest = stock.sizes() == 0 ? 1 : stock.size(stock.sizes() - 1);
        for (int j = 0; j < order.length; j++) {
            if (stock.capacity(j) >= shortest && stock.available(j) >= stock.pack(j)) {
                order[n++] = j;
            }
        }
        Integer[] usable = Arrays.copyOf(order, n);
        Arrays.sort(
                usable,
                (a, b) -> costPerLength(stock, a)
                        .multiply(lengthOf(stock, b))
                        .compareTo(costPerLength(stock, b).multiply(lengthOf(stock, a))));
        int[] sorted = new int[n];
        for (int k = 0; k < n; k++) {
            sorted[k] = usable[k];
        }
        return sorted;
    }

    private static BigInteger costPerLength(StockCase stock, int j) {
        return BigInteger.valueOf(stock.cost(j));
    }

    private static BigInteger lengthOf(StockCase stock, int j) {
        return BigInteger.valueOf(stock.capacity(j)).multiply(BigInteger.valueOf(stock.pack(j)));
    }
}
