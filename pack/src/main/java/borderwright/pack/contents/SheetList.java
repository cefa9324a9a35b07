package borderwright.pack.contents;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cautions.PieceLift;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.settingout.SettingOut;
import borderwright.engine.strength.StrengthReport;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.alike.AlikeBoxes;
import borderwright.pack.bench.BenchViews;
import borderwright.pack.drawings.BoardDrawing;
import borderwright.pack.drawings.BowDrawing;
import borderwright.pack.drawings.CourseDrawing;
import borderwright.pack.drawings.ElevationDrawing;
import borderwright.pack.drawings.PegDrawing;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.drawings.SurveyDrawing;
import borderwright.pack.drawings.TemplateAngles;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.AngleSheet;
import borderwright.pack.sheets.AssemblySheet;
import borderwright.pack.sheets.BenchSheet;
import borderwright.pack.sheets.BoardCard;
import borderwright.pack.sheets.BoxSheet;
import borderwright.pack.sheets.BriefSheet;
import borderwright.pack.sheets.CuttingSheet;
import borderwright.pack.sheets.PegSheet;
import borderwright.pack.sheets.PlanSheet;
import borderwright.pack.sheets.SetUpSheet;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.ShoppingSheet;
import borderwright.pack.sheets.StrengthSheet;
import borderwright.pack.sheets.StrengthStepsSheet;
import borderwright.pack.sheets.SurveySheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All sheets of a pack, in the order in which a person needs them. */
public final class SheetList {
    private final Plan plan;
    private final PaperSize paper;
    private final LengthFormat lengths;
    private final UnitSystem units;

    private SheetList(Plan plan, PaperSize paper) {
        this.plan = plan;
        this.paper = paper;
        this.units = plan.garden().units();
        this.lengths = new LengthFormat(units);
    }

    public static List<Sheet> of(Plan plan, Comparison variants, PaperSize paper, Optional<LocalDate> date) {
        SheetList sheets = new SheetList(plan, paper);
        List<Sheet> all = new ArrayList<>();
        all.add(new BriefSheet(plan, variants, date));
        all.add(sheets.survey());
        if (!plan.boxes().isEmpty()) {
            all.add(sheets.planView());
        }
        all.add(new ShoppingSheet(plan));
        if (!plan.cutting().boards().isEmpty()) {
            all.add(new SetUpSheet(plan));
            all.add(sheets.cuttingSheet());
        }
        if (!plan.boxes().isEmpty()) {
            sheets.angles().ifPresent(all::add);
            all.add(sheets.pegs());
            for (List<Box> alike : AlikeBoxes.group(plan.boxes(), PrintedFigures.in(sheets.units))) {
                all.add(sheets.boxSheet(alike));
                sheets.strength(alike).ifPresent(all::add);
            }
            sheets.strengthSteps().ifPresent(all::add);
            BenchViews bench = BenchViews.of(plan, paper);
            all.add(new BenchSheet(bench.walls(), bench.floors()));
            all.add(new AssemblySheet(bench.orders()));
        }
        all.addAll(SiteSheetList.of(plan, paper));
        return all;
    }

    private Sheet survey() {
        return new SurveySheet(plan, SurveyDrawing.draw(plan, paper.roomWidthMm(Orientation.PORTRAIT), 80));
    }

    private Sheet planView() {
        double width = paper.roomWidthMm(Orientation.LANDSCAPE);
        double height = paper.roomHeightMm(Orientation.LANDSCAPE);
        return new PlanSheet(
                plan, PlanDrawing.draw(plan, width, height - 8), ElevationDrawing.all(plan, width, height / 2 - 4));
    }

    private Optional<Sheet> angles() {
        List<Drawing> drawings = TemplateAngles.of(plan).stream()
                .map(t -> t.draw(units, paper.roomWidthMm(Orientation.PORTRAIT)))
                .toList();
        return drawings.isEmpty() ? Optional.empty() : Optional.of(new AngleSheet(drawings));
    }

    private Sheet pegs() {
        PrintedFigures f = PrintedFigures.in(units);
        SettingOut settingOut = plan.site().settingOut();
        return new PegSheet(
                f.text(settingOut.listName()),
                settingOut,
                PegDrawing.draw(plan, f, paper.roomWidthMm(Orientation.PORTRAIT), 110));
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

    private Sheet cuttingSheet() {
        CuttingPlan cutting = plan.cutting();
        Length longest = cutting.boards().stream()
                .map(CuttingPlan.BoardCuts::length)
                .max(Length::compareTo)
                .orElseThrow();
        List<BoardCard> boards = AlikeBoards.group(cutting).stream()
                .map(alike -> new BoardCard(
                        alike,
                        BoardDrawing.draw(
                                alike.get(0),
                                names(alike),
                                longest,
                                cutting.waiting(),
                                lengths,
                                paper.roomWidthMm(Orientation.PORTRAIT))))
                .toList();
        return new CuttingSheet(boards, plan);
    }

    private static List<String> names(List<CuttingPlan.BoardCuts> alike) {
        List<String> names = new ArrayList<>();
        for (CuttingPlan.Cut cut : alike.get(0).cuts()) {
            names.add(alike.size() == 1 ? cut.label() : "cut " + (names.size() + 1));
        }
        return names;
    }
}
