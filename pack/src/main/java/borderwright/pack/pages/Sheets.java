package borderwright.pack.pages;

import borderwright.engine.buildup.Box;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.PaperSize;
import borderwright.pack.VariantTable;
import borderwright.pack.drawings.BoardDrawing;
import borderwright.pack.drawings.CourseDrawing;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.paper.Drawing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All sheets of a pack, in the order in which a person needs them. */
public final class Sheets {
    private final Plan plan;
    private final PaperSize paper;
    private final LengthFormat lengths;
    private final UnitSystem units;

    private Sheets(Plan plan, PaperSize paper) {
        this.plan = plan;
        this.paper = paper;
        this.units = plan.garden().unitsOrMetric();
        this.lengths = new LengthFormat(units);
    }

    public static List<Sheet> of(Plan plan, VariantTable variants, PaperSize paper, Optional<LocalDate> date) {
        Sheets sheets = new Sheets(plan, paper);
        List<Sheet> all = new ArrayList<>();
        all.add(new Sheet.Brief(plan, variants, date));
        if (!plan.boxes().isEmpty()) {
            all.add(sheets.planView());
            AlikeBoxes.group(plan.boxes()).forEach(alike -> all.add(sheets.boxSheet(alike)));
        }
        if (!plan.cutting().boards().isEmpty()) {
            all.add(sheets.cuttingSheet());
        }
        all.add(new Sheet.Shopping(plan));
        return all;
    }

    private Sheet planView() {
        return new Sheet.PlanView(plan, PlanDrawing.draw(plan, paper.roomWidthMm(true), paper.roomHeightMm(true) - 30));
    }

    private Sheet boxSheet(List<Box> alike) {
        Box box = alike.get(0);
        boolean wide = CourseDrawing.isLong(box);
        List<Drawing> layers = CourseDrawing.layers(box).stream()
                .map(layer -> CourseDrawing.draw(
                        box, layer, units, paper.roomWidthMm(wide), paper.roomHeightMm(wide) / 3 - 4))
                .toList();
        return new Sheet.BoxSheet(alike, layers, wide);
    }

    private Sheet cuttingSheet() {
        CuttingPlan cutting = plan.cutting();
        Length longest = cutting.boards().stream()
                .map(CuttingPlan.BoardCuts::length)
                .max(Length::compareTo)
                .orElseThrow();
        List<Sheet.BoardCard> boards = cutting.boards().stream()
                .map(b -> new Sheet.BoardCard(
                        b, BoardDrawing.draw(b, longest, cutting.waiting(), lengths, paper.roomWidthMm(false))))
                .toList();
        return new Sheet.CuttingSheet(boards, plan);
    }
}
