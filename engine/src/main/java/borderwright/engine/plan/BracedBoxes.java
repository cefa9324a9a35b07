package borderwright.engine.plan;

import borderwright.engine.buildup.Box;
import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.BracingScheme;
import borderwright.engine.buildup.BuildMeans;
import borderwright.engine.garden.BuildRules;
import borderwright.engine.garden.EdgeKind;
import borderwright.engine.layout.FootprintPlan;
import borderwright.engine.layout.SidePlan;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.CureAnswer;
import borderwright.engine.strength.LeastCure;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Builds every box with its bracing: with the spacings that the rules say, which are then only checked; with the cheapest
 * bracing that holds where they say none, or with habits where none that was tried holds.
 *
 * <p>Boxes of one shape share the search; each is still checked by itself.
 */
final class BracedBoxes {
    /** In longer joined runs other walls and floors are not tried: each takes as long as the search itself. */
    private static final int MOST_WITH_ALTERNATIVES = 20;

    private final BuildRules rules;
    private final BuildMeans means;
    private final StrengthTerms terms;
    private final PieceCost cost;
    private final boolean alternatives;

    /** @param alternatives whether other walls and a higher floor are looked into as well */
    BracedBoxes(BuildRules rules, BuildMeans means, StrengthTerms terms, PieceCost cost, boolean alternatives) {
        this.rules = rules;
        this.means = means;
        this.terms = terms;
        this.cost = cost;
        this.alternatives = alternatives;
    }

    /**
     * A box with what is known of its strength.
     *
     * @param box as built up
     * @param report on it
     */
    record Checked(Box box, StrengthReport report) {}

    /** What the bracing of one side depends on, rounded to what is built alike. */
    private record Side(long tenthsMm, long hundredthsDeg, SidePlan.Role role, EdgeKind facing, long groundAboveBedCm) {
        static Side of(FootprintPlan plan, int i) {
            SidePlan side = plan.sides().get(i);
            return new Side(
                    StrictMath.round(plan.outline().sideMm(i) * 10),
                    StrictMath.round(StrictMath.toDegrees(plan.outline().insideAngle(i)) * 100),
                    side.role(),
                    side.facing(),
                    StrictMath.round((side.groundMm() - plan.bedMm()) / 10));
        }
    }

    /** What the bracing of a box depends on; a box with dividers is like no other. */
    private record Shape(List<Side> sides, double heightMm, double platformMm, boolean capped, String divided) {
        static Shape of(FootprintPlan plan) {
            List<Side> sides = new ArrayList<>();
            for (int i = 0; i < plan.outline().size(); i++) {
                sides.add(Side.of(plan, i));
            }
            String divided = plan.dividers().isEmpty() ? "" : plan.name();
            return new Shape(sides, plan.heightMm(), plan.platformMm(), plan.capped(), divided);
        }
    }

    List<Checked> build(List<FootprintPlan> plans) {
        Map<Shape, FootprintPlan> first = new LinkedHashMap<>();
        plans.forEach(plan -> first.putIfAbsent(Shape.of(plan), plan));
        Map<Shape, CureAnswer> cures = first.entrySet().parallelStream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> cure(entry.getValue())));
        return plans.parallelStream()
                .map(plan -> build(plan, Objects.requireNonNull(cures.get(Shape.of(plan)))))
                .toList();
    }

    private CureAnswer cure(FootprintPlan plan) {
        return alternatives && plan.planters().size() <= MOST_WITH_ALTERNATIVES
                ? LeastCure.withAlternatives(plan, rules, means, terms, cost)
                : LeastCure.find(plan, rules, means, terms, cost);
    }

    private Checked build(FootprintPlan plan, CureAnswer cure) {
        boolean free = rules.braceSpacing() == null && rules.tieSpacing() == null;
        Optional<Cure> way = free ? cure.cheapest() : Optional.empty();
        Box box = way.map(found -> BoxBuilder.build(plan, rules, means, scheme(found)))
                .orElseGet(() -> BoxBuilder.build(plan, rules, means));
        return new Checked(box, BoxStrength.check(box, terms).withCures(cure.all()));
    }

    private static BracingScheme scheme(Cure cure) {
        return new BracingScheme(cure.braceSpacingMm(), cure.tieSpacingMm(), cure.tieBelowRimMm(), Map.of());
    }
}
