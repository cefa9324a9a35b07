package borderwright.pack.sheets.site;

import borderwright.engine.filling.BoxWeight;
import borderwright.engine.filling.LinerPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.util.List;

/**
 * What goes into the boxes and onto them.
 *
 * @param plan the plan
 */
public record FillSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Fill sheet";
    }

    @Override
    public Part part() {
        return Part.GARDEN;
    }

    /** Planters that take the same. */
    public List<Alike<SoilVolume>> planters(PrintedFigures f) {
        return Alike.group(
                plan.site().filling().planters(),
                SoilVolume::planter,
                p -> f.length(p.depthMm())
                        + f.lengths().area(p.growingM2())
                        + f.roughVolume(p.filledM3())
                        + f.roughVolume(p.orderedM3()));
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

    /** Strips of the liner that are alike. */
    public List<Alike<LinerPlan.Strip>> strips(PrintedFigures f) {
        return Alike.group(
                plan.site().filling().liner().orElseThrow().strips(),
                LinerPlan.Strip::planter,
                s -> f.length(s.lengthMm()) + f.length(s.widthMm()));
    }
}
