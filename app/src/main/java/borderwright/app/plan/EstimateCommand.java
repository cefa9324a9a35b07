package borderwright.app.plan;

import borderwright.app.exit.ExitCode;
import borderwright.app.progress.ProgressOption;
import borderwright.app.progress.ProgressReport;
import borderwright.engine.estimate.EstimateMaker;
import borderwright.engine.estimate.EstimateRequest;
import borderwright.engine.estimate.FirstEstimate;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.engine.problem.Problem;
import borderwright.engine.reading.LengthText;
import borderwright.engine.reading.Parsed;
import borderwright.pack.language.Language;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A first range of boards, soil and money before any survey. */
@Command(
        name = "estimate",
        description = "Estimates a first range of boards, soil, fixings and money, before any survey.",
        mixinStandardHelpOptions = true)
public final class EstimateCommand implements Callable<Integer> {
    private static final int MOST_PLANTERS = 500;
    private static final BigDecimal MOST_PRICE = BigDecimal.valueOf(1_000_000);

    @Option(names = "--run", required = true, paramLabel = "L", description = "length of the whole run, such as 9.6m")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String run;

    @Option(names = "--depth", required = true, paramLabel = "D", description = "front to back, such as 600mm")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String depth;

    @Option(names = "--height", required = true, paramLabel = "H", description = "height of the walls, such as 450mm")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String height;

    @Option(names = "--thickness", paramLabel = "T", description = "thickness of the boards (default: 25 mm, 1 1/2 in)")
    private @Nullable String thickness;

    @Option(names = "--width", paramLabel = "W", description = "width of the boards (default: 150 mm, 5 1/2 in)")
    private @Nullable String width;

    @Option(names = "--planters", paramLabel = "N", description = "number of planters, if you know it")
    private @Nullable Integer planters;

    @Option(names = "--imperial", description = "give the answer in feet and inches")
    private boolean imperial;

    @Option(
            names = "--currency",
            paramLabel = "CODE",
            description = "currency of all money (default: ${DEFAULT-VALUE})")
    private String currency = "GBP";

    @Option(names = "--board-price", paramLabel = "P", description = "your price for a metre of board, tax included")
    private @Nullable BigDecimal boardPrice;

    @Option(
            names = "--soil-price",
            paramLabel = "P",
            description = "your price for a cubic metre of soil, tax included")
    private @Nullable BigDecimal soilPrice;

    @Option(names = "--delivery", paramLabel = "P", description = "your price for a delivery, tax included")
    private @Nullable BigDecimal delivery;

    @Mixin
    private final ProgressOption progress = new ProgressOption();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    private final List<Problem> faults = new ArrayList<>();

    @Override
    public Integer call() {
        UnitSystem units = imperial ? UnitSystem.IMPERIAL : UnitSystem.METRIC;
        Sentences sentences = Language.english().in(units);
        EstimateRequest request = request(units);
        PrintWriter err = spec.commandLine().getErr();
        if (!faults.isEmpty()) {
            faults.forEach(fault -> err.println("borderwright: " + fault.where() + ": " + fault.sentence(sentences)));
            return ExitCode.BAD_INPUT;
        }
        FirstEstimate estimate;
        try (ProgressReport report = progress.start(units, err)) {
            estimate = EstimateMaker.estimate(request, report);
        }
        if (!estimate.problems().isEmpty()) {
            estimate.problems()
                    .forEach(problem ->
                            err.println("borderwright: --" + problem.where() + ": " + problem.sentence(sentences)));
            return ExitCode.BAD_INPUT;
        }
        print(estimate, sentences, spec.commandLine().getOut());
        return ExitCode.DONE;
    }

    private EstimateRequest request(UnitSystem units) {
        if (planters != null && (planters < 1 || planters > MOST_PLANTERS)) {
            fault("--planters", EstimateReportMessage.PLANTERS_OUT_OF_RANGE.of(planters, 1, MOST_PLANTERS));
        }
        try {
            CurrencyUnit.of(currency);
        } catch (IllegalCurrencyException unknown) {
            fault("--currency", EstimateReportMessage.ESTIMATE_CURRENCY_UNKNOWN.of(currency));
        }
        checkPrice("--board-price", boardPrice);
        checkPrice("--soil-price", soilPrice);
        checkPrice("--delivery", delivery);
        return EstimateRequest.builder(units, currency)
                .run(length("--run", run))
                .depth(length("--depth", depth))
                .height(length("--height", height))
                .thickness(length("--thickness", thickness == null ? (imperial ? "1 1/2 in" : "25 mm") : thickness))
                .width(length("--width", width == null ? (imperial ? "5 1/2 in" : "150 mm") : width))
                .planters(planters)
                .boardPerMetre(boardPrice)
                .soilPerCubicMetre(soilPrice)
                .delivery(delivery)
                .build();
    }

    /** A length with its unit; a bare number is in millimetres, or in inches for an answer in feet and inches. */
    private Length length(String option, String text) {
        boolean bare = text.strip().matches("\\d+([.,]\\d+)?");
        Parsed<Length> parsed = LengthText.parse(bare ? text.strip() + (imperial ? " in" : " mm") : text);
        if (parsed instanceof Parsed.Bad<Length> bad) {
            fault(option, bad.fault());
        }
        return parsed.value().orElse(Length.ZERO);
    }

    private void checkPrice(String option, @Nullable BigDecimal price) {
        if (price != null && (price.signum() < 0 || price.compareTo(MOST_PRICE) > 0)) {
            fault(option, EstimateReportMessage.PRICE_OUT_OF_RANGE.of(price, MOST_PRICE));
        }
    }

    private void fault(String option, Message message) {
        faults.add(new Problem(option, message));
    }

    private static void print(FirstEstimate estimate, Sentences sentences, PrintWriter out) {
        out.println(sentences.text(EstimateReportMessage.ESTIMATE_HEADING.of()));
        for (FirstEstimate.Line line : estimate.lines()) {
            out.println("  " + sentences.text(line.what()));
            out.println("    " + sentences.text(money(line.moneyLow(), line.moneyHigh())));
        }
        out.println("  "
                + sentences.text(
                        EstimateReportMessage.ESTIMATE_TOTAL.of(money(estimate.totalLow(), estimate.totalHigh()))));
        estimate.simpleCount()
                .ifPresent(count -> out.println(sentences.text(EstimateReportMessage.ESTIMATE_SIMPLE_COUNT.of(count))));
        out.println(sentences.text(EstimateReportMessage.ESTIMATE_LEFT_OUT_HEADING.of()));
        estimate.leftOut().forEach(line -> out.println("  - " + sentences.text(line)));
        out.println(sentences.text(EstimateReportMessage.ESTIMATE_ASSUMED_PRICES.of(estimate.assumedPrices())));
        out.println(sentences.text(EstimateReportMessage.ESTIMATE_CAUTION.of()));
    }

    private static Message money(Money low, Money high) {
        return low.equals(high)
                ? EstimateReportMessage.ESTIMATE_MONEY.of(low)
                : EstimateReportMessage.ESTIMATE_MONEY_RANGE.of(low, high);
    }
}
