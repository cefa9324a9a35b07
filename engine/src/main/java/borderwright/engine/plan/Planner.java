package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.CutSteps;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.effort.Budget;
import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.layout.BorderLayout;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.prices.BoardLimits;
import borderwright.engine.prices.PieceCost;
import borderwright.engine.prices.PriceLists;
import borderwright.engine.problem.Problem;
import borderwright.engine.sequence.BuildSequence;
import borderwright.engine.sequence.WorkPlan;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.shopping.ShoppingList;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.bracing.BracedBoxes;
import borderwright.engine.survey.BorderSurvey;
import borderwright.engine.survey.SurveyAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Plans a garden, stage by stage.
 *
 * <p>A planner holds what is known so far of one garden; {@link #plan} is its only use.
 */
public final class Planner {
    /** Work for the basket of another floor: it is compared, not bought. */
    private static final long FLOOR_WORK = 50_000;

    private final Garden garden;
    private final Taught taught;
    private final Budget budget;
    private final boolean variant;
    private final WorkListener listener;

    private Planner(Garden garden, Budget budget, boolean variant, WorkListener listener) {
        // What was measured at the first planter takes the place of what was given; the rest of the plan knows no
        // other.
        this.garden = garden.asMeasured();
        this.taught = new Taught(garden);
        this.variant = variant;
        this.listener = listener;
        this.budget = budget;
    }

    /**
     * Plans a garden.
     *
     * @param garden the resolved garden
     * @param budget work that the search for the basket may spend
     */
    public static PlanAnswer plan(Garden garden, Budget budget) {
        return plan(garden, budget, WorkListener.NONE);
    }

    /**
     * Plans a garden and reports each step of work as it begins.
     *
     * @param garden as for {@link #plan(Garden, Budget)}
     * @param budget as for {@link #plan(Garden, Budget)}; its signal to stop ends every search early
     * @param listener called with each stage, and with the steps of long ones
     */
    public static PlanAnswer plan(Garden garden, Budget budget, WorkListener listener) {
        return new Planner(garden, budget, false, listener).plan();
    }

    /**
     * Plans a garden that is only compared with another: the same plan without the other ways to build, floor and fill each
     * box, which only the sheets of a garden's own plan show.
     *
     * @param garden as for {@link #plan(Garden, Budget)}
     * @param budget as for {@link #plan(Garden, Budget)}
     */
    public static PlanAnswer planVariant(Garden garden, Budget budget) {
        return planVariant(garden, budget, WorkListener.NONE);
    }

    /**
     * The same, and reports each step of work as it begins.
     *
     * @param garden as for {@link #plan(Garden, Budget)}
     * @param budget as for {@link #plan(Garden, Budget, WorkListener)}
     * @param listener as for {@link #plan(Garden, Budget, WorkListener)}
     */
    public static PlanAnswer planVariant(Garden garden, Budget budget, WorkListener listener) {
        return new Planner(garden, budget, true, listener).plan();
    }

    private PlanAnswer plan() {
        listener.begins(PlanStage.SURVEY.begins());
        SurveyAnswer survey = BorderSurvey.adjust(garden.survey(), garden.units(), listener);
        if (survey instanceof SurveyAnswer.NotFixed notFixed) {
            return new PlanAnswer.NotPlanned(notFixed.problems());
        }
        SurveyAnswer.Adjusted border = (SurveyAnswer.Adjusted) survey;
        listener.begins(PlanStage.LAYOUT.begins());
        PriceLists prices = PriceLists.resolve(garden.suppliers(), garden.sections(), garden.currency())
                .withSubstitutes(garden.substitutes(), garden.currency());
        Map<String, Double> longestMm = BoardLimits.longestPieceMm(garden, prices.boards());
        Layout layout = BorderLayout.lay(
                border.outline(),
                garden.runs(),
                layoutRules(longestMm),
                garden.survey().pointNames());
        if (layout.boxes().isEmpty()) {
            return new PlanAnswer.NotPlanned(nothingStands(layout));
        }
        listener.begins(PlanStage.BUILDING.begins());
        List<BracedBoxes.Checked> boxes = build(layout, longestMm, prices);
        return new PlanAnswer.Planned(finish(border, layout, boxes, prices));
    }

    private LayoutRules layoutRules(Map<String, Double> longestMm) {
        String walls = garden.build().walls();
        SectionSpec section = garden.section(walls)
                .orElseThrow(() -> new IllegalArgumentException("build.walls names no section: " + walls));
        return new LayoutRules(
                section.thickness().mm(),
                section.width().mm(),
                longestMm.getOrDefault(walls, BoardLimits.UNSOLD_LONGEST_MM),
                feetMm());
    }

    private OptionalDouble feetMm() {
        GroundSpec ground = garden.ground();
        return ground.surface().isHard() ? OptionalDouble.of(ground.feet().lowestMm()) : OptionalDouble.empty();
    }

    private static List<Problem> nothingStands(Layout layout) {
        List<Problem> reasons = new ArrayList<>(layout.unmet());
        if (reasons.isEmpty()) {
            reasons.add(new Problem("runs", ShortfallMessage.NOTHING_TO_BUILD.of()));
        }
        return reasons;
    }

    private List<BracedBoxes.Checked> build(Layout layout, Map<String, Double> longestMm, PriceLists prices) {
        BuildMeans means = new BuildMeans(
                garden.sections(),
                garden.saws(),
                longestMm,
                garden.units(),
                new CutSteps(garden.cutting().lengthsTo()));
        StrengthTerms terms = StrengthStage.terms(garden);
        PieceCost cost = new PieceCost(garden, prices);
        boolean alternatives = !variant;
        GroundSurface surface = garden.ground().surface();
        return new BracedBoxes(garden.build(), means, terms, cost, alternatives, surface, listener)
                .build(layout.boxes());
    }

    private Plan finish(
            SurveyAnswer.Adjusted border, Layout layout, List<BracedBoxes.Checked> built, PriceLists prices) {
        List<Box> boxes = built.stream().map(BracedBoxes.Checked::box).toList();
        List<StrengthReport> strength =
                built.stream().map(BracedBoxes.Checked::report).toList();
        List<Piece> pieces =
                boxes.stream().flatMap(box -> box.pieces().stream()).toList();
        listener.begins(PlanStage.SITE.begins());
        SiteWork site = variant
                ? SiteStages.ofVariant(garden, border.outline(), boxes)
                : SiteStages.of(garden, border, boxes, prices);
        List<ShoppingItem> shopping = ShoppingList.of(boxes, site.ground(), site.filling(), garden);
        WoodStage stage = new WoodStage(garden, prices, budget, listener);
        WoodStage.Bought wood = variant ? stage.unexplained(pieces, shopping) : stage.explained(pieces, shopping);
        Plan.Totals sums = new PlanTotals(garden, layout, pieces, site, wood.cutting()).of(wood.costs());
        List<Problem> unmet =
                new Shortfalls(garden, taught).of(border.report(), layout, boxes, strength, site, prices, wood);
        SiteWork floored = variant ? site : withFloorBaskets(site, sums, unmet);
        listener.begins(PlanStage.SEQUENCE.begins());
        WorkPlan work = BuildSequence.plan(garden, boxes, site.ground(), site.filling(), wood.cutting())
                .withNotes(taught.notes(boxes, strength));
        return Plan.builder()
                .garden(garden)
                .outline(border.outline())
                .survey(border.report())
                .layout(layout)
                .boxes(boxes)
                .strength(StrengthStage.summary(strength))
                .strengthReports(strength)
                .site(floored)
                .shopping(shopping)
                .basket(wood.basket())
                .cutting(wood.cutting())
                .work(work)
                .totals(sums)
                .shortfalls(unmet)
                .build();
    }

    private SiteWork withFloorBaskets(SiteWork site, Plan.Totals sums, List<Problem> unmet) {
        return site.withPlatforms(
                FloorBaskets.of(garden, site.platforms(), sums.costs().inAll(), unmet, budget.separate(FLOOR_WORK)));
    }
}
