package borderwright.pack.contents;

import borderwright.engine.plan.Plan;
import borderwright.pack.drawings.BedSection;
import borderwright.pack.drawings.FeetDrawing;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.site.FillSheet;
import borderwright.pack.sheets.site.GroundSheet;
import borderwright.pack.sheets.site.PlantingSheet;
import borderwright.pack.sheets.site.WallChartSheet;
import borderwright.pack.sheets.site.WorkSheet;
import java.util.ArrayList;
import java.util.List;

/** The sheets used in the garden, in the order in which a person needs them. */
final class SiteSheetList {
    /** So few planters are kept in the head. */
    private static final int MOST_WITHOUT_CHART = 8;

    private static final double GUTTER_MM = 2;

    private SiteSheetList() {}

    /** All of them. */
    static List<Sheet> of(Plan plan, PaperSize paper) {
        if (plan.boxes().isEmpty()) {
            return List.of();
        }
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(new WorkSheet(plan));
        if (plan.totals().planters() > MOST_WITHOUT_CHART) {
            sheets.add(new WallChartSheet(plan));
        }
        sheets.add(ground(plan, paper.roomWidthMm(Orientation.PORTRAIT)));
        sheets.add(new FillSheet(plan));
        if (PlantingSheet.hasCrops(plan)) {
            sheets.add(new PlantingSheet(plan));
        }
        return sheets;
    }

    private static Sheet ground(Plan plan, double widthMm) {
        return new GroundSheet(
                plan,
                plan.garden().ground().surface().isHard()
                        ? FeetDrawing.draw(plan, PrintedFigures.in(plan.garden().units()), widthMm)
                        : BedSection.draw(plan, widthMm / 2 - GUTTER_MM));
    }
}
