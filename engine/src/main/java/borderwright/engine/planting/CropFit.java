package borderwright.engine.planting;

import borderwright.engine.garden.vocabulary.Crop;

/**
 * A crop in one depth of soil.
 *
 * @param crop the crop
 * @param table what the table says of it
 * @param soilMm depth of soil, mm
 * @param verdict whether roots have room
 * @param watering how long a watering lasts
 */
public record CropFit(Crop crop, CropTable table, double soilMm, Verdict verdict, Watering watering) {
    /** Whether roots have room. */
    public enum Verdict {
        /** The depth reaches the crop's smaller rooting depth in open ground. */
        ROOMY,
        /** The depth reaches the least for a box: it grows, watered often. */
        ENOUGH,
        /** Less than the least for a box. */
        TOO_SHALLOW
    }

    static CropFit of(Crop crop, double soilMm) {
        CropTable table = CropTable.of(crop);
        Verdict verdict = soilMm >= table.zrLowMm()
                ? Verdict.ROOMY
                : soilMm >= table.leastMm() ? Verdict.ENOUGH : Verdict.TOO_SHALLOW;
        return new CropFit(crop, table, soilMm, verdict, Watering.of(table, soilMm));
    }
}
