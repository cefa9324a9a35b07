package borderwright.bench.cutting;

import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.effort.Budget;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Runs classes of instances and prints a row of docs/benchmarks.md's table for each:
 * {@code Classes CLASS[,CLASS...] [seconds] [verbose]}, or {@code Classes FORM:FILE[,FORM:FILE...]} for text files.
 *
 * <p>Seconds are processor seconds of the one thread that searches, so that a busy computer does not count.
 */
public final class Classes {
    private final double limit;
    private final boolean verbose;

    private Classes(double limit, boolean verbose) {
        this.limit = limit;
        this.verbose = verbose;
    }

    public static void main(String[] args) throws IOException {
        Classes classes = new Classes(args.length > 1 ? Double.parseDouble(args[1]) : 10, args.length > 2);
        System.out.println(
                "| class | instances | proven | in 0.1 s | in 1 s | in 10 s | median s | worst s | worst gap, ppm"
                        + " | worst first answer, ms |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|");
        List<String> names = args[0].equals("all") ? InstanceClasses.NAMES : List.of(args[0].split(",", -1));
        for (String name : names) {
            int colon = name.indexOf(':');
            classes.run(
                    name,
                    colon < 0
                            ? InstanceClasses.of(name)
                            : InstanceFiles.read(name.substring(0, colon), Path.of(name.substring(colon + 1))));
        }
    }

    private static double cpuSeconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    private void run(String name, List<Instance> instances) {
        List<Run> runs = new ArrayList<>();
        for (Instance instance : instances) {
            Run run = run(instance);
            if (verbose || !run.answer.proven()) {
                System.out.printf(
                        Locale.ROOT,
                        "  %s cost %d bound %d %s %.3f s%n",
                        instance.name(),
                        run.answer.cost(),
                        run.answer.bound(),
                        run.answer.proven() ? "proven" : "OPEN",
                        run.seconds);
            }
            runs.add(run);
        }
        double[] seconds = runs.stream().mapToDouble(Run::seconds).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d | %.4f | %.2f | %.0f | %.0f |%n",
                name,
                seconds.length,
                provenWithin(runs, Double.MAX_VALUE),
                provenWithin(runs, 0.1),
                provenWithin(runs, 1),
                provenWithin(runs, 10),
                seconds.length == 0 ? 0 : seconds[seconds.length / 2],
                Arrays.stream(seconds).max().orElse(0),
                1e6 * runs.stream().mapToDouble(r -> r.answer.gap()).max().orElse(0),
                1e3 * runs.stream().mapToDouble(Run::firstSeconds).max().orElse(0));
    }

    private static long provenWithin(List<Run> runs, double seconds) {
        return runs.stream()
                .filter(r -> r.answer.proven() && r.seconds <= seconds)
                .count();
    }

    private Run run(Instance instance) {
        double start = cpuSeconds();
        double[] first = {-1};
        ShoppingAnswer answer = Shopper.buy(
                instance.problem(), new Budget(Long.MAX_VALUE, () -> cpuSeconds() > start + limit), (cost, bound) -> {
                    if (first[0] < 0 && cost < Long.MAX_VALUE) {
                        first[0] = cpuSeconds() - start;
                    }
                });
        double took = cpuSeconds() - start;
        return new Run(answer, took, first[0] < 0 ? took : first[0]);
    }

    private record Run(ShoppingAnswer answer, double seconds, double firstSeconds) {}
}
