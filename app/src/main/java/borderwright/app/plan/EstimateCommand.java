package borderwright.app.plan;

import borderwright.app.exit.ExitCode;
import borderwright.engine.estimate.EstimateMaker;
import borderwright.engine.estimate.EstimateRequest;
import borderwright.engine.estimate.FirstEstimate;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
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
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A first range of boards, soil and money before any survey. */
@Command(
        name = "estimate",
        description = "A first range of boards, soil, fixings and money, before any survey.",
        mixinStandardHelpOptions = true)
public final class EstimateCommand implements Callable<Integer> {
    @Option(names = "--run", required = true, paramLabel = "L", description = "length of the whole run, such as 9.6m")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String run;

    @Option(names = "--depth", required = true, paramLabel = "D", description = "depth of the planters, such as 600mm")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String depth;

    @Option(names = "--height", required = true, paramLabel = "H", description = "height of the walls, such as 450mm")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String height;

    @Option(names = "--thickness", paramLabel = "T", description = "thickness of the boards (default: 25 mm, 1 1/2 in)")
    private @Nullable String thickness;

    @Option(names = "--width", paramLabel = "W", description = "width of the boards (default: 150 mm, 5 1/2 in)")
    private @Nullable String width;

    @Option(names = "--planters", paramLabel = "N", description = "how many planters, if you know")
    private @Nullable Integer planters;

    @Option(names = "--imperial", description = "write the answer in feet and inches")
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

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    private final List<String> faults = new ArrayList<>();

    @Override
    public Integer call() {
        EstimateRequest wish = wish();
        PrintWriter err = spec.commandLine().getErr();
        if (!faults.isEmpty()) {
            faults.forEach(fault -> err.println("borderwright: " + fault));
            return ExitCode.BAD_INPUT;
        }
        FirstEstimate estimate = EstimateMaker.estimate(wish);
        if (!estimate.problems().isEmpty()) {
            estimate.problems()
                    .forEach(problem -> err.println("borderwright: --" + problem.where() + ": "
                            + problem.sentence(Language.english().in(UnitSystem.METRIC))));
            return ExitCode.BAD_INPUT;
        }
        print(estimate, spec.commandLine().getOut());
        return ExitCode.DONE;
    }

    private EstimateRequest wish() {
        UnitSystem units = imperial ? UnitSystem.IMPERIAL : UnitSystem.METRIC;
        if (planters != null && (planters < 1 || planters > 500)) {
            faults.add("--planters: " + planters + " is out of range. Give 1 to 500.");
        }
        try {
            CurrencyUnit.of(currency);
        } catch (IllegalCurrencyException unknown) {
            faults.add("--currency: " + currency + " is no currency code. Give three letters, such as GBP.");
        }
        notNegative("--board-price", boardPrice);
        notNegative("--soil-price", soilPrice);
        notNegative("--delivery", delivery);
        return new EstimateRequest(
                length("--run", run),
                length("--depth", depth),
                length("--height", height),
                length("--thickness", thickness == null ? (imperial ? "1 1/2 in" : "25 mm") : thickness),
                length("--width", width == null ? (imperial ? "5 1/2 in" : "150 mm") : width),
                planters,
                units,
                currency,
                boardPrice,
                soilPrice,
                delivery);
    }

    /** A length with its unit; a bare number is in millimetres, or in inches for an answer in feet and inches. */
    private Length length(String option, String text) {
        boolean bare = text.strip().matches("\\d+([.,]\\d+)?");
        Parsed<Length> parsed = LengthText.parse(bare ? text.strip() + (imperial ? " in" : " mm") : text);
        if (parsed instanceof Parsed.Bad<Length> bad) {
            faults.add(option + ": " + Language.english().in(UnitSystem.METRIC).sentence(bad.fault()));
        }
        return parsed.value().orElse(Length.ZERO);
    }

    private void notNegative(String option, @Nullable BigDecimal price) {
        if (price != null && (price.signum() < 0 || price.compareTo(BigDecimal.valueOf(1_000_000)) > 0)) {
            faults.add(option + ": " + price.toPlainString() + " is no price. Give 0 to 1000000.");
        }
    }

    private static void print(FirstEstimate estimate, PrintWriter out) {
        out.println("A first range, from two whole designs: a sparing and a generous one.");
        for (FirstEstimate.Line line : estimate.lines()) {
            out.println("  " + line.what() + ": " + line.low() + " to " + line.high());
            out.println("    " + line.moneyLow() + " to " + line.moneyHigh());
        }
        out.println("  all together: " + estimate.totalLow() + " to " + estimate.totalHigh());
        out.println("A naive count: " + estimate.naive());
        out.println("What it forgets:");
        estimate.forgotten().forEach(line -> out.println("  - " + line));
        if (!estimate.habits().isEmpty()) {
            out.println("Habit prices, no source, in the currency named; replace them by your own: "
                    + String.join("; ", estimate.habits()) + ".");
        }
        out.println(
                "Guidance only: braced and tied for common soil, not checked for your ground. Local rules and licensed people decide.");
    }
}
