package borderwright.engine.estimate;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.effort.WorkListener;
import borderwright.engine.estimate.DesignEstimate.Design;
import borderwright.engine.estimate.DesignEstimate.End;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.strength.bracing.Looks;
import borderwright.engine.strength.bracing.SearchEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A first range of boards, soil, fixings and money before any survey. */
public final class EstimateMaker {
    private static final double LEAST_MM = 150;

    private EstimateMaker() {}

    /** {@link #estimate(EstimateRequest, WorkListener)} with nobody listening. */
    public static FirstEstimate estimate(EstimateRequest request) {
        return estimate(request, WorkListener.NONE);
    }

    /**
     * The estimate for a request; what cannot be estimated of it is in its problems.
     *
     * @param listener hears of each design, and of each way to brace it
     */
    public static FirstEstimate estimate(EstimateRequest request, WorkListener listener) {
        List<Problem> problems = problems(request);
        CurrencyUnit currency = CurrencyUnit.of(request.currency());
        if (!problems.isEmpty()) {
            Money nothing = Money.zero(currency);
            return new FirstEstimate(List.of(), nothing, nothing, Optional.empty(), List.of(), List.of(), problems);
        }
        End sparing = new End(planters(request, 2400), 900, 0, 10, EstimatePrices.low(request));
        End generous = new End(planters(request, 1200), 450, 0.1, 25, EstimatePrices.high(request));
        Design low = DesignEstimate.work(request, sparing, looks(listener, Which.SPARING));
        Design high = DesignEstimate.work(request, generous, looks(listener, Which.GENEROUS));
        return report(request, new Range(sparing, low), new Range(generous, high));
    }

    private enum Which {
        SPARING,
        GENEROUS
    }

