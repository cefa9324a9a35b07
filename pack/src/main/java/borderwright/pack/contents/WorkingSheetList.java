package borderwright.pack.contents;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cautions.PieceLift;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.strength.StrengthReport;
import borderwright.pack.alike.AlikeBoxes;
import borderwright.pack.drawings.BowDrawing;
import borderwright.pack.drawings.CourseDrawing;
import borderwright.pack.drawings.SurveyDrawing;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.BasketSheet;
import borderwright.pack.sheets.BoxSheet;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.StrengthSheet;
import borderwright.pack.sheets.StrengthStepsSheet;
import borderwright.pack.sheets.SurveySheet;
import borderwright.pack.sheets.site.PlantingSheet;
import borderwright.pack.sheets.site.SoilCostSheet;
import borderwright.pack.sheets.site.WeightSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The sheets of the working, for whoever wants to check the plan: the survey's figures, every piece, the strength. */
public final class WorkingSheetList {
    private static final double SURVEY_DRAWING_MM = 80;

    private final Plan plan;
    private final PaperSize paper;
    private final UnitSystem units;

    private WorkingSheetList(Plan plan, PaperSize paper) {
        this.plan = plan;
        this.paper = paper;
        this.units = plan.garden().units();
    }

    public static List<Sheet> of(Plan plan, PaperSize paper) {
        WorkingSheetList sheets = new WorkingSheetList(plan, paper);
        List<Sheet> all = new ArrayList<>();
        all.add(sheets.survey());
        for (List<Box> alike : AlikeBoxes.group(plan.boxes(), PrintedFigures.in(sheets.units))) {
            all.add(sheets.boxSheet(alike));
            sheets.strength(alike).ifPresent(all::add);
        }
        sheets.strengthSteps().ifPresent(all::add);
        if (!plan.boxes().isEmpty()) {
            all.add(new WeightSheet(plan));
        }
        if (BasketSheet.isOf(plan)) {
            all.add(new BasketSheet(plan));
        }
        if (SoilCostSheet.isOf(plan)) {
            all.add(new SoilCostSheet(plan));
        }
        if (!plan.boxes().isEmpty() && !PlantingSheet.hasCrops(plan)) {
            all.add(new PlantingSheet(plan));
        }
        return all;
    }

    private Sheet survey() {
        return new SurveySheet(
                plan, SurveyDrawing.draw(plan, paper.roomWidthMm(Orientation.PORTRAIT), SURVEY_DRAWING_MM));
    }

    private Sheet boxSheet(List<Box> alike) {
        Box box = alike.get(0);
        Orientation way = CourseDrawing.isLong(box) ? Orientation.LANDSCAPE : Orientation.PORTRAIT;
        List<Drawing> layers = CourseDrawing.layers(box).stream()
                .map(layer ->
                        CourseDrawing.draw(box, layer, units, paper.roomWidthMm(way), paper.roomHeightMm(way) / 3 - 4))
                .toList();
        Map<String, PieceLift> lifts = new TreeMap<>();
        plan.site().cautions().lifts().forEach(lift -> lifts.put(lift.piece(), lift));
        return new BoxSheet(alike, layers, way, lifts);
    }

    /** Boxes alike in their pieces may differ in what stands behind them: the weakest speaks for all. */
    private Optional<Sheet> strength(List<Box> alike) {
        List<String> names = alike.stream().map(box -> box.plan().name()).toList();
        return StrengthReport.weakest(plan.strengthReports().stream()
                        .filter(report -> names.contains(report.box()))
                        .toList())
                .map(report -> new StrengthSheet(
                        alike,
                        report,
                        BowDrawing.all(
                                alike.get(0),
                                report,
                                units,
                                PrintedFigures.in(units)::error,
                                paper.roomWidthMm(Orientation.PORTRAIT)),
                        plan.garden().currency().getCode()));
    }

    private Optional<Sheet> strengthSteps() {
        return StrengthReport.weakest(plan.strengthReports().stream()
                        .filter(report -> !report.checks().isEmpty()
                                || !report.takenForGranted().isEmpty())
                        .toList())
                .map(report -> new StrengthStepsSheet(
                        report,
                        Stream.concat(
                                        plan.strengthReports().stream().flatMap(r -> r.takenForGranted().stream()),
                                        Stream.of(plan.garden().soakedWeightOrigin()))
                                .distinct()
                                .toList()));
    }
}
