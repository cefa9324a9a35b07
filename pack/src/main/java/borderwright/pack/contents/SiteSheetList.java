package borderwright.pack.contents;

import borderwright.engine.plan.Plan;
import borderwright.pack.drawings.BedSection;
import borderwright.pack.drawings.LabelPage;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.LabelSheet;
import borderwright.pack.sheets.LabelSheets;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.site.FillSheet;
import borderwright.pack.sheets.site.GroundSheet;
import borderwright.pack.sheets.site.PlantingSheet;
import borderwright.pack.sheets.site.WallChartSheet;
import borderwright.pack.sheets.site.WorkSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sheets used in the garden, in the order in which a person needs them, and the labels. */
public final class SiteSheetList {
    /** So few planters are kept in the head. */
    private static final int MOST_WITHOUT_CHART = 8;

    /** Room for the heading above the first page of labels. */
    private static final double LABEL_HEADING_MM = 12;

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
        sheets.add(new GroundSheet(plan, BedSection.draw(plan, paper.roomWidthMm(Orientation.PORTRAIT))));
        sheets.add(new FillSheet(plan));
        if (PlantingSheet.hasCrops(plan)) {
            sheets.add(new PlantingSheet(plan));
        }
        return sheets;
    }

    /** Labels to cut out; empty where nothing is built. */
    public static Optional<Sheet> labels(Plan plan, PaperSize paper) {
        if (plan.boxes().isEmpty()) {
            return Optional.empty();
        }
        PrintedFigures f = PrintedFigures.in(plan.garden().units());
        return Optional.of(new LabelSheet(LabelPage.pages(
                LabelSheets.of(plan, f),
                f,
                paper.roomWidthMm(Orientation.PORTRAIT),
                paper.roomHeightMm(Orientation.PORTRAIT) - LABEL_HEADING_MM)));
    }
}
