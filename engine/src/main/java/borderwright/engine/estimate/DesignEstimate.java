package borderwright.engine.estimate;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.CuttingSpec;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.StrengthResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.bracing.CureAnswer;
import borderwright.engine.strength.bracing.LeastCure;
import borderwright.engine.strength.bracing.Looks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Works out two whole designs of a straight joined run, piece by piece and board by board, as the two ends of a range.
 *
 * <p>Both are braced and tied until they hold soil of common weight. The sparing one has long planters and little
 * settlement; the generous one short planters, braces close together, a tenth of the boards rejected and much settlement. What
 * lies between them is what a survey decides.
 *
 * <p>See docs/decisions/0005.
 */
final class DesignEstimate {
    static final String WALL = "wall board";
    static final String BATTEN = "batten";
    private static final String SELLER = "estimate";

    /** Work allowed for each design: far more than a straight run needs. */
    private static final long SEARCH_STEPS = 20_000;

    private static final CuttingSpec CUTTING = WoodResolver.usualCutting();

    private DesignEstimate() {}

    /** How one end of the range is built and priced. */
    record End(int planters, double braceSpacingMm, double rejects, double settlesPercent, EstimatePrices prices) {}

    /**
     * One design, worked out.
     *
     * @param box built up
     * @param basket bought for it
     * @param soil it takes
     * @param boardMetres of all boards bought
     * @param screws it takes
     * @param bracing what the search for its bracing came to
     */
    record Design(
            Box box, ShoppingAnswer basket, List<SoilVolume> soil, double boardMetres, int screws, CureAnswer bracing) {
        Design {
            soil = List.copyOf(soil);
        }

        /** Whether its bracing was found to hold soil of common weight. */
        boolean holds() {
            return bracing.cheapest().isPresent();
        }

        /** Soil once settled, m3. */
        double filledM3() {
            return soil.stream().mapToDouble(SoilVolume::filledM3).sum();
        }

        /** Soil to order, m3. */
        double soilM3() {
            return soil.stream().mapToDouble(SoilVolume::orderedM3).sum();
        }
    }

    /** One end of the range; each way to brace it is heard of. */
    static Design work(EstimateRequest request, End end, Looks looks) {
        FootprintPlan footprint = footprint(request, end.planters());
        BuildSpec rules = BuildResolver.of(WALL, BATTEN);
        BuildMeans means = means(request);
        CureAnswer bracing = bracing(footprint, rules, means, looks);
        Optional<BracingScheme> found = bracing.cheapest().map(Cure::scheme);
        Box box = BoxBuilder.build(footprint, rules, means, closer(found, end.braceSpacingMm()));
        List<SoilVolume> soil = SoilVolume.of(box, SoilResolver.settling(end.settlesPercent()), 0);
        int screws = box.fixings().stream().mapToInt(Box.Fixing::count).sum();
        ShoppingAnswer basket = Shopper.buy(shopping(request, box, end, screws), Budget.ofSteps(SEARCH_STEPS));
        double metres = basket.boards().stream()
                .mapToDouble(board -> board.count() * board.lengthTicks() / (double) Length.TICKS_PER_MM / 1000)
                .sum();
        return new Design(box, basket, soil, metres, screws, bracing);
    }

    /** The bracing with the least wood that holds soil of common weight; nothing where none that was tried holds. */
    private static CureAnswer bracing(FootprintPlan footprint, BuildSpec rules, BuildMeans means, Looks looks) {
        StrengthTerms terms = StrengthTerms.of(
                StrengthResolver.usual(means.units()),
                SoilResolver.usual(),
                GroundResolver.usual(),
                means.sections(),
                Origins.NONE);
        return LeastCure.find(footprint, rules, means, terms, DesignEstimate::woodMm3, looks);
    }

    private static double woodMm3(Box box) {
        return box.pieces().stream()
                .mapToDouble(piece -> piece.place().volumeMm3())
                .sum();
    }

    /** What was found, its braces no further apart than common practice has them; common practice alone where nothing was found. */
    private static BracingScheme closer(Optional<BracingScheme> found, double braceSpacingMm) {
        return found.map(scheme -> new BracingScheme(
                        Math.min(scheme.braceSpacingMm(), braceSpacingMm),
                        scheme.tieSpacingMm(),
                        scheme.tieBelowRimMm(),
                        List.of()))
                .orElseGet(
                        () -> BracingScheme.of(BuildResolver.of(WALL, BATTEN)).withSpacings(braceSpacingMm, 900));
    }

