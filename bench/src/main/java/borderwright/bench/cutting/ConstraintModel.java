package borderwright.bench.cutting;

import borderwright.bench.cutting.SideBySide.Outcome;
import java.util.Arrays;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/** A constraint model (choco) that says which board each piece is cut from and of which kind each board is. */
final class ConstraintModel {
    private final PlainCase plain;
    private final double limit;

    ConstraintModel(PlainCase plain, double limit) {
        this.plain = plain;
        this.limit = limit;
    }

    /** The outcome; no cost where none was found in time. */
    Outcome solve() {
        long start = System.nanoTime();
        int boards = plain.firstFit();
        int kinds = plain.capacity().size();
        // Kind 0 is a board that is not bought.
        int[] capacity = new int[kinds + 1];
        int[] price = new int[kinds + 1];
        for (int j = 0; j < kinds; j++) {
            capacity[j + 1] = plain.capacity().get(j);
            price[j + 1] = plain.price().get(j);
        }
        int longest = Arrays.stream(capacity).max().orElse(0);
        int dearest = Arrays.stream(price).max().orElse(0);
        int[] size = sizes();
        Model model = new Model();
        IntVar[] place = model.intVarArray(size.length, 0, boards - 1);
        IntVar[] load = model.intVarArray(boards, 0, longest);
        IntVar[] kind = model.intVarArray(boards, 0, kinds);
        IntVar[] cost = model.intVarArray(boards, 0, dearest);
        model.binPacking(place, size, load, 0).post();
        for (int k = 0; k < boards; k++) {
            IntVar room = model.intVar(0, longest);
            model.element(room, capacity, kind[k]).post();
            model.element(cost[k], price, kind[k]).post();
            model.arithm(load[k], "<=", room).post();
            if (k > 0) {
                model.arithm(kind[k], "<=", kind[k - 1]).post();
            }
        }
        IntVar total = model.intVar(0, boards * dearest);
        model.sum(cost, "=", total).post();
        Solver solver = model.getSolver();
        solver.setSearch(Search.inputOrderLBSearch(place), Search.inputOrderLBSearch(kind));
        solver.limitTime((long) Math.max(1, 1000 * (limit - SideBySide.since(start))));
        Solution best = solver.findOptimalSolution(total, false);
        boolean proven = best != null && !solver.isStopCriterionMet();
        return new Outcome(best == null ? Long.MAX_VALUE : best.getIntVal(total), proven, SideBySide.since(start));
    }

    /** The sizes of all pieces, one by one. */
    private int[] sizes() {
        int[] size = new int[plain.demand().stream().mapToInt(d -> d).sum()];
        int at = 0;
        for (int i = 0; i < plain.size().size(); i++) {
            Arrays.fill(size, at, at += plain.demand().get(i), plain.size().get(i));
        }
        return size;
    }
}
