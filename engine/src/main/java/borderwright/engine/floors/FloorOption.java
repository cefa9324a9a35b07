package borderwright.engine.floors;

import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * All boxes with a false floor of one height.
 *
 * @param heightMm height of the floor above the bed, mm; 0 for none
 * @param asWished whether every box is wished with just this floor
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
        boolean asWished,
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
    public FloorOption with(Money cost, List<Problem> problems) {
        return new FloorOption(
                heightMm,
                asWished,
                soilDepthMm,
                orderedM3,
                filling,
                floorMetres,
                floor,
                soakedKg,
                Optional.of(cost),
                problems);
    }

    public Money total() {
        return filling.plus(floor);
    }
}