    private static FootprintPlan footprint(EstimateRequest request, int planters) {
        double runMm = request.run().mm();
        double depthMm = request.depth().mm();
        SidePlan front = SidePlan.free(SidePlan.Role.FRONT, EdgeKind.OPEN, 0);
        SidePlan end = SidePlan.free(SidePlan.Role.END, EdgeKind.OPEN, 0);
        SidePlan back = SidePlan.free(SidePlan.Role.BACK, EdgeKind.OPEN, 0);
        List<DividerLine> dividers = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= planters; i++) {
            names.add("E" + i);
            if (i < planters) {
                double xMm = runMm * i / planters;
                dividers.add(new DividerLine(0, new Point(xMm, 0), 2, new Point(xMm, depthMm)));
            }
        }
        return FootprintPlan.builder()
                .name("E")
                .run("estimate")
                .outline(Ring.rectangle(0, 0, runMm, depthMm))
                .sides(List.of(front, end, back, end))
                .dividers(dividers)
                .planters(names)
                .bedMm(0)
                .heightMm(request.height().mm())
                .build();
    }

    private static BuildMeans means(EstimateRequest request) {
        double longestMm = stockLengths(request.units()).stream()
                        .mapToDouble(Length::mm)
                        .max()
                        .orElseThrow()
                - 2 * CUTTING.trim().mm();
        return new BuildMeans(
                sections(request), List.of(), Map.of(WALL, longestMm, BATTEN, longestMm), request.units());
    }

    private static List<SectionSpec> sections(EstimateRequest request) {
        boolean metric = request.units() == UnitSystem.METRIC;
        Length battenThickness = metric ? Length.ofMm(47) : Length.ofMm(38.1);
        Length battenWidth = metric ? Length.ofMm(50) : Length.ofMm(88.9);
        return List.of(
                WoodResolver.section(WALL, request.thickness(), request.width()),
                WoodResolver.section(BATTEN, battenThickness, battenWidth));
    }

    /** Lengths that most yards stock (common practice, no source): 3.0 to 4.8 m, 8 to 16 ft. */
    static List<Length> stockLengths(UnitSystem units) {
        return units == UnitSystem.METRIC
                ? List.of(Length.ofMm(3000), Length.ofMm(3600), Length.ofMm(4200), Length.ofMm(4800))
                : List.of(Length.ofMm(2438.4), Length.ofMm(3048), Length.ofMm(3657.6), Length.ofMm(4876.8));
    }

    private static ShoppingProblem shopping(EstimateRequest request, Box box, End end, int screws) {
        EstimatePrices prices = end.prices();
        List<BoardOffer> offers = new ArrayList<>();
        for (SectionSpec section : sections(request)) {
            for (Length length : stockLengths(request.units())) {
                long price = prices.boardMinor(section, length);
                offers.add(new BoardOffer(SELLER, section.name(), length.ticks(), price, 1, Integer.MAX_VALUE));
            }
        }
        List<GoodsNeed> needs = List.of(new GoodsNeed("screw", BigDecimal.valueOf(Math.max(1, screws)), "pieces"));
        List<GoodsOffer> goods = List.of(new GoodsOffer(
                SELLER,
                "screw",
                prices.screwBoxMinor(),
                BigDecimal.valueOf(EstimatePrices.SCREWS_IN_A_BOX),
                Integer.MAX_VALUE));
        SupplierTerms terms =
                new SupplierTerms(SELLER, BigDecimal.ZERO, prices.deliveryMinor(), SupplierTerms.NEVER, 0);
        long kerf = Length.ofMm(3).ticks();
        return ShoppingProblem.builder(DemandMaker.of(box.pieces(), CUTTING, new Length(kerf)))
                .boards(offers)
                .terms(List.of(terms))
                .needs(needs)
                .goods(goods)
                .kerfTicks(kerf)
                .trimTicks(CUTTING.trim().ticks())
                .build();
    }

    /** Length of all pieces of a role, m. */
    static double metresOf(Box box, Piece.Role... roles) {
        List<Piece.Role> wanted = List.of(roles);
        return box.pieces().stream()
                .filter(piece -> wanted.contains(piece.role()))
                .mapToDouble(piece -> piece.length().mm() / 1000)
                .sum();
    }
}
