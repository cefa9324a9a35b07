package borderwright.engine.strength.bracing;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.PartSections;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.Uses;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Searches for the cheapest bracing of one box that holds.
 *
 * <p><b>Method.</b> Ways are built up class by class (no ties, one in the longest bay, two, ...), priced, and looked into
 * from the cheapest on; whatever costs no less than the best found so far is passed over. Of the first that holds in a class,
 * braces are then taken away side by side as long as it still holds and costs less. The search ends with a class whose
 * cheapest way costs no less than the best: classes of more ties cost more. So the answer is the cheapest of all ways tried,
 * and those passed over are no cheaper.
 *
 * <p>It is bounded by work, not by time: by the multiplications of the solver and the pairs of pieces built up. Where that is
 * spent the best found so far stands, and is not called the cheapest.
 *
 * <p>See docs/decisions/0041 and docs/decisions/0075.
 */
final class BracingSearch {
    /** Of the solver's inner loop, what building a box up takes for each pair of its pieces (measured). */
    private static final long PASSES_A_PAIR = 100;

    private final BuildMeans means;
    private final StrengthTerms terms;
    private final ToDoubleFunction<Box> cost;
    private final Looks looks;
    private final Budget budget;
    private int tried;
    private @Nullable Found nearest;

    /**
     * A search with work of its own.
     *
     * @param cost of a built-up box
     * @param looks hears of each way that is looked into
     * @param budget for all that is asked of this search
     */
    BracingSearch(BuildMeans means, StrengthTerms terms, ToDoubleFunction<Box> cost, Looks looks, Budget budget) {
        this.means = means;
        this.terms = terms;
        this.cost = cost;
        this.looks = looks;
        this.budget = budget;
    }

    /** A way with the box that it gives. */
    private record Way(BracingScheme scheme, Box box, double cost) {}

    /**
     * A way that was looked into.
     *
     * @param rules that it follows
     * @param scheme how closely it is braced
     * @param box built up
     * @param cost of it
     * @param uses how it stands
     */
    record Found(BuildSpec rules, BracingScheme scheme, Box box, double cost, Uses uses) {
        boolean holds() {
            return uses.worst() <= 1;
        }

        long count(Role role) {
            return box.pieces().stream().filter(p -> p.role() == role).count();
        }
    }

    /** How many ways were looked into. */
    int tried() {
        return tried;
    }

    /** Whether the work ran out: what was found may then not be the cheapest. */
    SearchEnd end() {
        return budget.isSpent() ? SearchEnd.CUT_SHORT : SearchEnd.WHOLE;
    }

    /** Of all ways looked into, the one whose worst figure is least; nothing where the box cannot be built. */
    Optional<Found> nearest() {
        return Optional.ofNullable(nearest);
    }

    /**
     * The cheapest that holds.
     *
     * @param spacing whether spacings that the rules give are kept
     * @param mostCost ways that cost this or more are passed over
     */
    Optional<Found> cheapest(FootprintPlan footprint, BuildSpec rules, SpacingChoice spacing, double mostCost) {
        SectionSpec tie = PartSections.of(rules, means).ties();
        Box first = built(footprint, rules, Bracings.BARE);
        if (first.pieces().isEmpty()) {
            return Optional.empty();
        }
        double wallMm = first.courses().get(first.courses().size() - 1).topMm()
                - first.courses().get(0).bottomMm();
        Bracings bracings = new Bracings(
                footprint,
                wallMm,
                tie.width().mm(),
                rules.isFooted(),
                spacing == SpacingChoice.AS_GIVEN ? Optional.of(rules) : Optional.empty());
        @Nullable Found best = null;
        for (int ties = 0; ties < bracings.classes(); ties++) {
            double bestCost = best == null ? mostCost : best.cost;
            List<Way> ways = ways(footprint, rules, bracings.of(ties));
            if (budget.isSpent() || ways.get(0).cost >= bestCost) {
                break;
            }
            Optional<Found> found = firstThatHolds(rules, ways, bestCost);
            if (found.isPresent()) {
                best = bracings.keepsBraces() ? found.get() : withFewerBraces(footprint, found.get());
            }
        }
        return Optional.ofNullable(best);
    }

    private Box built(FootprintPlan footprint, BuildSpec rules, BracingScheme scheme) {
        Box box = BoxBuilder.build(footprint, rules, means, scheme);
        long pieces = box.pieces().size();
        budget.spend(PASSES_A_PAIR * pieces * pieces);
        return box;
    }

    private List<Way> ways(FootprintPlan footprint, BuildSpec rules, List<BracingScheme> schemes) {
        List<Way> ways = new ArrayList<>();
        for (BracingScheme scheme : schemes) {
            if (budget.isSpent()) {
                break;
            }
            Box box = built(footprint, rules, scheme);
            ways.add(new Way(scheme, box, cost.applyAsDouble(box)));
        }
        ways.sort(Comparator.comparingDouble(Way::cost));
        return ways;
    }

    private Optional<Found> firstThatHolds(BuildSpec rules, List<Way> ways, double bestCost) {
        for (Way way : ways) {
            if (way.cost >= bestCost || budget.isSpent()) {
                return Optional.empty();
            }
            Found found = look(rules, way);
            if (found.holds()) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private Found look(BuildSpec rules, Way way) {
        tried++;
        looks.next();
        Found found = new Found(rules, way.scheme, way.box, way.cost, BoxStrength.uses(way.box, terms, budget));
        if (nearest == null || found.uses.worst() < nearest.uses.worst()) {
            nearest = found;
        }
        return found;
    }

    private Found withFewerBraces(FootprintPlan footprint, Found held) {
        Found best = held;
        for (int side = 0; side < footprint.outline().size(); side++) {
            if (budget.isSpent()
                    || best.scheme.braceSpacingMm() >= footprint.outline().sideMm(side)) {
                continue;
            }
            BracingScheme fewer = best.scheme.withoutBraces(side);
            Box box = built(footprint, best.rules, fewer);
            double less = cost.applyAsDouble(box);
            if (less < best.cost) {
                Found found = look(best.rules, new Way(fewer, box, less));
                best = found.holds() ? found : best;
            }
        }
        return best;
    }
}
