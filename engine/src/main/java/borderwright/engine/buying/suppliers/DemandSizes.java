package borderwright.engine.buying.suppliers;

import borderwright.engine.stock.Demand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The distinct sizes of a section's pieces, falling: a piece's length and one kerf, over the common divisor of all of them.
 */
final class DemandSizes {
    /** Ticks in one whole size: the common divisor, 1 where there are no pieces. */
    final long unitTicks;

    final long[] size;
    /** Pieces of each size. */
    final int[] count;

    private final List<List<Demand>> demands = new ArrayList<>();

    DemandSizes(List<Demand> all, long kerfTicks) {
        Map<Long, List<Demand>> byLength = new HashMap<>();
        all.forEach(d -> byLength.computeIfAbsent(d.lengthTicks(), l -> new ArrayList<>())
                .add(d));
        long[] rising =
                byLength.keySet().stream().mapToLong(Long::longValue).sorted().toArray();
        this.size = new long[rising.length];
        this.count = new int[rising.length];
        long common = rising.length == 0 ? 1 : 0;
        for (int i = 0; i < rising.length; i++) {
            long length = rising[rising.length - 1 - i];
            List<Demand> same = byLength.getOrDefault(length, List.of());
            demands.add(same);
            size[i] = length + kerfTicks;
            count[i] = Math.toIntExact(same.stream().mapToLong(Demand::quantity).sum());
            common = gcd(common, size[i]);
        }
        this.unitTicks = common;
        for (int i = 0; i < size.length; i++) {
            size[i] /= common;
        }
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Demands of a size, in the order in which they are given. */
    List<Demand> demands(int i) {
        return demands.get(i);
    }

    /** Which size each label has. */
    Map<String, Integer> sizeByLabel() {
        Map<String, Integer> byLabel = new HashMap<>();
        for (int i = 0; i < demands.size(); i++) {
            for (Demand demand : demands.get(i)) {
                byLabel.put(demand.label(), i);
            }
        }
        return byLabel;
    }
}
