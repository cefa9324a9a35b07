package borderwright.bench.cutting;

import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Runs classes of instances as a person would, each in a Java machine of its own, through {@code cut --json}:
 * {@code Cold CLASS[,CLASS...] [seconds] [every]}, where every second, third ... instance is taken.
 *
 * <p>Prints a row of docs/benchmarks.md's table for each class; seconds are those that the command reports. The command is
 * {@code ./borderwright} below the present directory, or the system property {@code borderwright.command}.
 */
public final class Cold {
    private static final double[] LIMITS = {0.1, 1, 2, 10, 60};

    private final Path command;
    private final Path scratch;
    private final double limit;

    private Cold(Path command, Path scratch, double limit) {
        this.command = command;
        this.scratch = scratch;
        this.limit = limit;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Path command = Path.of(System.getProperty("borderwright.command", "./borderwright"))
                .toAbsolutePath();
        Path scratch = Files.createTempDirectory("cold");
        Cold cold = new Cold(command, scratch, args.length > 1 ? Double.parseDouble(args[1]) : 10);
        int every = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        System.out.println("| class | instances | proven | in 0.1 s | in 1 s | in 2 s | in 10 s | in 60 s | median s"
                + " | worst s | worst gap, ppm |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        for (String name : args[0].split(",", -1)) {
            cold.run(name, InstanceClasses.of(name), every);
        }
    }

    private record Run(boolean proven, double seconds, double gap) {}

    private void run(String name, List<Instance> instances, int every) throws IOException, InterruptedException {
        List<Run> runs = new ArrayList<>();
        for (int k = 0; k < instances.size(); k += every) {
            Run run = run(instances.get(k));
            runs.add(run);
            if (!run.proven || run.seconds > 1) {
                System.out.printf(
                        Locale.ROOT,
                        "  %s %s gap %.0f ppm %.3f s%n",
                        instances.get(k).name(),
                        run.proven ? "proven" : "OPEN",
                        1e6 * run.gap,
                        run.seconds);
            }
        }
        StringBuilder within = new StringBuilder();
        for (double bound : LIMITS) {
            within.append(" | ")
                    .append(runs.stream()
                            .filter(r -> r.proven && r.seconds <= bound)
                            .count());
        }
        double[] seconds = runs.stream().mapToDouble(Run::seconds).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d%s | %.3f | %.2f | %.0f |%n",
                name,
                runs.size(),
                runs.stream().filter(Run::proven).count(),
                within,
                seconds[seconds.length / 2],
                seconds[seconds.length - 1],
                1e6 * runs.stream().mapToDouble(Run::gap).max().orElse(0));
    }

    private Run run(Instance instance) throws IOException, InterruptedException {
        write(instance.problem());
        Path answer = scratch.resolve("answer.json");
        int code = new ProcessBuilder(call(instance.problem()))
                .redirectOutput(answer.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        JsonNode json = new ObjectMapper().readTree(answer.toFile());
        if (code != 0 || !json.has("cost")) {
            throw new IllegalStateException(instance.name() + " ended with " + code);
        }
        boolean proven = json.get("proven").asBoolean();
        return new Run(
                proven, json.get("seconds").asDouble(), json.get("open_by").asDouble());
    }

    private List<String> call(ShoppingProblem problem) {
        List<String> call = new ArrayList<>(List.of(command.toString(), "cut", "--json"));
        call.addAll(List.of("--kerf", mm(problem.kerfTicks()), "--trim", mm(problem.trimTicks())));
        call.addAll(List.of("--seconds", Double.toString(limit)));
        call.addAll(List.of("--pieces", scratch.resolve("pieces.csv").toString()));
        call.addAll(List.of("--boards", scratch.resolve("boards.csv").toString()));
        call.addAll(List.of("--terms", scratch.resolve("terms.csv").toString()));
        if (problem.offcuts().counts()) {
            call.addAll(List.of("--keep-from", mm(problem.offcuts().leastTicks())));
            String worth = BigDecimal.valueOf(problem.offcuts().perMetre(), 2).toPlainString();
            call.addAll(List.of("--keep-worth", worth));
        }
        return call;
    }

    private static String mm(long ticks) {
        return BigDecimal.valueOf(ticks)
                .divide(BigDecimal.valueOf(320))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Writes the three files. Lengths count in mm where kerf and trim are 0 ticks, for such are in whole units. */
    private void write(ShoppingProblem problem) throws IOException {
        boolean plain = problem.kerfTicks() == 0 && problem.trimTicks() == 0;
        StringBuilder pieces = new StringBuilder("section,length_mm,quantity,label\n");
        for (Demand d : problem.demands()) {
            pieces.append(d.section()).append(',').append(plain ? "" + d.lengthTicks() : mm(d.lengthTicks()));
            pieces.append(',')
                    .append(d.quantity())
                    .append(',')
                    .append(d.label())
                    .append('\n');
        }
        StringBuilder boards = new StringBuilder("supplier,section,length_mm,price,available,pack,from\n");
        for (BoardOffer b : problem.boards()) {
            boards.append(b.supplier()).append(',').append(b.section()).append(',');
            boards.append(plain ? "" + b.lengthTicks() : mm(b.lengthTicks())).append(',');
            boards.append(BigDecimal.valueOf(b.packPrice(), 2).toPlainString())
                    .append(',')
                    .append(b.available() == Integer.MAX_VALUE ? "" : "" + b.available());
            boards.append(',').append(b.pack()).append(',').append(b.least()).append('\n');
        }
        StringBuilder terms = new StringBuilder("supplier,tax_percent,delivery,free_over,minimum_order\n");
        for (SupplierTerms t : problem.terms()) {
            terms.append(t.name()).append(',').append(t.taxPercent().toPlainString());
            terms.append(',')
                    .append(BigDecimal.valueOf(t.ways().get(0).charge(), 2).toPlainString())
                    .append(',');
            terms.append(
                    t.ways().size() == 1
                            ? ""
                            : BigDecimal.valueOf(t.ways().get(1).fromValue(), 2).toPlainString());
            terms.append(',')
                    .append(BigDecimal.valueOf(t.minimumOrder(), 2).toPlainString())
                    .append('\n');
        }
        Files.writeString(scratch.resolve("pieces.csv"), pieces);
        Files.writeString(scratch.resolve("boards.csv"), boards);
        Files.writeString(scratch.resolve("terms.csv"), terms);
    }
}
