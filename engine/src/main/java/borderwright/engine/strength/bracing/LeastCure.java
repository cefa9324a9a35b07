package borderwright.engine.strength.bracing;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.PartSections;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.bracing.BracingSearch.Found;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Searches for the cheapest way of building a box that holds.
 *
 * <p>The bracing is sought with the walls requested ({@link BracingSearch}). Alternatives are sought the same way, each
 * with one thing changed: other walls of the garden's own sections, other posts and braces, laps instead of mitres, a higher
 * floor, posts let into the ground. They are shown and not built: the rest is a request, and is not changed unasked.
 */
public final class LeastCure {
    private static final double PLATFORM_STEP_MM = 100;

    /** Common practice, no source. */
    private static final Length FOOTING = Length.ofMm(750);

    /** Ways that cost more than this times the cheapest are not shown. */
    private static final double MOST_TIMES = 3;

    /** Uprights are at least this thick, and no wider than this times their thickness (common practice, no source). */
    private static final double THINNEST_UPRIGHT_MM = 35;

    private static final double WIDEST_UPRIGHT = 2;

    /** Widest first. */
    private static final double[] BEARER_SPACINGS_MM = {500, 400, 320, 250};

    private final FootprintPlan plan;
    private final BuildSpec rules;
    private final BuildMeans means;
    private final StrengthTerms terms;
    private final BracingSearch search;

    private LeastCure(
            FootprintPlan plan,
            BuildSpec rules,
            BuildMeans means,
            StrengthTerms terms,
            ToDoubleFunction<Box> cost,
            Looks looks) {
        this.plan = plan;
        this.rules = rules;
        this.means = means;
        this.terms = terms;
        this.search = new BracingSearch(means, terms, cost, looks, looks.budget());
    }

    /**
     * The cheapest bracing with the walls of the rules.
     *
     * @param plan where the box stands
     * @param rules with the walls requested; their spacings are passed over
     * @param means to build with
     * @param terms that it must meet
     * @param cost of a built-up box: pieces and screws
     * @param looks hears of each way that is looked into
     */
    public static CureAnswer find(
            FootprintPlan plan,
            BuildSpec rules,
            BuildMeans means,
            StrengthTerms terms,
            ToDoubleFunction<Box> cost,
            Looks looks) {
        LeastCure cure = new LeastCure(plan, rules, means, terms, cost, looks);
        return cure.answer(
                cure.search.cheapest(plan, rules, SpacingChoice.SEARCHED, Double.POSITIVE_INFINITY), List.of());
    }

    /**
     * The cheapest bracing that keeps the spacings of the rules, which leaves how deep ties lie; where none holds, the one
     * that comes nearest.
     */
    public static Optional<Cure> asRequested(
            FootprintPlan plan,
            BuildSpec rules,
            BuildMeans means,
            StrengthTerms terms,
            ToDoubleFunction<Box> cost,
            Looks looks) {
        LeastCure cure = new LeastCure(plan, rules, means, terms, cost, looks);
        return cure.search
                .cheapest(plan, rules, SpacingChoice.AS_GIVEN, Double.POSITIVE_INFINITY)
                .or(cure.search::nearest)
                .map(found -> cure.cure(found, List.of()));
    }

    /**
     * The same as {@link #find} with other ways to build it as alternatives; several times the work.
     *
     * @param surface that the box stands on: posts can be let into soft ground
     * @param looks hears of each way that is looked into
     */
    public static CureAnswer withAlternatives(
            FootprintPlan plan,
            BuildSpec rules,
            BuildMeans means,
            StrengthTerms terms,
            ToDoubleFunction<Box> cost,
            GroundSurface surface,
            Looks looks) {
        LeastCure cure = new LeastCure(plan, rules, means, terms, cost, looks);
        Optional<Found> found = cure.search.cheapest(plan, rules, SpacingChoice.SEARCHED, Double.POSITIVE_INFINITY);
        double most = found.map(way -> MOST_TIMES * way.cost()).orElse(Double.POSITIVE_INFINITY);
        // Deterministic: each way has a search of its own, the stream keeps their order, and the sort is stable.
        List<Sought> alternatives = cure.others(surface).parallelStream()
                .map(other -> other.sought(new BracingSearch(means, terms, cost, looks, looks.budgetOfOthers()), most))
                .toList();
        return cure.answer(found, alternatives);
    }

    /** Something built in another way: other rules, or another footprint. */
    private record Other(FootprintPlan plan, BuildSpec rules, List<Message> changes) {
        Sought sought(BracingSearch search, double mostCost) {
            Optional<Found> found = search.cheapest(plan, rules, SpacingChoice.SEARCHED, mostCost);
            return new Sought(found, changes, search.end());
        }
    }

    /** What came of something built in another way. */
    private record Sought(Optional<Found> found, List<Message> changes, SearchEnd end) {}

