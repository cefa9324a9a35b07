package borderwright.engine.garden;

import borderwright.engine.measure.Gravity;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the planters are filled with.
 *
 * @param settlement share of what is put in by which it sinks, as a fraction below 1
 * @param belowRimMm how far it stays below the rim
 * @param perCubicMetre its price where no supplier's price is given; nothing where none is known
 * @param moistKnPerM3 unit weight as it lies, no more than soaked
 * @param soakedKnPerM3 unit weight with its pores full of water
 */
public record SoilSpec(
        double settlement,
        double belowRimMm,
        Optional<BigDecimal> perCubicMetre,
        double moistKnPerM3,
        double soakedKnPerM3) {
    public SoilSpec {
        if (!(moistKnPerM3 > 0 && moistKnPerM3 <= soakedKnPerM3)) {
            throw new IllegalArgumentException("soil weighs more than 0 and no less soaked than moist, got "
                    + moistKnPerM3 + " and " + soakedKnPerM3 + " kN/m3");
        }
    }

    /** What is put in loose so that so much is left once it has settled: {@code V / (1 - s)}. */
    public double loose(double settledM3) {
        return settledM3 / (1 - settlement);
    }

    /** Density when soaked. */
    public double soakedKgPerM3() {
        return soakedKnPerM3 / Gravity.KN_PER_KG;
    }
}
