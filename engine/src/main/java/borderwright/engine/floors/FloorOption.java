package borderwright.engine.floors;

import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * All boxes with a false floor of one height.
 *
 * @param heightMm height of the floor above the bed, mm; 0 for none
 * @param asGiven whether every box is given just this floor
 * @param soilDepthMm least depth of soil over it, mm
 * @param orderedM3 filling to order, m3
 * @param filling its cost at the cheapest price in the lists
 * @param floorMetres boards in slats, bearers and legs, m
 * @param floor their cost at the cheapest price for each metre, offcuts not counted
 * @param soakedKg weight of the soaked filling, kg
 * @param basket least cost of all there is to buy for the garden built so, braced to hold, as far as it was searched for
 * @param unmet what then does not hold or cannot be met, as far as it was searched for
 */
public record FloorOption(
        double heightMm,
        boolean asGiven,
        double soilDepthMm,
        double orderedM3,
        Money filling,
        double floorMetres,
        Money floor,
        double soakedKg,
        Optional<Money> basket,
        List<Problem> unmet) {
    public FloorOption {
        unmet = List.copyOf(unmet);
    }

    /** The same with the whole garden's basket. */
    public FloorOption with(Optional<Money> cost, List<Problem> problems) {
        return new Builder(heightMm, asGiven)
                .soil(soilDepthMm, orderedM3, soakedKg)
                .costs(filling, floorMetres, floor)
                .basket(cost, problems)
                .build();
    }

    /** What does not hold or cannot be met with one floor and does so with the floor as given. */
    public static List<Problem> newShortfalls(FloorOption option, List<FloorOption> all) {
        List<Problem> already = all.stream()
                .filter(FloorOption::asGiven)
                .flatMap(own -> own.unmet().stream())
                .toList();
        return option.unmet().stream().filter(s -> !already.contains(s)).toList();
    }

    public Money total() {
        return filling.plus(floor);
    }

    /** A floor, set part by part; the basket is left out until it is searched for. */
    static final class Builder {
        private final double heightMm;
        private final boolean asGiven;
        private double soilDepthMm;
        private double orderedM3;
        private double soakedKg;
        private @Nullable Money filling;
        private double floorMetres;
        private @Nullable Money floor;
        private Optional<Money> basket = Optional.empty();
        private List<Problem> unmet = List.of();

        Builder(double heightMm, boolean asGiven) {
            this.heightMm = heightMm;
            this.asGiven = asGiven;
        }

        Builder soil(double depthMm, double looseM3, double kgSoaked) {
            soilDepthMm = depthMm;
            orderedM3 = looseM3;
            soakedKg = kgSoaked;
            return this;
        }

        /** Cost of the filling, and metres and cost of the floor. */
        Builder costs(Money ofFilling, double metres, Money ofFloor) {
            filling = ofFilling;
            floorMetres = metres;
            floor = ofFloor;
            return this;
        }

        Builder basket(Optional<Money> cost, List<Problem> problems) {
            basket = cost;
            unmet = problems;
            return this;
        }

        FloorOption build() {
            if (filling == null || floor == null) {
                throw new IllegalStateException("a floor needs the costs of its filling and of itself");
            }
            return new FloorOption(
                    heightMm, asGiven, soilDepthMm, orderedM3, filling, floorMetres, floor, soakedKg, basket, unmet);
        }
    }
}