    /**
     * The rules with bearers as far apart as the floor of this planter holds, where they do not say how far and it has a
     * floor; the closest where none holds.
     *
     * @param plan of the planter
     * @param rules with or without a spacing of bearers
     */
    public static BuildSpec withFloorThatHolds(
            FootprintPlan plan, BuildSpec rules, BuildMeans means, StrengthTerms terms) {
        if (plan.platformMm() == 0 || rules.floor().bearerSpacing().isPresent()) {
            return rules;
        }
        BuildSpec closer = rules;
        for (double spacing : BEARER_SPACINGS_MM) {
            closer = rules.withBearerSpacing(Length.ofMm(spacing));
            if (BoxStrength.floorUse(BoxBuilder.build(plan, closer, means, Bracings.BARE), terms) <= 1) {
                return closer;
            }
        }
        return closer;
    }

    private CureAnswer answer(Optional<Found> found, List<Sought> others) {
        boolean whole =
                search.end() == SearchEnd.WHOLE && others.stream().allMatch(other -> other.end == SearchEnd.WHOLE);
        List<Cure> alternatives = others.stream()
                .flatMap(other -> other.found.map(way -> cure(way, other.changes)).stream())
                .sorted(Comparator.comparingDouble(Cure::cost))
                .toList();
        return new CureAnswer(
                found.map(way -> cure(way, List.of())),
                found.map(Found::box),
                alternatives,
                search.tried(),
                whole ? SearchEnd.WHOLE : SearchEnd.CUT_SHORT);
    }

    private List<Other> others(GroundSurface surface) {
        List<Other> others = new ArrayList<>();
        SectionSpec walls = PartSections.of(rules, means).walls();
        SectionSpec uprights = uprights(rules);
        for (SectionSpec other : means.sections()) {
            double thickness = other.thickness().mm();
            double width = other.width().mm();
            if (thickness > walls.thickness().mm() && width >= 2 * thickness) {
                others.add(new Other(plan, rules.withWalls(other.name()), List.of()));
            }
            boolean stiffer = thickness * width
                    > uprights.thickness().mm() * uprights.width().mm();
            if (stiffer && thickness >= THINNEST_UPRIGHT_MM && width <= WIDEST_UPRIGHT * thickness) {
                others.add(new Other(plan, rules.withUprights(other.name()), List.of()));
            }
        }
        if (rules.corners() == CornerStyle.MITRED) {
            others.add(new Other(plan, rules.withCorners(CornerStyle.LAPPED), List.of()));
        }
        if (!surface.isHard() && !rules.isFooted() && terms.postGround().lateralKnPerM3() > 0) {
            others.add(new Other(plan, rules.withPostFooting(FOOTING), List.of()));
        }
        raised().ifPresent(raised -> onFloor(raised, others));
        return others;
    }

    /** With a floor, which must itself hold. */
    private void onFloor(FootprintPlan raised, List<Other> others) {
        BuildSpec floored = withFloorThatHolds(raised, rules, means, terms);
        if (BoxStrength.floorUse(BoxBuilder.build(raised, floored, means, Bracings.BARE), terms) <= 1) {
            others.add(new Other(raised, floored, List.of(CureMessage.FLOOR.of(raised.platformMm()))));
        }
    }

    private SectionSpec uprights(BuildSpec of) {
        return PartSections.of(of, means).posts();
    }

    /** The same planter on a floor a step higher, where that leaves room for roots. */
    private Optional<FootprintPlan> raised() {
        double raisedMm = plan.platformMm() + PLATFORM_STEP_MM;
        return raisedMm > plan.heightMm() / 2 ? Optional.empty() : Optional.of(plan.withPlatform(raisedMm));
    }

    private Cure cure(Found way, List<Message> otherwise) {
        List<Message> changes = new ArrayList<>(otherwise);
        changed(way.rules()).ifPresent(changes::add);
        String walls = way.rules().walls();
        long ties = way.count(Role.TIE);
        long braces = way.count(Role.BRACE);
        double belowMm = way.scheme().tieBelowRimMm();
        return new Cure(
                changes.isEmpty()
                        ? CureMessage.BRACING.of(walls, ties, belowMm, braces)
                        : CureMessage.CHANGED_BOX.of(changes, walls, ties, belowMm, braces),
                walls,
                way.scheme(),
                way.cost(),
                way.uses().bowMm(),
                way.uses().worst());
    }

    /** What else than the walls is not as requested. */
    private Optional<Message> changed(BuildSpec other) {
        if (other.postFootingMm() != rules.postFootingMm()) {
            return Optional.of(CureMessage.FOOTINGS.of(other.postFootingMm()));
        }
        if (other.corners() != rules.corners()) {
            return Optional.of(CureMessage.LAPPED_CORNERS.of());
        }
        return uprights(other).equals(uprights(rules)) || !other.walls().equals(rules.walls())
                ? Optional.empty()
                : Optional.of(CureMessage.UPRIGHTS.of(uprights(other).name()));
    }
}
