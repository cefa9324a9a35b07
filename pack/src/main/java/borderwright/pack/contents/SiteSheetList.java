package borderwright.pack.contents;

import borderwright.engine.plan.Plan;
import borderwright.pack.drawings.BedSection;
import borderwright.pack.drawings.LabelPage;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.CautionSheet;
import borderwright.pack.sheets.FillSheet;
import borderwright.pack.sheets.GroundSheet;
import borderwright.pack.sheets.LabelSheet;
import borderwright.pack.sheets.LabelSheets;
import borderwright.pack.sheets.PlantingSheet;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.WallChartSheet;
import borderwright.pack.sheets.WorkSheet;
import java.util.ArrayList;
import java.util.List;

/** The sheets of the site, in the order in which a person needs them. */
final class SiteSheetList {
    private SiteSheetList() {}

    /** All of them. */
    static List<Sheet> of(Plan plan, PaperSize paper) {
        if (plan.boxes().isEmpty()) {
            return List.of();
        }
        PrintedFigures f = PrintedFigures.in(plan.garden().units());
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(new WorkSheet(plan));
        sheets.add(new WallChartSheet(plan));
        sheets.add(new GroundSheet(plan, BedSection.draw(plan, paper.roomWidthMm(Orientation.PORTRAIT))));
        sheets.add(new FillSheet(plan));
        sheets.add(new PlantingSheet(plan));
        sheets.add(new CautionSheet(plan.site().cautions().stages()));
        sheets.add(new LabelSheet(LabelPage.pages(
                LabelSheets.of(plan, f),
                f,
                paper.roomWidthMm(Orientation.PORTRAIT),
                paper.roomHeightMm(Orientation.PORTRAIT) - 2)));
        return sheets;
    }
}
