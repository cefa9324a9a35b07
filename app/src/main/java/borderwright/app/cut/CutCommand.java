package borderwright.app.cut;

import borderwright.app.exit.ExitCode;
import borderwright.app.progress.ProgressOption;
import borderwright.app.progress.ProgressReport;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.why.Explainer;
import borderwright.engine.buying.why.Explanation;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.prices.MinorUnit;
import borderwright.engine.stock.OffcutWorth;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The cheapest boards for a list of pieces, and how each board is cut. */
@Command(
        name = "cut",
        mixinStandardHelpOptions = true,
        description = "Finds the cheapest boards for a list of pieces, and how to cut each.")
public final class CutCommand implements Callable<Integer> {
    /** Search steps when neither --seconds nor --effort is given: some seconds on a present-day computer. */
    static final long DEFAULT_EFFORT = 4_000_000;

    /** Search steps for asking again what would change the answer, out of the same allowance. */
    private static final long EXPLAINING_EFFORT = 600_000;

    @Option(
            names = "--pieces",
            required = true,
            paramLabel = "P.csv",
            description = "list of pieces: section,length_mm,quantity,label")
    private Path pieces = Path.of("");

    @Option(
            names = "--boards",
            required = true,
            paramLabel = "B.csv",
            description =
                    "list of boards on offer: supplier,section,length_mm,price,available,pack (price of one board; an"
                            + " optional column from: how many boards must be bought at this price)")
    private Path boards = Path.of("");

    @Option(
            names = "--terms",
            paramLabel = "T.csv",
            description =
                    "list of suppliers' terms: supplier,tax_percent,delivery,free_over,minimum_order (optional columns"
                            + " from_value, with one more row for each band of delivery; collection, collect_up_to_mm)")
    private @Nullable Path terms;

    @Option(
            names = "--kerf",
            paramLabel = "MM",
            converter = MillimetreOption.class,
            description = "width of a saw cut, mm (default: 3)")
    private BigDecimal kerf = BigDecimal.valueOf(3);

    @Option(
            names = "--trim",
            paramLabel = "MM",
            converter = MillimetreOption.class,
            description = "waste at each end of a board, saw cut included, mm (default: 0)")
    private BigDecimal trim = BigDecimal.ZERO;

    @Option(
            names = "--keep-from",
            paramLabel = "MM",
            converter = MillimetreOption.class,
            description = "shortest offcut worth keeping, mm; needs --keep-worth")
    private @Nullable BigDecimal keepFrom;

    @Option(
            names = "--keep-worth",
            paramLabel = "PRICE",
            description = "what a metre of such an offcut is worth to you, weighed against prices (default: 0)")
    private @Nullable BigDecimal keepWorth;

    @Option(names = "--seconds", paramLabel = "S", description = "time allowed for the search, never exceeded")
    private @Nullable Double seconds;

    @Option(
            names = "--effort",
            paramLabel = "N",
            description = "search steps allowed; their number does not depend on the computer")
    private @Nullable Long effort;

    @Option(names = "--skip-bad", description = "drop bad rows and list them, instead of stopping")
    private boolean skipBad;

    @Option(names = "--json", description = "write the answer as JSON")
    private boolean json;

