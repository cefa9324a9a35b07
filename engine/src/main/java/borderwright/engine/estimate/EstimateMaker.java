package borderwright.engine.estimate;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.estimate.DesignEstimate.Design;
import borderwright.engine.estimate.DesignEstimate.End;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A first range of boards, soil, fixings and money before any survey. */
public final class EstimateMaker {
    private static final double LEAST_MM = 150;

    private EstimateMaker() {}

    /** The estimate for a wish; what cannot be planned of it is in its problems. */
    public static FirstEstimate estimate(EstimateRequest wish) {
        List<Problem> problems = problems(wish);
        CurrencyUnit currency = CurrencyUnit.of(wish.currency());
        if (!problems.isEmpty()) {
            Money nothing = Money.zero(currency);
            return new FirstEstimate(List.of(), nothing, nothing, "", List.of(), List.of(), problems);
        }
        End sparing = new End(planters(wish, 2400), 900, 0, 10, EstimatePrices.low(wish));
        End generous = new End(planters(wish, 1200), 450, 0.1, 25, EstimatePrices.high(wish));
        Design low = DesignEstimate.work(wish, sparing);
        Design high = DesignEstimate.work(wish, generous);
        return report(wish, new Range(sparing, low), new Range(generous, high));
    }

    private record Range(End end, Design design) {
        /** Money for boards and battens, rejects added, minor units. */
        long boardsMinor() {
            long boards = design.basket().orders().stream()
                    .flatMap(order -> order.boards().stream())
                    .mapToLong(line -> line.packs() * line.offer().packPrice())
                    .sum();
            return StrictMath.round(boards * (1 + end.rejects()));
        }

        long screwsMinor() {
            return design.basket().orders().stream()
                    .flatMap(order -> order.goods().stream())
                    .mapToLong(line -> line.count() * line.offer().price())
                    .sum();
        }

        long deliveryMinor() {
            return design.basket().orders().stream()
                    .mapToLong(ShoppingAnswer.Order::delivery)
                    .sum();
        }

        double boardMetres() {
            return design.boardMetres() * (1 + end.rejects());
        }

        long totalMinor() {
            return boardsMinor() + screwsMinor() + deliveryMinor() + soilMinor();
        }

        long soilMinor() {
            return end.prices().soilMinor(design.soilM3());
        }
    }

    private static List<Problem> problems(EstimateRequest wish) {
        LengthFormat format = DesignEstimate.format(wish);
        List<Problem> problems = new ArrayList<>();
        if (wish.run().mm() < 2 * LEAST_MM || wish.run().mm() > 1_000_000) {
            problems.add(new Problem(
                    "estimate-run",
                    "run",
                    "A run of " + format.length(wish.run().mm()) + " cannot be estimated.",
                    "Give a length from " + format.length(2 * LEAST_MM) + " to " + format.site(1_000_000) + "."));
        }
        if (wish.depth().mm() < LEAST_MM || wish.depth().mm() > 3000) {
            problems.add(new Problem(
                    "estimate-depth",
                    "depth",
                    "A depth of " + format.length(wish.depth().mm()) + " cannot be estimated.",
                    "Give a length from " + format.length(LEAST_MM) + " to " + format.length(3000) + "."));
        }
        if (wish.height().mm() < 50 || wish.height().mm() > 1500) {
            problems.add(new Problem(
                    "estimate-height",
                    "height",
                    "A height of " + format.length(wish.height().mm()) + " cannot be estimated.",
                    "Give a length from " + format.length(50) + " to " + format.length(1500) + "."));
        }
        return problems;
    }

    private static int planters(EstimateRequest wish, double lengthMm) {
        return wish.planters() != null
                ? wish.planters()
                : (int) Math.max(1, StrictMath.round(wish.run().mm() / lengthMm));
    }

    private static FirstEstimate report(EstimateRequest wish, Range low, Range high) {
        CurrencyUnit currency = CurrencyUnit.of(wish.currency());
        LengthFormat format = DesignEstimate.format(wish);
        List<FirstEstimate.Line> lines = List.of(
                line(
                        "boards and battens",
                        run(format, low.boardMetres()),
                        run(format, high.boardMetres()),
                        low.boardsMinor(),
                        high.boardsMinor(),
                        currency),
                line(
                        "screws",
                        low.design().screws() + " pieces",
                        high.design().screws() + " pieces",
                        low.screwsMinor(),
                        high.screwsMinor(),
                        currency),
                line("delivery", "1", "1", low.deliveryMinor(), high.deliveryMinor(), currency),
                line(
                        "soil, settlement included",
                        format.volume(low.design().soilM3()),
                        format.volume(high.design().soilM3()),
                        low.soilMinor(),
                        high.soilMinor(),
                        currency));
        return new FirstEstimate(
                lines,
                Money.ofMinor(currency, low.totalMinor()),
                Money.ofMinor(currency, high.totalMinor()),
                naive(wish, format),
                forgotten(format, low, high),
                habits(wish),
                List.of());
    }

