package borderwright.engine.filling;

import borderwright.engine.measure.Gravity;
import borderwright.engine.measure.UnitSystem;
import java.util.Locale;

/** Loads on an area in the unit that an engineer writes. */
public enum AreaLoad {
    KN_PER_M2(Gravity.KN_PER_KG, "%.1f kN/m2"),
    PSF(0.2048161436, "%.0f lb/sq ft");

    private final double perKgPerM2;
    private final String format;

    AreaLoad(double perKgPerM2, String format) {
        this.perKgPerM2 = perKgPerM2;
        this.format = format;
    }

    public static AreaLoad in(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? PSF : KN_PER_M2;
    }

    public double ofKgPerM2(double kgPerM2) {
        return kgPerM2 * perKgPerM2;
    }

    public String words(double load) {
        return String.format(Locale.ROOT, format, load);
    }
}
