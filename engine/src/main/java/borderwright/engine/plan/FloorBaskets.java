package borderwright.engine.plan;

import borderwright.engine.effort.Budget;
import borderwright.engine.floors.FloorOption;
import borderwright.engine.garden.Garden;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Whole baskets for false floors: that of the garden as given, and that of the other floor which the cheapest prices favour, planned
 * as a garden of its own: braced to hold with less soil behind its walls, and bought at the least cost.
 *
 * <p>Only one other floor is planned whole: each takes as long as a variant.
 */
public final class FloorBaskets {
    private FloorBaskets() {}

    /**
     * The rows with their baskets.
     *
     * @param garden as planned
     * @param rows by the cheapest prices
     * @param own what the garden as given costs in all; empty without a basket
     * @param unmet of the garden as given
     * @param budget work that the other basket may take
     */
    static List<FloorOption> of(
            Garden garden, List<FloorOption> rows, Optional<Money> own, List<Problem> unmet, Budget budget) {
        Optional<FloorOption> best = rows.stream()
                .filter(row -> !row.asGiven())
                .min(Comparator.comparing(FloorOption::total).thenComparing(FloorOption::heightMm));
        if (best.isEmpty() || rows.stream().noneMatch(FloorOption::asGiven)) {
            return rows;
        }
        Length height = Length.ofMm(best.get().heightMm());
        Garden other = garden.withRuns(
                garden.runs().stream().map(run -> run.withPlatform(height)).toList());
        if (!(Planner.planVariant(other, budget) instanceof PlanAnswer.Planned planned)) {
            return rows;
        }
        Plan plan = planned.plan();
        return rows.stream()
                .map(row -> row.asGiven()
                        ? row.with(own, unmet)
                        : row.equals(best.get())
                                ? row.with(plan.totals().costs().inAll(), plan.shortfalls())
                                : row)
                .toList();
    }
}