    @Mixin
    private final ProgressOption progress = new ProgressOption();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        CutFaults faults = new CutFaults();
        checkOptions(faults);
        CutFiles files = new CutFiles(faults);
        files.readPieces(pieces);
        files.readBoards(boards);
        if (terms != null) {
            files.readTerms(terms);
        }
        if (files.isBeyondCounting()) {
            faults.file(boards.toString(), CutFaultMessage.SUM_TOO_LARGE.of());
        }
        if (faults.hasFileFaults() || (faults.hasRowFaults() && !skipBad)) {
            faults.all().forEach(err::println);
            CutFaultMessage code =
                    faults.hasFileFaults() ? CutFaultMessage.NOTHING_CUT : CutFaultMessage.NOTHING_CUT_FOR_ROWS;
            err.println(CutFaults.SENTENCES.text(code.of(faults.count())));
            return ExitCode.BAD_INPUT;
        }
        faults.remarks().forEach(err::println);
        for (String fault : faults.all()) {
            err.println(CutFaults.SENTENCES.text(CutFaultMessage.ROW_DROPPED.of(fault)));
        }
        return solve(files, err);
    }

    private void checkOptions(CutFaults faults) {
        if ((keepFrom == null) != (keepWorth == null)) {
            faults.file("--keep-from", CutFaultMessage.OFFCUT_OPTIONS_APART.of());
        }
        if (keepFrom != null && keepFrom.signum() <= 0) {
            faults.file("--keep-from", CutFaultMessage.OFFCUT_LENGTH_NOT_POSITIVE.of(keepFrom));
        }
        if (keepWorth != null && keepWorth.signum() < 0) {
            faults.file("--keep-worth", CutFaultMessage.OFFCUT_WORTH_NEGATIVE.of(keepWorth));
        }
        if (seconds != null && !(seconds > 0)) {
            faults.file("--seconds", CutFaultMessage.SECONDS_NOT_POSITIVE.of(seconds.toString()));
        }
        if (effort != null && effort < 0) {
            faults.file("--effort", CutFaultMessage.EFFORT_NEGATIVE.of(effort));
        }
        if (effort != null && seconds != null) {
            faults.file("--effort", CutFaultMessage.SECONDS_AND_EFFORT.of());
        }
    }

    private Integer solve(CutFiles files, PrintWriter err) throws IOException {
        ShoppingProblem plain = ShoppingProblem.builder(files.demands())
                .boards(files.boards())
                .terms(files.terms())
                .kerfTicks(ticks(kerf))
                .trimTicks(ticks(trim))
                .build();
        ShoppingProblem problem = plain.keeping(offcutWorth(files.decimals()));
        long start = System.nanoTime();
        Budget budget = budget(start);
        ShoppingAnswer answer;
        double took;
        Explanation why;
        try (ProgressReport report = progress.start(UnitSystem.METRIC, err)) {
            answer = buy(problem, budget, report);
            took = BigDecimal.valueOf(System.nanoTime() - start, 9)
                    .setScale(4, RoundingMode.HALF_UP)
                    .doubleValue();
            report.begins(CutReportMessage.CUT_EXPLAINING.of());
            why = Explainer.explain(problem, answer, budget.part(EXPLAINING_EFFORT));
        }
        CutReport.whyNone(answer).forEach(err::println);
        PrintWriter writer =
                new PrintWriter(new BufferedWriter(spec.commandLine().getOut(), 1 << 16));
        CutReport report = new CutReport(MinorUnit.withoutCurrency(files.decimals()));
        if (json) {
            report.json(answer, why, took, writer);
        } else if (answer.status() == ShoppingAnswer.Status.FOUND) {
            report.table(answer, why, took, writer);
        }
        return switch (answer.status()) {
            case FOUND -> ExitCode.DONE;
            case IMPOSSIBLE -> ExitCode.NOT_MET;
            case STOPPED -> ExitCode.STOPPED;
        };
    }

    private static ShoppingAnswer buy(ShoppingProblem problem, Budget budget, ProgressReport report) {
        AtomicInteger better = new AtomicInteger();
        report.begins(CutReportMessage.CUT_SEEKING.of(0));
        return Shopper.buy(
                problem,
                budget,
                (cost, bound) -> report.begins(CutReportMessage.CUT_SEEKING.of(better.incrementAndGet())));
    }

    private OffcutWorth offcutWorth(int decimals) {
        return keepFrom == null || keepWorth == null || keepWorth.signum() == 0
                ? OffcutWorth.NONE
                : new OffcutWorth(
                        ticks(keepFrom),
                        keepWorth
                                .movePointRight(decimals)
                                .setScale(0, RoundingMode.HALF_UP)
                                .longValueExact());
    }

    private Budget budget(long start) {
        if (seconds != null) {
            // Writing the answer out of the search and the last pass of a loop still take a moment.
            long deadline = start + (long) (Math.min(seconds * 0.97, Math.max(seconds / 3, seconds - 0.04)) * 1e9);
            return new Budget(Long.MAX_VALUE, () -> System.nanoTime() >= deadline);
        }
        return Budget.ofSteps(effort != null ? effort : DEFAULT_EFFORT);
    }

    private static long ticks(BigDecimal mm) {
        return mm.multiply(BigDecimal.valueOf(Length.TICKS_PER_MM))
                .setScale(0, RoundingMode.CEILING)
                .longValueExact();
    }
}
