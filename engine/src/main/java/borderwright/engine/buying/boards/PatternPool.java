package borderwright.engine.buying.boards;

import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The patterns of a linear programme, each there once. */
final class PatternPool {
    private final ModelRows rows;
    private final LinearProgram program;
    private final int first;
    private final List<ModelColumn> patterns = new ArrayList<>();
    private final Map<Integer, Map<CuttingPattern, Integer>> known = new HashMap<>();

    /** No patterns yet; they will be the last columns of the programme. */
    PatternPool(ModelRows rows, LinearProgram program) {
        this.rows = rows;
        this.program = program;
        this.first = program.columns();
    }

    /** Number of the first pattern in the programme. */
    int first() {
        return first;
    }

    /** Patterns, in the order in which they were added. */
    List<ModelColumn> patterns() {
        return patterns;
    }

    /** Adds a pattern unless it is there, without the shortest pieces if all of them cannot be cut; whether it was new. */
    boolean add(int s, CuttingPattern wanted) {
        StockCase stock = rows.stock(s);
        CuttingPattern pattern = wanted;
        while (!stock.admits(pattern)) {
            pattern = pattern.withoutLast();
        }
        if (pattern.kinds() == 0) {
            return false;
        }
        Map<CuttingPattern, Integer> ofPart = known.computeIfAbsent(s, k -> new HashMap<>());
        Integer before = ofPart.get(pattern);
        if (before != null) {
            return program.wake(first + before);
        }
        ofPart.put(pattern, patterns.size());
        ModelColumn column = rows.pattern(s, pattern);
        patterns.add(column);
        rows.addTo(program, column, Double.POSITIVE_INFINITY);
        return true;
    }

    /** Adds all patterns of another pool of the same parts. */
    void addAll(PatternPool other) {
        for (ModelColumn column : other.patterns) {
            CuttingPattern pattern = column.pattern();
            if (pattern != null) {
                add(column.part(), pattern);
            }
        }
    }

    /** Passes over the patterns that cost most beyond what they gain, where there are many; pricing may find them again. */
    void tidy() {
        int keep = 2 * rows.count + 200;
        if (program.awakes() < 2 * keep) {
            return;
        }
        program.keepCheapest(first, keep);
    }

    /**
     * Passes over the patterns that no answer of interest uses, and where there are many over those that cost most.
     *
     * @param most greatest value of the programme that is of interest
     */
    void narrow(double most) {
        program.sleep(first, Math.max(0, most - program.objective()) + 1e-7);
        tidy();
    }

    /** Passes over the patterns with more pieces than are still required. */
    void narrowToRequired() {
        program.sleepExcessive(first);
    }
}
