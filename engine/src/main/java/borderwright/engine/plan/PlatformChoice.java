package borderwright.engine.plan;

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
 */
public record PlatformChoice(
        double heightMm,
        boolean asWished,
        double soilDepthMm,
        double orderedM3,
        Money filling,
        double floorMetres,
        Money floor,
        double soakedKg) {
    public Money total() {
        return filling.plus(floor);
    }
}
