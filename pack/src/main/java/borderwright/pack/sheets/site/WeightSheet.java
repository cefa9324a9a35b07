package borderwright.pack.sheets.site;

import borderwright.engine.filling.BoxWeight;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.util.List;

/**
 * What the boxes weigh, empty and filled.
 *
 * @param plan the plan
 */
public record WeightSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Weights";
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }

    /** What a filled, soaked box lays on the ground under it, to 10 kg/m2 or a pound a square foot. */
    public String load(BoxWeight weight, PrintedFigures f) {
        return f.units() == UnitSystem.IMPERIAL
                ? f.decimal(weight.kgPerM2() * UnitFactors.M2_PER_SQUARE_FOOT / UnitFactors.KG_PER_POUND, 0)
                        + " lb/sq ft"
                : f.decimal(weight.kgPerM2() / 10, 0) + "0 kg/m2";
    }

    /** Boxes that weigh the same. */
    public List<Alike<BoxWeight>> weights(PrintedFigures f) {
        return Alike.group(
                plan.site().filling().weights(),
                BoxWeight::box,
                w -> f.lengths().weight(w.woodKg())
                        + f.roughWeight(w.filledKg())
                        + w.carriers()
                        + f.lengths().weight(w.heaviestKg()));
    }
}
