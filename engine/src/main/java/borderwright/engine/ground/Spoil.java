package borderwright.engine.ground;

import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.vocabulary.ground.DugSoil;
import java.util.OptionalDouble;

/**
 * What the ground gives up, and how it is moved.
 *
 * @param turfM3 turf stripped, m3 as it lies
 * @param dugM3 earth dug, m3 in place
 * @param looseM3 the same earth loose, m3: its volume in place times its swell
 * @param swell loose volume over volume in place
 * @param kg weight of turf and earth, kg
 * @param barrows barrow loads for turf and loose earth
 * @param skips skips for them; 0 where spoil stays in the garden
 */
public record Spoil(double turfM3, double dugM3, double looseM3, double swell, double kg, int barrows, int skips) {
    /** Density of turf, kg/m3 (appendix with DOI 10.1201/b12981-45). */
    private static final double TURF_KG_PER_M3 = 400;

    private static final double LITRES_PER_M3 = 1000;

    static Spoil of(double turfM3, double dugM3, GroundSpec spec) {
        double swell = swell(spec.kind());
        double loose = dugM3 * swell;
        double moved = turfM3 + loose;
        OptionalDouble skip = spec.dig().skipM3();
        return new Spoil(
                turfM3,
                dugM3,
                loose,
                swell,
                turfM3 * TURF_KG_PER_M3 + loose * looseKgPerM3(spec.kind()),
                loads(moved * LITRES_PER_M3, spec.dig().barrowLitres()),
                skip.isEmpty() ? 0 : loads(moved, skip.getAsDouble()));
    }

    /** All that is moved, loose, m3. */
    public double movedM3() {
        return turfM3 + looseM3;
    }

    /** Loose volume of 1.00 in place (US military soil conversion table; see the package page). */
    public static double swell(DugSoil soil) {
        return switch (soil) {
            case SAND -> 1.11;
            case EARTH -> 1.25;
            case CLAY -> 1.43;
        };
    }

    /** Density as dug and moist or wet, kg/m3: wet sand, moist earth, wet clay (DOI 10.1201/b12981-45). */
    public static double looseKgPerM3(DugSoil soil) {
        return switch (soil) {
            case SAND -> 1831;
            case EARTH -> 1442;
            case CLAY -> 1602;
        };
    }

    private static int loads(double amount, double each) {
        return (int) Math.ceil(amount / each - 1e-9);
    }
}