    private static Looks looks(WorkListener listener, Which design) {
        return new Looks(listener, tried -> EstimateMessage.ESTIMATING_DESIGN.of(design, tried));
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

    private static List<Problem> problems(EstimateRequest request) {
        List<Problem> problems = new ArrayList<>();
        check(request.run(), 2 * LEAST_MM, 1_000_000, "run", EstimateMessage.ESTIMATE_RUN, problems);
        check(request.depth(), LEAST_MM, 3000, "depth", EstimateMessage.ESTIMATE_DEPTH, problems);
        check(request.height(), 50, 1500, "height", EstimateMessage.ESTIMATE_HEIGHT, problems);
        return problems;
    }

    private static void check(
            Length given, double leastMm, double mostMm, String where, EstimateMessage code, List<Problem> problems) {
        if (given.mm() < leastMm || given.mm() > mostMm) {
            problems.add(new Problem(where, code.of(given.mm(), leastMm, mostMm)));
        }
    }

    private static int planters(EstimateRequest request, double lengthMm) {
        return request.planters() != null
                ? request.planters()
                : (int) Math.max(1, StrictMath.round(request.run().mm() / lengthMm));
    }

    private static FirstEstimate report(EstimateRequest request, Range low, Range high) {
        CurrencyUnit currency = CurrencyUnit.of(request.currency());
        Design sparing = low.design();
        Design generous = high.design();
        List<FirstEstimate.Line> lines = List.of(
                line(
                        EstimateMessage.ESTIMATED_BOARDS.of(run(low.boardMetres(), high.boardMetres())),
                        low.boardsMinor(),
                        high.boardsMinor(),
                        currency),
                line(
                        EstimateMessage.ESTIMATED_SCREWS.of(number(sparing.screws(), generous.screws())),
                        low.screwsMinor(),
                        high.screwsMinor(),
                        currency),
                line(EstimateMessage.ESTIMATED_DELIVERY.of(), low.deliveryMinor(), high.deliveryMinor(), currency),
                line(
                        EstimateMessage.ESTIMATED_SOIL.of(sparing.soilM3(), generous.soilM3()),
                        low.soilMinor(),
                        high.soilMinor(),
                        currency));
        return new FirstEstimate(
                lines,
                Money.ofMinor(currency, low.totalMinor()),
                Money.ofMinor(currency, high.totalMinor()),
                Optional.of(EstimateMessage.SIMPLE_COUNT.of(simpleCountMm(request))),
                leftOut(low, high),
                assumed(request),
                List.of());
    }

    private static FirstEstimate.Line line(Message what, long lowMinor, long highMinor, CurrencyUnit currency) {
        return new FirstEstimate.Line(what, Money.ofMinor(currency, lowMinor), Money.ofMinor(currency, highMinor));
    }

    private static double simpleCountMm(EstimateRequest request) {
        long courses = Math.max(
                1, StrictMath.round(request.height().mm() / request.width().mm()));
        return 2 * (request.run().mm() + request.depth().mm()) * courses;
    }

    private static List<Message> leftOut(Range low, Range high) {
        Box sparing = low.design().box();
        Box generous = high.design().box();
        List<Message> leftOut = new ArrayList<>();
        leftOut.add(EstimateMessage.COUNT_LEAVES_DIVIDERS.of(between(sparing, generous, Role.DIVIDER)));
        leftOut.add(EstimateMessage.COUNT_LEAVES_POSTS.of(between(sparing, generous, Role.POST, Role.BRACE)));
        if (DesignEstimate.metresOf(generous, Role.TIE) > 0) {
            leftOut.add(EstimateMessage.COUNT_LEAVES_TIES.of(between(sparing, generous, Role.TIE)));
        }
        if (!low.design().holds() || !high.design().holds()) {
            leftOut.add(EstimateMessage.COUNT_LEAVES_STRENGTH.of());
        }
        if (low.design().bracing().end() == SearchEnd.CUT_SHORT
                || high.design().bracing().end() == SearchEnd.CUT_SHORT) {
            leftOut.add(EstimateMessage.COUNT_LEAVES_BRACING_UNTRIED.of());
        }
        leftOut.add(EstimateMessage.COUNT_LEAVES_WASTE.of(
                run(pieceMetres(sparing), pieceMetres(generous)),
                run(low.design().boardMetres(), high.design().boardMetres())));
        leftOut.add(EstimateMessage.COUNT_LEAVES_REJECTS.of(
                low.end().rejects(), high.end().rejects()));
        Box.Course top = generous.courses().get(generous.courses().size() - 1);
        leftOut.add(EstimateMessage.COUNT_LEAVES_SHRINKAGE.of(generous.courses().size(), top.topMm(), top.dryTopMm()));
        leftOut.add(EstimateMessage.COUNT_LEAVES_SCREWS.of(
                number(low.design().screws(), high.design().screws())));
        leftOut.add(EstimateMessage.COUNT_LEAVES_SETTLEMENT.of(
                SoilResolver.settling(low.end().settlesPercent()).loose(1) - 1,
                SoilResolver.settling(high.end().settlesPercent()).loose(1) - 1,
                high.design().soilM3() - high.design().filledM3()));
        leftOut.add(EstimateMessage.COUNT_LEAVES_DELIVERY.of());
        leftOut.add(EstimateMessage.ESTIMATE_LEAVES_OUT.of());
        return leftOut;
    }

    /** Length of all pieces of some roles, of either design. */
    private static Message between(Box sparing, Box generous, Role... roles) {
        return run(DesignEstimate.metresOf(sparing, roles), DesignEstimate.metresOf(generous, roles));
    }

    private static double pieceMetres(Box box) {
        return DesignEstimate.metresOf(box, Role.values());
    }

    /** Two lengths of board, m, the lesser first; one where they are the same to 0.1 m. */
    private static Message run(double oneM, double otherM) {
        double leastMm = 1000 * Math.min(oneM, otherM);
        double mostMm = 1000 * Math.max(oneM, otherM);
        return StrictMath.round(leastMm / 100) == StrictMath.round(mostMm / 100)
                ? EstimateMessage.ONE_LENGTH.of(mostMm)
                : EstimateMessage.LENGTH_RANGE.of(leastMm, mostMm);
    }

    private static Message number(int low, int high) {
        return low == high ? EstimateMessage.ONE_NUMBER.of(low) : EstimateMessage.NUMBER_RANGE.of(low, high);
    }

    /** Prices that the request leaves to the estimate. */
    private static List<Message> assumed(EstimateRequest request) {
        CurrencyUnit currency = CurrencyUnit.of(request.currency());
        List<Message> assumed = new ArrayList<>();
        if (request.boardPerMetre() == null) {
            assumed.add(EstimateMessage.ASSUMED_WOOD_PRICE.of(
                    Money.of(currency, EstimatePrices.LOW.woodPerCubicMetre()),
                    Money.of(currency, EstimatePrices.HIGH.woodPerCubicMetre())));
        }
        if (request.soilPerCubicMetre() == null) {
            assumed.add(EstimateMessage.ASSUMED_SOIL_PRICE.of(
                    Money.of(currency, EstimatePrices.LOW.soilPerCubicMetre()),
                    Money.of(currency, EstimatePrices.HIGH.soilPerCubicMetre())));
        }
        if (request.delivery() == null) {
            assumed.add(EstimateMessage.ASSUMED_DELIVERY.of(
                    Money.of(currency, EstimatePrices.LOW.delivery()),
                    Money.of(currency, EstimatePrices.HIGH.delivery())));
        }
        assumed.add(EstimateMessage.ASSUMED_SCREW_PRICE.of(
                EstimatePrices.SCREWS_IN_A_BOX,
                Money.of(currency, EstimatePrices.LOW.screwBox()),
                Money.of(currency, EstimatePrices.HIGH.screwBox())));
        return assumed;
    }
}
