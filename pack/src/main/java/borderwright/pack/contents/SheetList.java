package borderwright.pack.contents;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.settingout.SettingOut;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.bench.BenchViews;
import borderwright.pack.drawings.BoardDrawing;
import borderwright.pack.drawings.CardDrawing;
import borderwright.pack.drawings.ElevationDrawing;
import borderwright.pack.drawings.PegDrawing;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.drawings.TemplateAngles;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.AngleSheet;
import borderwright.pack.sheets.AssemblySheet;
import borderwright.pack.sheets.BenchSheet;
import borderwright.pack.sheets.BoardCard;
import borderwright.pack.sheets.BriefSheet;
import borderwright.pack.sheets.CautionSheet;
import borderwright.pack.sheets.CuttingSheet;
import borderwright.pack.sheets.PlanSheet;
import borderwright.pack.sheets.SetUpSheet;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.ShoppingSheet;
import borderwright.pack.sheets.site.PegSheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All sheets of a pack, in the order in which a person needs them. */
public final class SheetList {
    /** Half a page less the frame of a card. */
    private static final double CARD_DRAWING_MM = 74;

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
        if (!plan.boxes().isEmpty()) {
            all.add(new CautionSheet(plan.site().cautions().stages()));
            all.add(sheets.planView());
        }
        if (!plan.cutting().boards().isEmpty()) {
            PrintedFigures f = PrintedFigures.in(sheets.units);
            all.add(new SetUpSheet(
                    plan,
                    plan.cutting().setUps().stream()
                            .map(setUp -> CardDrawing.draw(setUp, f, CARD_DRAWING_MM))
                            .toList()));
            all.add(sheets.cuttingSheet());
        }
        if (!plan.boxes().isEmpty()) {
            sheets.angles().ifPresent(all::add);
            BenchViews bench = BenchViews.of(plan, paper);
            all.add(new BenchSheet(bench.walls(), bench.floors()));
            all.add(new AssemblySheet(bench.orders()));
            all.add(sheets.pegs());
        }
        all.addAll(SiteSheetList.of(plan, paper));
        all.add(new ShoppingSheet(plan));
        return all;
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
