package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Finds by place: things on the plan, by number, in the square cells that their bounds touch. */
public final class PlanGrid {
    private static final double CELL_MM = 1000;

    /** A thing over more cells than this is looked at always instead. */
    private static final long MOST_CELLS = 4096;

    private final Map<Long, List<Integer>> cells = new HashMap<>();
    private final List<Integer> wide = new ArrayList<>();

    /**
     * Upright bounds on the plan, mm.
     *
     * @param minX left
     * @param minY near
     * @param maxX right
     * @param maxY far
     */
    public record Bounds(double minX, double minY, double maxX, double maxY) {
        public static Bounds of(Ring ring) {
            double minX = Double.POSITIVE_INFINITY;
            double minY = Double.POSITIVE_INFINITY;
            double maxX = Double.NEGATIVE_INFINITY;
            double maxY = Double.NEGATIVE_INFINITY;
            for (Point p : ring.corners()) {
                minX = StrictMath.min(minX, p.xMm());
                minY = StrictMath.min(minY, p.yMm());
                maxX = StrictMath.max(maxX, p.xMm());
                maxY = StrictMath.max(maxY, p.yMm());
            }
            return new Bounds(minX, minY, maxX, maxY);
        }

        public static Bounds of(Point p) {
            return new Bounds(p.xMm(), p.yMm(), p.xMm(), p.yMm());
        }

        public boolean contains(Point p) {
            return p.xMm() >= minX && p.xMm() <= maxX && p.yMm() >= minY && p.yMm() <= maxY;
        }

        boolean overlaps(Bounds other) {
            return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
        }

        private long cells() {
            return (cell(maxX) - cell(minX) + 1) * (cell(maxY) - cell(minY) + 1);
        }
    }

    public void add(int number, Bounds bounds) {
        if (bounds.cells() > MOST_CELLS) {
            wide.add(number);
            return;
        }
        for (long x = cell(bounds.minX); x <= cell(bounds.maxX); x++) {
            for (long y = cell(bounds.minY); y <= cell(bounds.maxY); y++) {
                cells.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(number);
            }
        }
    }

    /** Numbers of the things that may touch the bounds, in rising order. */
    public Iterable<Integer> near(Bounds bounds) {
        TreeSet<Integer> found = new TreeSet<>(wide);
        for (long x = cell(bounds.minX); x <= cell(bounds.maxX); x++) {
            for (long y = cell(bounds.minY); y <= cell(bounds.maxY); y++) {
                found.addAll(cells.getOrDefault(key(x, y), List.of()));
            }
        }
        return found;
    }

    private static long cell(double mm) {
        return (long) StrictMath.floor(mm / CELL_MM);
    }

    private static long key(long x, long y) {
        return (x << 32) ^ (y & 0xffff_ffffL);
    }
}
