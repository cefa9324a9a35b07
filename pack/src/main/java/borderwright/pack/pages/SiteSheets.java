package borderwright.pack.pages;

import borderwright.engine.buildup.Box;
import borderwright.engine.plan.PegList;
import borderwright.engine.plan.Plan;
import borderwright.pack.PaperSize;
import borderwright.pack.drawings.BedSection;
import borderwright.pack.drawings.LabelPage;
import java.util.ArrayList;
import java.util.List;

/** The sheets of the site, in the order in which a person needs them. */
final class SiteSheets {
    private SiteSheets() {}

    /**
     * All of them.
     *
     * @param tapeMm the tape that pegs are set with, as for the peg list
     */
    static List<Sheet> of(Plan plan, PaperSize paper, double tapeMm) {
        if (plan.boxes().isEmpty()) {
            return List.of();
        }
        Figures f = Figures.in(plan.garden().unitsOrMetric());
        PegList pegs = PegList.of(
                plan.survey(),
                plan.outline(),
                plan.boxes().stream().map(Box::plan).toList(),
                tapeMm);
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(new SiteSheet.WorkSheet(plan));
        sheets.add(new SiteSheet.WallChart(plan));
        sheets.add(new SiteSheet.GroundSheet(plan, pegs, BedSection.draw(plan, paper.roomWidthMm(false))));
        sheets.add(new SiteSheet.FillSheet(plan));
        sheets.add(new SiteSheet.PlantingSheet(plan));
        sheets.add(new SiteSheet.CautionSheet(Cautions.of(plan, f)));
        sheets.add(new SiteSheet.LabelSheet(
                LabelPage.pages(Labels.of(plan, f), paper.roomWidthMm(false), paper.roomHeightMm(false) - 2)));
        return sheets;
    }
}
