package borderwright.pack.sheets.site;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.CropFit;
import borderwright.engine.planting.PlantingPlan;
import borderwright.engine.planting.RimHeight;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/**
 * What can grow where.
 *
 * @param plan the plan
 */
public record PlantingSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Planting sheet";
    }

    @Override
    public Part part() {
        return hasCrops(plan) ? Part.GARDEN : Part.WORKING;
    }

    /** Whether crops are given; without any the sheet is no help in the garden. */
    public static boolean hasCrops(Plan plan) {
        return plan.site().planting().depths().stream()
                .anyMatch(depth -> !depth.crops().isEmpty());
    }

    public String names(PlantingPlan.Depth depth) {
        return Alike.inShort(depth.planters());
    }

    public String month(int month) {
        return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** A watering in litres for each square metre; with imperial units as a depth of rain. */
    public String water(CropFit fit, PrintedFigures f) {
        return f.units() == UnitSystem.IMPERIAL
                ? f.length(fit.watering().readyMm()) + " of rain"
                : f.decimal(fit.watering().readyMm(), 0) + " litres/m2";
    }

    /** Planters with the same hours of sun. */
    public List<Alike<PlantingPlan.Sun>> sun(PrintedFigures f) {
        return Alike.group(plan.site().planting().sun(), PlantingPlan.Sun::planter, s -> {
            StringBuilder out = new StringBuilder(f.decimal(s.meanHours(), 1));
            s.months().forEach(m -> out.append('|').append(f.decimal(m.hours(), 1)));
            return out.toString();
        });
    }

    /** Boxes with the same rim. */
    public List<Alike<RimHeight>> rims(PrintedFigures f) {
        return Alike.group(
                plan.site().planting().rims(),
                r -> r.boxes().get(0),
                r -> f.text(r.rim().inWords()) + r.suits());
    }
}
