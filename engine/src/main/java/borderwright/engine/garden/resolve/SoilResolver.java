package borderwright.engine.garden.resolve;

import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenSoil;
import borderwright.engine.garden.given.GivenStrength;
import borderwright.engine.measure.Gravity;
import borderwright.engine.measure.Length;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The soil: one moist and one soaked weight for strength, filling and roof alike.
 *
 * <p>The soaked weight is the one given, under {@code strength.soaked soil} or {@code filling.soaked kg per m3}, or the
 * default here, or the moist weight where that is heavier. The
 * ledger keeps which. What it presses with is {@code wettest} of {@code strength.soil.Fill}.
 */
public final class SoilResolver {
    /** Topsoil with compost. */
    private static final double MOIST_KN_PER_M3 = 16;

    /** In the middle of 18 to 20, which is usual for saturated soil. */
    private static final double SOAKED_KN_PER_M3 = 19;

    private static final String SOAKED_SOURCE = "18 to 20 kN/m3 is usual for saturated soil (" + Ledger.PRACTICE + ")";

    private SoilResolver() {}

    /** Soil of which nothing is given. */
    public static SoilSpec usual() {
        return resolve(null, null, null, Ledger.empty());
    }

    /** Soil of which nothing is given but how far it settles, in percent. */
    public static SoilSpec settling(double percent) {
        return resolve(new GivenSoil(percent, null, null), null, null, Ledger.empty());
    }

    static SoilSpec resolve(
            @Nullable GivenSoil given,
            @Nullable GivenStrength strength,
            @Nullable GivenFilling filling,
            Ledger ledger) {
        Ledger soil = ledger.in("soil", given);
        double soaked = soaked(strength, filling, ledger);
        return new SoilSpec(
                soil.or("settles percent", given == null ? null : given.settlesPercent(), 15.0, Ledger.PRACTICE) / 100,
                soil.or("below rim", given == null ? null : given.belowRim(), Length.ofMm(30), Ledger.PRACTICE)
                        .mm(),
                Optional.ofNullable(given).map(GivenSoil::perCubicMetre),
                moist(strength, soaked, ledger),
                soaked);
    }

    /** Set by {@code strength.soaked soil} or by {@code filling.soaked kg per m3}, whichever is given. */
    private static double soaked(@Nullable GivenStrength strength, @Nullable GivenFilling filling, Ledger ledger) {
        Double soaked = strength == null ? null : strength.soakedSoil();
        Double wet = filling == null ? null : filling.soakedKgPerM3();
        if (soaked != null) {
            ledger.given("filling.soaked kg per m3", tenth(soaked / Gravity.KN_PER_KG), "by `strength.soaked soil`");
            return ledger.given("strength.soaked soil", soaked, "");
        }
        if (wet != null) {
            ledger.given("filling.soaked kg per m3", wet, "");
            ledger.given("strength.soaked soil", tenth(wet * Gravity.KN_PER_KG), "by `filling.soaked kg per m3`");
            return wet * Gravity.KN_PER_KG;
        }
        Double moist = strength == null ? null : strength.moistSoil();
        double taken = moist == null ? SOAKED_KN_PER_M3 : Math.max(moist, SOAKED_KN_PER_M3);
        String source = taken > SOAKED_KN_PER_M3 ? "as heavy as the moist soil given" : SOAKED_SOURCE;
        ledger.byDefault("filling.soaked kg per m3", tenth(taken / Gravity.KN_PER_KG), source);
        return ledger.byDefault("strength.soaked soil", taken, source);
    }

    /** A converted weight as it is written down beside the given one; the calculation keeps all of it. */
    private static double tenth(double weight) {
        return Math.round(weight * 10) / 10.0;
    }

    private static double moist(@Nullable GivenStrength strength, double soaked, Ledger ledger) {
        Double moist = strength == null ? null : strength.moistSoil();
        if (moist != null) {
            return ledger.given("strength.moist soil", Math.min(moist, soaked), "");
        }
        return soaked < MOIST_KN_PER_M3
                ? ledger.byDefault("strength.moist soil", soaked, "no heavier than soaked")
                : ledger.byDefault("strength.moist soil", MOIST_KN_PER_M3, Ledger.PRACTICE);
    }
}
