package borderwright.engine.planting;

import borderwright.engine.garden.vocabulary.Crop;
import borderwright.engine.message.Message;

/**
 * A crop in one depth of soil.
 *
 * @param crop the crop
 * @param table its row in the table
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

    /** The crop's name. */
    public Message name() {
        return PlantingMessage.CROP_NAME.of(crop);
    }

    /** Whether roots have room, in words. */
    public Message inWords() {
        return PlantingMessage.CROP_FIT.of(verdict);
    }

    static CropFit of(Crop crop, double soilMm) {
        CropTable table = CropTable.of(crop);
        Verdict verdict = soilMm >= table.zrLowMm()
                ? Verdict.ROOMY
                : soilMm >= table.leastMm() ? Verdict.ENOUGH : Verdict.TOO_SHALLOW;
        return new CropFit(crop, table, soilMm, verdict, Watering.of(table, soilMm));
    }
}
