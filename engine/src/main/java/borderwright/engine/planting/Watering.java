package borderwright.engine.planting;

/**
 * Water that a depth of soil holds for a crop, as a stated rule.
 *
 * @param depthMm depth that roots draw from: the soil's, or the crop's smaller rooting depth where that is less, mm
 * @param totalMm water held between field capacity and wilting, mm: one litre for each m2 and mm
 * @param readyMm the part that the crop takes up without stress, mm
 * @param days days that it lasts in warm weather, at 5 mm a day
 */
public record Watering(double depthMm, double totalMm, double readyMm, double days) {
    /** Water held by a loam between field capacity and wilting, m3 in m3 (about the middle of FAO-56 table 19, from memory). */
    private static final double LOAM = 0.15;

    /** What p of table 22 is given for, mm a day. */
    private static final double MM_A_DAY = 5;

    /** In a mixed loam. */
    static Watering of(CropTable crop, double soilMm) {
        double depth = Math.min(soilMm, crop.zrLowMm());
        double total = totalMm(LOAM, depth);
        double ready = crop.p() * total;
        return new Watering(depth, total, ready, ready / MM_A_DAY);
    }

    /** Total available water 1000 (fc - wp) Zr, mm (FAO-56 equation 82), with the depth in mm. */
    static double totalMm(double fieldCapacityLessWilting, double depthMm) {
        return fieldCapacityLessWilting * depthMm;
    }
}
