package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenStrength;
import borderwright.engine.measure.Gravity;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The weight of the soil: is it given once, and no lighter soaked than moist? */
final class SoilChecks {
    /** Two weights that differ by less are one weight, rounded. */
    private static final double SAME_KN_PER_M3 = 0.05;

    private SoilChecks() {}

    static List<Problem> check(GivenGarden garden) {
        List<Problem> found = new ArrayList<>();
        GivenStrength strength = garden.strength();
        Double soaked = strength == null ? null : strength.soakedSoil();
        Double moist = strength == null ? null : strength.moistSoil();
        Double wet = wetKnPerM3(garden.filling());
        if (soaked != null && wet != null && Math.abs(soaked - wet) > SAME_KN_PER_M3) {
            found.add(new Problem("filling.soaked kg per m3", GardenMessage.SOAKED_WEIGHT_TWICE.of(wet, soaked)));
        }
        Double heaviest = soaked != null ? soaked : wet;
        if (moist != null && heaviest != null && moist > heaviest + SAME_KN_PER_M3) {
            found.add(new Problem("strength.moist soil", GardenMessage.MOIST_HEAVIER_THAN_SOAKED.of(moist, heaviest)));
        }
        return found;
    }

    private static @Nullable Double wetKnPerM3(@Nullable GivenFilling filling) {
        return filling == null || filling.soakedKgPerM3() == null ? null : filling.soakedKgPerM3() * Gravity.KN_PER_KG;
    }
}