    private static FirstEstimate.Line line(
            String what, String low, String high, long lowMinor, long highMinor, CurrencyUnit currency) {
        return new FirstEstimate.Line(
                what, low, high, Money.ofMinor(currency, lowMinor), Money.ofMinor(currency, highMinor));
    }

    private static String naive(EstimateRequest wish, LengthFormat format) {
        return "Front, back and ends, each course once: " + run(format, naiveMetres(wish)) + " of board.";
    }

    private static double naiveMetres(EstimateRequest wish) {
        long courses =
                Math.max(1, StrictMath.round(wish.height().mm() / wish.width().mm()));
        return 2 * (wish.run().mm() + wish.depth().mm()) / 1000 * courses;
    }

    private static List<String> forgotten(LengthFormat format, Range low, Range high) {
        Box sparing = low.design().box();
        Box generous = high.design().box();
        List<String> forgotten = new ArrayList<>();
        forgotten.add("dividers between planters: " + between(format, sparing, generous, Role.DIVIDER));
        forgotten.add("corner posts and braces that keep long sides from bulging: "
                + between(format, sparing, generous, Role.POST, Role.BRACE));
        if (DesignEstimate.metresOf(generous, Role.TIE) > 0) {
            forgotten.add("ties across: " + between(format, sparing, generous, Role.TIE));
        }
        if (!low.design().holds() || !high.design().holds()) {
            forgotten.add(
                    "strength: no bracing that was tried holds walls of such boards at this height; thicker boards, a"
                            + " lower wall or shorter planters will cost more than this range says");
        }
        forgotten.add("whole boards, end trims and saw cuts: pieces of "
                + run(format, pieceMetres(sparing)) + " to " + run(format, pieceMetres(generous))
                + " come out of boards of "
                + run(format, low.design().boardMetres()) + " to "
                + run(format, high.design().boardMetres()));
        forgotten.add("boards that turn out unusable: none to one in ten");
        forgotten.add("height: " + generous.courses().size() + " courses as they arrive make "
                + format.length(
                        generous.courses().get(generous.courses().size() - 1).topMm()) + ", dried "
                + format.length(
                        generous.courses().get(generous.courses().size() - 1).dryTopMm()));
        forgotten.add(
                "screws: " + low.design().screws() + " to " + high.design().screws());
        forgotten.add("soil that settles: 10 to 25 % more than the hole holds, "
                + format.volume(high.design().soilM3() - high.design().filledM3()) + " at the upper end");
        forgotten.add("delivery, once for each supplier");
        forgotten.add("not in this estimate: digging, gravel bed, membrane, liner and finish");
        return forgotten;
    }

    private static String between(LengthFormat format, Box low, Box high, Role... roles) {
        double sparing = DesignEstimate.metresOf(low, roles);
        double generous = DesignEstimate.metresOf(high, roles);
        return run(format, Math.min(sparing, generous)) + " to " + run(format, Math.max(sparing, generous));
    }

    private static double pieceMetres(Box box) {
        return DesignEstimate.metresOf(box, Role.values());
    }

    /** A length of board sold by the run. */
    private static String run(LengthFormat format, double metres) {
        return format.units() == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.1f m", metres)
                : String.format(Locale.ROOT, "%.0f ft", metres / UnitFactors.M_PER_FOOT);
    }

    private static List<String> habits(EstimateRequest wish) {
        List<String> habits = new ArrayList<>();
        if (wish.boardPerMetre() == null) {
            habits.add("boards at 550 to 850 a cubic metre");
        }
        if (wish.soilPerCubicMetre() == null) {
            habits.add("soil at 45 to 75 a cubic metre");
        }
        if (wish.delivery() == null) {
            habits.add("a delivery at 25 to 60");
        }
        habits.add("200 screws at 10 to 18");
        return habits;
    }
}
