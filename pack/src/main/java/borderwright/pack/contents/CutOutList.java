package borderwright.pack.contents;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.drawings.AngleTemplate;
import borderwright.pack.drawings.LabelPage;
import borderwright.pack.drawings.TemplateAngles;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.AngleSheet;
import borderwright.pack.sheets.LabelSheet;
import borderwright.pack.sheets.LabelSheets;
import borderwright.pack.sheets.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is printed to be cut out: labels, and templates of angles. */
public final class CutOutList {
    /** Room for the heading above the first page of labels. */
    private static final double HEADING_MM = 12;

    private static final double GUTTER_MM = 5;

    private CutOutList() {}

    /** All of them; none where nothing is built. */
    public static List<Sheet> of(Plan plan, PaperSize paper) {
        if (plan.boxes().isEmpty()) {
            return List.of();
        }
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(labels(plan, paper));
        templates(TemplateAngles.of(plan), plan.garden().units(), paper).ifPresent(sheets::add);
        return sheets;
    }

    private static Sheet labels(Plan plan, PaperSize paper) {
        PrintedFigures f = PrintedFigures.in(plan.garden().units());
        return new LabelSheet(LabelPage.pages(
                LabelSheets.of(plan, f),
                f,
                paper.roomWidthMm(Orientation.PORTRAIT),
                paper.roomHeightMm(Orientation.PORTRAIT) - HEADING_MM));
    }

    /** Templates of angles; none where there are none. */
    public static Optional<Sheet> templates(List<TemplateAngles> angles, UnitSystem units, PaperSize paper) {
        double width = paper.roomWidthMm(Orientation.PORTRAIT);
        List<List<Drawing>> rows = new ArrayList<>();
        List<Drawing> row = new ArrayList<>();
        for (TemplateAngles angle : angles) {
            boolean first = rows.isEmpty() && row.isEmpty();
            boolean wide = first || angle.kind() == TemplateAngles.Kind.CORNER;
            AngleTemplate.Bars bars = first ? AngleTemplate.Bars.WITH : AngleTemplate.Bars.WITHOUT;
            row.add(angle.draw(bars, units, wide ? width : width / 3 - GUTTER_MM));
            if (wide || row.size() == 3) {
                rows.add(row);
                row = new ArrayList<>();
            }
        }
        if (!row.isEmpty()) {
            rows.add(row);
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new AngleSheet(rows));
    }
}
