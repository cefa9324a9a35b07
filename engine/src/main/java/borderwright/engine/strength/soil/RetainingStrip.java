package borderwright.engine.strength.soil;

import borderwright.engine.strength.worked.Working;

/**
 * One metre of a filled planter that holds back ground, taken as a rigid block.
 *
 * @param weightKnPerM of wood and fill
 * @param weightArmM from the front edge of its base to the line of its weight
 * @param baseM width of its base
 * @param push of the ground behind
 * @param sliding coefficient of friction under the base
 * @param bearingKnPerM2 what the ground bears
 */
public record RetainingStrip(
        double weightKnPerM, double weightArmM, double baseM, Thrust push, double sliding, double bearingKnPerM2) {
    /** Factors wanted against sliding and tipping (common practice, IBC 2012 1807.2.3). */
    public static final double WANTED = 1.5;

    /** Push over what friction holds with the wanted factor. */
    public double slidingUse(Working working) {
        double factor = push.knPerM() == 0
                ? Double.POSITIVE_INFINITY
                : working.step("FS slide", "mu W / P", sliding * weightKnPerM / push.knPerM(), "", "IBC 2012 1807.2.3");
        return WANTED / factor;
    }

    /** Tipping moment over what the weight holds with the wanted factor. */
    public double tippingUse(Working working) {
        double factor = push.momentKnm() == 0
                ? Double.POSITIVE_INFINITY
                : working.step(
                        "FS tip",
                        "W x arm / (P x height)",
                        weightKnPerM * weightArmM / push.momentKnm(),
                        "",
                        "1807.2.3");
        return WANTED / factor;
    }

    /** Greatest pressure under the base, kN/m2; infinite where the weight falls outside it. */
    public double pressureKnPerM2() {
        double fromFront = weightArmM - push.momentKnm() / weightKnPerM;
        double eccentricity = Math.abs(baseM / 2 - fromFront);
        if (eccentricity <= baseM / 6) {
            return weightKnPerM / baseM * (1 + 6 * eccentricity / baseM);
        }
        double edge = baseM / 2 - eccentricity;
        return edge <= 0 ? Double.POSITIVE_INFINITY : 2 * weightKnPerM / (3 * edge);
    }

    /** Greatest pressure over what the ground bears. */
    public double bearingUse(Working working) {
        double pressure = working.step("q", SoilStep.BASE_PRESSURE, pressureKnPerM2(), "kN/m2", "");
        working.step("q bears", SoilStep.PRESUMPTIVE, bearingKnPerM2, "kN/m2", "IBC 2012 table 1806.2");
        return bearingKnPerM2 > 0 ? pressure / bearingKnPerM2 : Double.POSITIVE_INFINITY;
    }
}
