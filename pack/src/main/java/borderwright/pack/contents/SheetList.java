package borderwright.pack.contents;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.settingout.SettingOut;
import borderwright.engine.survey.OutlineEdge;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.bench.BenchViews;
import borderwright.pack.drawings.BoardDrawing;
import borderwright.pack.drawings.CardDrawing;
import borderwright.pack.drawings.ElevationDrawing;
import borderwright.pack.drawings.PegDrawing;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.sheets.AssemblySheet;
import borderwright.pack.sheets.BenchSheet;
import borderwright.pack.sheets.BoardCard;
import borderwright.pack.sheets.BriefSheet;
import borderwright.pack.sheets.CautionSheet;
import borderwright.pack.sheets.CuttingSheet;
import borderwright.pack.sheets.PlanSheet;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.ShoppingSheet;
import borderwright.pack.sheets.saw.SetUpSheet;
import borderwright.pack.sheets.site.PegSheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All sheets of a pack, in the order in which a person needs them. */
public final class SheetList {
    /** Half a page less the frame of a card. */
    private static final double CARD_DRAWING_MM = 78;

    private static final double GUTTER_MM = 5;

    /** Of an upright page: the plan of a usual garden then follows the cautions on theirs. */
    private static final double PLAN_SHARE = 0.3;

    private static final double PLAN_STEP = 0.05;
    private static final double TITLE_MM = 8;

    /** A plan that leaves less of a lying page has no room for elevations under it. */
    private static final double MOST_OF_PAGE = 0.6;

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
                            .toList(),
                    paper.roomWidthMm(Orientation.PORTRAIT) / 2 - GUTTER_MM / 2,
                    paper.roomHeightMm(Orientation.PORTRAIT)));
            all.add(sheets.cuttingSheet());
        }
        if (!plan.boxes().isEmpty()) {
            BenchViews bench = BenchViews.of(plan, paper);
            all.add(new BenchSheet(bench.walls(), bench.floors()));
            all.add(new AssemblySheet(bench.orders()));
            all.add(sheets.pegs());
        }
        all.addAll(SiteSheetList.of(plan, paper));
        all.add(new ShoppingSheet(plan));
        return all;
    }

    /** Lying, where plan and elevations share a page so; else upright, the plan above the elevations. */
    private Sheet planView() {
        double width = paper.roomWidthMm(Orientation.LANDSCAPE);
        double height = paper.roomHeightMm(Orientation.LANDSCAPE);
        Drawing lying = PlanDrawing.draw(plan, width, height - 8);
        if (lying.heightMm() < MOST_OF_PAGE * height) {
            return new PlanSheet(plan, lying, ElevationDrawing.all(plan, width, height / 2 - 4), Orientation.LANDSCAPE);
        }
        width = paper.roomWidthMm(Orientation.PORTRAIT);
        height = paper.roomHeightMm(Orientation.PORTRAIT);
        return new PlanSheet(
                plan, upright(width, height), ElevationDrawing.all(plan, width, height / 6), Orientation.PORTRAIT);
    }

    /** As low as names all its dimensions. */
    private Drawing upright(double width, double height) {
        double share = PLAN_SHARE;
        Drawing drawing = PlanDrawing.draw(plan, width, share * height);
        while (!drawing.leftOut().isEmpty() && share < 1) {
            share = StrictMath.min(1, share + PLAN_STEP);
            drawing = PlanDrawing.draw(plan, width, share * height - TITLE_MM);
        }
        return drawing;
    }

    private Sheet pegs() {
        PrintedFigures f = PrintedFigures.in(units);
        SettingOut settingOut = plan.site().settingOut();
        return new PegSheet(
                f.text(settingOut.listName()),
                settingOut,
                PegDrawing.draw(plan, f, paper.roomWidthMm(Orientation.PORTRAIT)),
                plan.outline().edges().stream().map(OutlineEdge::kind).toList());
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
