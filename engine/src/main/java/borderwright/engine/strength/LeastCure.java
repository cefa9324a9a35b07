package borderwright.engine.strength;

import borderwright.engine.buildup.Box;
import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.BracingScheme;
import borderwright.engine.buildup.BuildMeans;
import borderwright.engine.buildup.Piece.Role;
import borderwright.engine.garden.BuildRules;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.layout.FootprintPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Searches for the cheapest way of building a box that holds.
 *
 * <p><b>Method.</b> Ways are built up class by class (no ties, one in the longest bay, two, ...), priced, and looked into
 * from the cheapest on; whatever costs no less than the best found so far is passed over. The search ends with a class
 * whose cheapest way costs no less than the best: classes of more ties cost more. So the answer is the cheapest of all ways
 * tried, and those passed over are no cheaper.
 *
 * <p>Thicker or other walls of the garden's own sections and a higher platform are sought the same way, as alternatives: the
 * walls are a wish, and are not changed unasked.
 */
public final class LeastCure {
    private static final double PLATFORM_STEP_MM = 100;

    private final FootprintPlan plan;
    private final BuildMeans means;
    private final StrengthTerms terms;
    private final ToDoubleFunction<Box> cost;
    private int tried;

    private LeastCure(FootprintPlan plan, BuildMeans means, StrengthTerms terms, ToDoubleFunction<Box> cost) {
        this.plan = plan;
        this.means = means;
        this.terms = terms;
        this.cost = cost;
    }

    /** A way with the box that it gives. */
    private record Way(BracingScheme scheme, Box box, double cost) {}

    /** A way that was looked into. */
    private record Found(Cure cure, Box box) {}

    /**
     * The cheapest bracing with the walls of the rules.
     *
     * @param plan where the box stands
     * @param rules with the walls wished for; their spacings are passed over
     * @param means to build with
     * @param terms that it must meet
     * @param cost of a built-up box: pieces and screws
     */
    public static CureAnswer find(
            FootprintPlan plan, BuildRules rules, BuildMeans means, StrengthTerms terms, ToDoubleFunction<Box> cost) {
        LeastCure search = new LeastCure(plan, means, terms, cost);
        Optional<Found> found = search.cheapest(plan, rules, Double.POSITIVE_INFINITY);
        return new CureAnswer(found.map(Found::cure), found.map(Found::box), List.of(), search.tried);
    }

    /** The same with other walls and a higher platform as alternatives; several times the work. */
    public static CureAnswer withAlternatives(
            FootprintPlan plan, BuildRules rules, BuildMeans means, StrengthTerms terms, ToDoubleFunction<Box> cost) {
        LeastCure search = new LeastCure(plan, means, terms, cost);
        Optional<Found> found = search.cheapest(plan, rules, Double.POSITIVE_INFINITY);
        List<Cure> alternatives = new ArrayList<>();
        SectionNote walls = means.sections().stream()
                .filter(s -> s.name().equals(rules.walls()))
                .findFirst()
                .orElseThrow();
        for (SectionNote other : means.sections()) {
            boolean stronger = other.thickness().mm() > walls.thickness().mm()
                    && other.width().mm() >= 2 * other.thickness().mm();
            if (stronger) {
                search.cheapest(plan, rules.withWalls(other.name()), Double.POSITIVE_INFINITY)
                        .ifPresent(way -> alternatives.add(way.cure));
            }
        }
        search.raised()
                .flatMap(raised -> search.cheapest(raised, rules, Double.POSITIVE_INFINITY)
                        .map(way -> search.onPlatform(way.cure, raised.platformMm())))
                .ifPresent(alternatives::add);
        alternatives.sort(Comparator.comparingDouble(Cure::cost));
        return new CureAnswer(found.map(Found::cure), found.map(Found::box), alternatives, search.tried);
    }

    /** The same planter on a floor a step higher, where that leaves room for roots. */
    private Optional<FootprintPlan> raised() {
        double raisedMm = plan.platformMm() + PLATFORM_STEP_MM;
        return raisedMm > plan.heightMm() / 2
                ? Optional.empty()
                : Optional.of(new FootprintPlan(
                        plan.name(),
                        plan.run(),
                        plan.outline(),
                        plan.sides(),
                        plan.dividers(),
                        plan.planters(),
                        plan.bedMm(),
                        plan.heightMm(),
                        raisedMm,
                        plan.capped()));
    }

    private Cure onPlatform(Cure cure, double platformMm) {
        return new Cure(
                "a floor " + Figures.length(terms, platformMm) + " above the bed, " + cure.words(),
                cure.walls(),
                cure.braceSpacingMm(),
                cure.tieSpacingMm(),
                cure.tieBelowRimMm(),
                cure.cost(),
                cure.bowMm(),
                cure.worst());
    }

    private Optional<Found> cheapest(FootprintPlan footprint, BuildRules rules, double mostCost) {
        SectionNote tie = section(rules.ties() == null ? rules.walls() : rules.ties());
        Box first = BoxBuilder.build(footprint, rules, means, new BracingScheme(1e5, 0, 75, Map.of()));
        if (first.pieces().isEmpty()) {
            return Optional.empty();
        }
        double wallMm = first.courses().get(first.courses().size() - 1).topMm()
                - first.courses().get(0).bottomMm();
        Bracings bracings = new Bracings(
                footprint, wallMm, tie.width().mm(), BracingScheme.of(rules).tieBelowRimMm());
        @Nullable Found best = null;
        double bestCost = mostCost;
        for (int ties = 0; ties < bracings.classes(); ties++) {
            List<Way> ways = new ArrayList<>();
            for (BracingScheme scheme : bracings.of(ties)) {
                Box box = BoxBuilder.build(footprint, rules, means, scheme);
                ways.add(new Way(scheme, box, cost.applyAsDouble(box)));
            }
            ways.sort(Comparator.comparingDouble(Way::cost));
            if (ways.get(0).cost >= bestCost) {
                break;
            }
            for (Way way : ways) {
                if (way.cost >= bestCost) {
                    break;
                }
                tried++;
                Uses uses = BoxStrength.uses(way.box, terms);
                if (uses.worst() <= 1) {
                    best = new Found(cure(rules, way, uses), way.box);
                    bestCost = way.cost;
                    break;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Cure cure(BuildRules rules, Way way, Uses uses) {
        long ties = way.box.pieces().stream().filter(p -> p.role() == Role.TIE).count();
        long braces =
                way.box.pieces().stream().filter(p -> p.role() == Role.BRACE).count();
        String words = rules.walls() + " walls with "
                + (ties == 0
                        ? "no ties"
                        : count(ties, "tie") + " whose tops lie " + Figures.length(terms, way.scheme.tieBelowRimMm())
                                + " below the rim")
                + " and " + (braces == 0 ? "no braces" : count(braces, "brace"));
        return new Cure(
                words,
                rules.walls(),
                way.scheme.braceSpacingMm(),
                way.scheme.tieSpacingMm(),
                way.scheme.tieBelowRimMm(),
                way.cost,
                uses.bowMm(),
                uses.worst());
    }

    private static String count(long n, String one) {
        return n + " " + one + (n == 1 ? "" : "s");
    }

    private SectionNote section(String name) {
        return means.sections().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
