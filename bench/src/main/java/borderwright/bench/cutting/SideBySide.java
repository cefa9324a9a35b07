package borderwright.bench.cutting;

import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.effort.Budget;
import com.google.ortools.Loader;
import java.util.List;
import java.util.Locale;

/**
 * The same instances for three ways to solve them, one after another in one process: every pattern listed and given to a
 * general solver, a constraint model over pieces and boards, and ours: {@code SideBySide CLASS [seconds] [every]}.
 *
 * <p>Prints for each instance the cost and wall-clock seconds of each, and how many times as long the others took. A cost
 * is starred where it is proven. Only for boards of one supplier without terms.
 */
public final class SideBySide {
    private SideBySide() {}

    /** What one way came to. */
    record Outcome(long cost, boolean proven, double seconds) {
        /** Nothing was found in so many seconds. */
        static Outcome none(double seconds) {
            return new Outcome(Long.MAX_VALUE, false, seconds);
        }

        private String words() {
            return cost == Long.MAX_VALUE ? "none" : cost + (proven ? "*" : "");
        }
    }

    public static void main(String[] args) {
        double limit = args.length > 1 ? Double.parseDouble(args[1]) : 10;
        int every = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        Loader.loadNativeLibraries();
        List<Instance> instances = InstanceClasses.of(args[0]);
        System.out.println("| instance | listed patterns | s | constraints | s | ours | s | times | times |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        for (int k = 0; k < instances.size(); k += every) {
            PlainCase plain = PlainCase.of(instances.get(k).problem());
            Outcome ours = ours(instances.get(k), limit);
            Outcome listed = new ListedPatterns(plain, limit).solve();
            Outcome constraints = new ConstraintModel(plain, limit).solve();
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %.3f | %s | %.3f | %s | %.3f | %.1f | %.1f |%n",
                    instances.get(k).name(),
                    listed.words(),
                    listed.seconds,
                    constraints.words(),
                    constraints.seconds,
                    ours.words(),
                    ours.seconds,
                    listed.seconds / ours.seconds,
                    constraints.seconds / ours.seconds);
            for (Outcome other : List.of(listed, constraints)) {
                if ((other.proven && other.cost > ours.cost) || (ours.proven && other.cost < ours.cost)) {
                    throw new IllegalStateException(instances.get(k).name() + ": a proof that is none");
                }
            }
        }
    }

    private static Outcome ours(Instance instance, double limit) {
        long start = System.nanoTime();
        ShoppingAnswer answer = Shopper.buy(
                instance.problem(), new Budget(Long.MAX_VALUE, () -> System.nanoTime() > start + limit * 1e9));
        return new Outcome(answer.cost(), answer.proven(), since(start));
    }

    static double since(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
