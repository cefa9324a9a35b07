package borderwright.engine.filling;

import borderwright.engine.measure.Gravity;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;

/** Loads on an area in the unit that an engineer writes. */
public enum AreaLoad {
    KN_PER_M2(Gravity.KN_PER_KG),
    PSF(UnitFactors.M2_PER_SQUARE_FOOT / UnitFactors.KG_PER_POUND);

    private final double perKgPerM2;

    AreaLoad(double perKgPerM2) {
        this.perKgPerM2 = perKgPerM2;
    }

    public static AreaLoad in(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? PSF : KN_PER_M2;
    }

    /** A load given in this unit, kg/m2. */
    public double toKgPerM2(double load) {
        return load / perKgPerM2;
    }
}
