package borderwright.engine.filling;

import borderwright.engine.measure.UnitSystem;
import java.util.Locale;

/** Loads on a roof in the unit that its engineer writes. */
enum RoofLoad {
    KN_PER_M2(9.80665e-3, "%.1f kN/m2"),
    PSF(0.2048161436, "%.0f lb/sq ft");

    private final double perKgPerM2;
    private final String format;

    RoofLoad(double perKgPerM2, String format) {
        this.perKgPerM2 = perKgPerM2;
        this.format = format;
    }

    static RoofLoad in(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? PSF : KN_PER_M2;
    }

    double ofKgPerM2(double kgPerM2) {
        return kgPerM2 * perKgPerM2;
    }

    String words(double load) {
        return String.format(Locale.ROOT, format, load);
    }
}
