package borderwright.pack.sheets.site;

import borderwright.engine.filling.LinerPlan;
import borderwright.engine.filling.SoilVolume;
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

    /** Strips of the liner that are alike. */
    public List<Alike<LinerPlan.Strip>> strips(PrintedFigures f) {
        return Alike.group(
                plan.site().filling().liner().orElseThrow().strips(),
                LinerPlan.Strip::planter,
                s -> f.length(s.lengthMm()) + f.length(s.widthMm()));
    }
}
