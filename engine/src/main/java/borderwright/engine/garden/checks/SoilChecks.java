package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenStrength;
import borderwright.engine.measure.Gravity;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
            found.add(new Problem(
                    "soaked-weight",
                    "filling.soaked kg per m3",
                    String.format(
                            Locale.ROOT,
                            "The soaked soil weighs %.1f kN/m3 here and %.1f kN/m3 in `strength.soaked soil`.",
                            wet,
                            soaked),
                    "Keep one of them: it holds for strength, filling and roof."));
        }
        Double heaviest = soaked != null ? soaked : wet;
        if (moist != null && heaviest != null && moist > heaviest + SAME_KN_PER_M3) {
            found.add(new Problem(
                    "moist-weight",
                    "strength.moist soil",
                    String.format(
                            Locale.ROOT,
                            "The moist soil weighs %.1f kN/m3, more than the %.1f kN/m3 of the soaked.",
                            moist,
                            heaviest),
                    "Soil is no lighter when soaked: correct one of them."));
        }
        return found;
    }

    private static @Nullable Double wetKnPerM3(@Nullable GivenFilling filling) {
        return filling == null || filling.soakedKgPerM3() == null ? null : filling.soakedKgPerM3() * Gravity.KN_PER_KG;
    }
}
