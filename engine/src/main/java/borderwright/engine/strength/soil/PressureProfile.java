package borderwright.engine.strength.soil;

/**
 * Soil, water and surcharge against one face of a wall, by depth below the top of the fill. {@link Fill} makes those of moist
 * and of wet soil.
 *
 * @param coefficient horizontal over vertical pressure of the soil
 * @param aboveWaterKnPerM3 unit weight above the water
 * @param saturatedKnPerM3 unit weight below it, water in
 * @param waterDepthM depth of standing water below the top of the fill; infinite for none
 * @param waterOtherSideM depth of water on the wall's other face, measured from the same top; infinite for none
 * @param surchargeKnPerM2 load on top of the fill
 * @param waterKnPerM3 unit weight of water
 */
public record PressureProfile(
        double coefficient,
        double aboveWaterKnPerM3,
        double saturatedKnPerM3,
        double waterDepthM,
        double waterOtherSideM,
        double surchargeKnPerM2,
        double waterKnPerM3) {

    /** Drained fill. */
    public static PressureProfile drained(double coefficient, double unitWeightKnPerM3, double surchargeKnPerM2) {
        return new PressureProfile(
                coefficient,
                unitWeightKnPerM3,
                unitWeightKnPerM3,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                surchargeKnPerM2,
                Fill.WATER_KN_PER_M3);
    }

    /** Pressure of grains, kN/m2. */
    public double effective(double depthM) {
        double dry = Math.min(depthM, waterDepthM);
        double wet = Math.max(0, depthM - waterDepthM);
        return coefficient * (surchargeKnPerM2 + aboveWaterKnPerM3 * dry + (saturatedKnPerM3 - waterKnPerM3) * wet);
    }

    /** Pressure of water less that on the other face, kN/m2. */
    public double water(double depthM) {
        return waterKnPerM3 * (Math.max(0, depthM - waterDepthM) - Math.max(0, depthM - waterOtherSideM));
    }

    /** All of it, kN/m2. */
    public double total(double depthM) {
        return effective(depthM) + water(depthM);
    }

    /** Sum from the top to a depth: kN per metre of wall, and where it acts. */
    public Thrust thrust(double depthM) {
        Thrust sum = new Thrust(0, 0);
        double from = 0;
        for (double to :
                new double[] {Math.min(waterDepthM, waterOtherSideM), Math.max(waterDepthM, waterOtherSideM), depthM}) {
            double end = Math.min(to, depthM);
            if (end > from) {
                sum = sum.plus(
                        Thrust.ofTrapezium(total(from), total(end), end - from).raisedBy(depthM - end));
                from = end;
            }
        }
        return sum;
    }
}
