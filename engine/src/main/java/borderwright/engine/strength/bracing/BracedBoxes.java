package borderwright.engine.strength.bracing;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.layout.plan.BoxShape;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Builds every box with its bracing: with the spacings that the rules say, and ties as deep as holds best; with the
 * cheapest bracing that holds where they say none, or as is usual where none that was tried holds.
 *
 * <p>Boxes of one shape with the same ground outside share the search; each is still checked by itself.
 */
public final class BracedBoxes {
    /** In longer joined runs other walls and floors are not tried: each takes as long as the search itself. */
    private static final int MOST_WITH_ALTERNATIVES = 20;

    private final BuildSpec rules;
    private final BuildMeans means;
    private final StrengthTerms terms;
    private final ToDoubleFunction<Box> cost;
    private final boolean alternatives;
    private final GroundSurface surface;
    private final WorkListener listener;

    /**
     * @param alternatives whether other ways to build are looked into as well
     * @param surface that the boxes stand on: posts can be let into soft ground
     * @param listener hears of each box, and of each way to brace it
     */
    public BracedBoxes(
            BuildSpec rules,
            BuildMeans means,
            StrengthTerms terms,
            ToDoubleFunction<Box> cost,
            boolean alternatives,
            GroundSurface surface,
            WorkListener listener) {
        this.rules = rules;
        this.means = means;
        this.terms = terms;
        this.cost = cost;
        this.alternatives = alternatives;
        this.surface = surface;
        this.listener = listener;
    }

    /**
     * A box with what is known of its strength.
     *
     * @param box as built up
     * @param report on it
     */
    public record Checked(Box box, StrengthReport report) {}

    /** How boxes of one shape are braced, and how else they could be. */
    private record Bracing(BuildSpec rules, BracingScheme scheme, CureAnswer cures) {}

    /** What stands outside one side, rounded to what makes no difference to its strength. */
    private record Outside(EdgeKind facing, long groundAboveBedCm) {}

    /** What the bracing of a box depends on. */
    private record Setting(BoxShape shape, List<Outside> outside) {
        static Setting of(FootprintPlan plan) {
            return new Setting(
                    BoxShape.of(plan),
                    plan.sides().stream()
                            .map(side ->
                                    new Outside(side.facing(), StrictMath.round((side.groundMm() - plan.bedMm()) / 10)))
                            .toList());
        }
    }

    /**
     * Each box with its bracing.
     *
     * <p>Boxes are worked out side by side and none sees another's answer: {@code cost} must be a pure function. The list
     * keeps the order of the plans, and the map is only asked by key, so the answer does not depend on the threads.
     */
    public List<Checked> build(List<FootprintPlan> plans) {
        Map<Setting, FootprintPlan> first = new LinkedHashMap<>();
        plans.forEach(plan -> first.putIfAbsent(Setting.of(plan), plan));
        AtomicInteger sought = new AtomicInteger();
        Map<Setting, Bracing> cures = first.entrySet().parallelStream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> cure(entry.getValue(), looks(entry.getValue(), sought, first.size()))));
        AtomicInteger checked = new AtomicInteger();
        return plans.parallelStream()
                .map(plan -> {
                    listener.begins(
                            BracingMessage.CHECKING_BOX.of(plan.name(), checked.incrementAndGet(), plans.size()));
                    return build(plan, Objects.requireNonNull(cures.get(Setting.of(plan))));
                })
                .toList();
    }

    /** Boxes are counted as they begin. */
    private Looks looks(FootprintPlan plan, AtomicInteger sought, int boxes) {
        int number = sought.incrementAndGet();
        return new Looks(listener, tried -> BracingMessage.SEEKING_BRACING.of(plan.name(), number, boxes, tried));
    }

    private Bracing cure(FootprintPlan plan, Looks looks) {
        BuildSpec floored = LeastCure.withFloorThatHolds(plan, rules, means, terms);
        CureAnswer cures = alternatives && plan.planters().size() <= MOST_WITH_ALTERNATIVES
                ? LeastCure.withAlternatives(plan, floored, means, terms, cost, surface, looks)
                : LeastCure.find(plan, floored, means, terms, cost, looks);
        boolean free =
                rules.bracing().braces().isEmpty() && rules.bracing().ties().isEmpty();
        Optional<Cure> built =
                free ? cures.cheapest() : LeastCure.asRequested(plan, floored, means, terms, cost, looks);
        return new Bracing(floored, built.map(Cure::scheme).orElseGet(() -> BracingScheme.of(rules)), cures);
    }

    private Checked build(FootprintPlan plan, Bracing bracing) {
        Box box = BoxBuilder.build(plan, bracing.rules, means, bracing.scheme);
        CureAnswer cures = bracing.cures;
        StrengthReport report = BoxStrength.check(box, terms).withCures(cures.all());
        return new Checked(box, cures.end() == SearchEnd.WHOLE ? report : report.withSearchCutShort(cures.tried()));
    }
}
