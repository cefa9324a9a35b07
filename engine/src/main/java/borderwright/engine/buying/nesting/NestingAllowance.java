package borderwright.engine.buying.nesting;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.stock.row.BoardNest;
import borderwright.engine.stock.row.CuttingJob;
import borderwright.engine.stock.row.EndShape;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** By how much each piece could be shortened at most because its ends may pass those of other pieces. */
final class NestingAllowance {
    private NestingAllowance() {}

    /** An end as it may lie, and the length of its piece. */
    private record Facing(EndShape end, long length) {}

    /**
     * For each piece the most that nesting could ever save it, ticks; pieces without are left out. An end can only pass the
     * end of a piece that fits on one board with its own.
     */
    static Map<String, Long> of(CuttingJob job, ShoppingProblem full) {
        List<Piece> now = job.pieces().stream().filter(p -> !p.waits()).toList();
        Map<String, Set<Facing>> lefts = new HashMap<>();
        Map<String, Set<Facing>> rights = new HashMap<>();
        now.forEach(piece -> addEnds(piece.section(), job.shape(piece), lefts, rights));
        Map<String, Long> given = new LinkedHashMap<>();
        for (Piece piece : now) {
            BoardNest.Shape shape = job.shape(piece);
            if (!shape.left().isFull() || !shape.right().isFull()) {
                long room = longest(full, piece.section()) - shape.length() - full.kerfTicks();
                long most = 0;
                for (BoardNest.Way way : shape.ways()) {
                    long left = most(shape.leftAs(way), rights.getOrDefault(piece.section(), Set.of()), room);
                    long right = most(shape.rightAs(way), lefts.getOrDefault(piece.section(), Set.of()), room);
                    most = Math.max(most, left + right);
                }
                if (most > 1) {
                    given.put(piece.label(), most / 2);
                }
            }
        }
        return given;
    }

    private static void addEnds(
            String section, BoardNest.Shape shape, Map<String, Set<Facing>> lefts, Map<String, Set<Facing>> rights) {
        for (BoardNest.Way way : shape.ways()) {
            lefts.computeIfAbsent(section, s -> new LinkedHashSet<>())
                    .add(new Facing(shape.leftAs(way), shape.length()));
            rights.computeIfAbsent(section, s -> new LinkedHashSet<>())
                    .add(new Facing(shape.rightAs(way), shape.length()));
        }
    }

    private static long most(EndShape end, Set<Facing> facing, long room) {
        long most = 0;
        for (Facing other : facing) {
            long overlap = end.overlap(other.end);
            most = other.length - overlap <= room ? Math.max(most, overlap) : most;
        }
        return most;
    }

    /** The longest board to be had of a section, between its trims, ticks. */
    private static long longest(ShoppingProblem full, String section) {
        return full.usableLengths(section).max().orElse(0);
    }
}
