package borderwright.pack;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.buying.why.BasketMessage;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenDays;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.engine.plan.ShortfallMessage;
import borderwright.engine.plan.SiteStages;
import borderwright.engine.plan.SiteWork;
import borderwright.engine.prices.PriceLists;
import borderwright.engine.problem.Problem;
import borderwright.engine.sequence.BuildSequence;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.strength.CheckKind;
import borderwright.engine.strength.Cure;
import borderwright.engine.strength.PartKind;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthMessage;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.Verdict;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.bracing.CureMessage;
import borderwright.engine.strength.loads.LoadEvent;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.timber.TimberStep;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.SheetLine;
import borderwright.engine.strength.worked.StepMessage;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import borderwright.engine.survey.SurveyAnswer;
import borderwright.engine.survey.checks.ClosingMessage;
import borderwright.engine.survey.checks.DisagreementMessage;
import borderwright.engine.survey.checks.NextMeasureMessage;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.fieldbook.ReadingMessage;
import borderwright.engine.survey.network.ErrorEllipse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A whole plan put together by hand: three joined planters and one mitred round a 127 degree corner. All invented. */
public final class SamplePlan {
    private static final CurrencyUnit GBP = CurrencyUnit.GBP;
    private static final double TURN = StrictMath.toRadians(53);

    private static final GivenDays DAYS =
            new GivenDays(LocalDate.of(2026, 4, 4), List.of(), List.of(), null, 1, null, null);

    private SamplePlan() {}

    public static Plan metric() {
        return plan("Fence and bend", UnitSystem.METRIC, boxes());
    }

    public static Plan imperial() {
        return plan("Fence and bend", UnitSystem.IMPERIAL, boxes());
    }

    /** A plan of one small box: quick to print. */
    public static Plan small(String name) {
        return plan(
                name,
                UnitSystem.METRIC,
                List.of(new SampleBox("F1", Ring.rectangle(20, 20, 920, 520), List.of(), -450).build(1)));
    }

    /** The same plan with many copies of one box, side by side. */
    public static Plan field(int count) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = (i % 10) * 2600;
            double y = (i / 10) * 1600;
            boxes.add(
                    new SampleBox("F" + (i + 1), Ring.rectangle(x, y, x + 2400, y + 1200), List.of(), 0).build(i + 1));
        }
        return plan("Field of boxes", UnitSystem.METRIC, boxes);
    }

    private static List<Box> boxes() {
        Point u = new Point(StrictMath.cos(TURN), StrictMath.sin(TURN));
        Point corner = new Point(5400 - 20 * StrictMath.tan(TURN / 2), 20);
        Point front = new Point(5400 - 620 * StrictMath.tan(TURN / 2), 620);
        Point end = corner.plus(u.times(1400));
        Ring bend = new Ring(
                List.of(new Point(3640, 20), corner, end, end.plus(u.left().times(600)), front, new Point(3640, 620)));
        return List.of(
                new SampleBox("F1-F3", Ring.rectangle(20, 20, 3620, 620), List.of(1200.0, 2400.0), -450).build(1),
                new SampleBox("F4", bend, List.of(), -450).build(4));
    }

    public static Plan plan(String name, UnitSystem units, List<Box> boxes) {
        List<Piece> pieces = boxes.stream().flatMap(b -> b.pieces().stream()).toList();
        CuttingPlan cutting = cutting(pieces);
        Basket basket = basket(cutting);
        double metres = pieces.stream().mapToDouble(p -> p.length().mm()).sum() / 1000;
        double boards =
                cutting.boards().stream().mapToDouble(b -> b.length().mm()).sum() / 1000;
        Plan.Totals totals = Plan.Totals.builder()
                .planters(4)
                .pieces(pieces.size())
                .pieceMetres(metres)
                .boardMetres(boards)
                .timberM3(0.211)
                .timberKg(147.6)
                .growingM2(2.94)
                .soilM3(1.487)
                .boardsAndFixings(basket.total())
                .overBudget(Optional.of(gbp("14.35")))
                .build();
        Garden garden = garden(name, units);
        SiteWork site = SiteStages.of(
                garden,
                new SurveyAnswer.Adjusted(outline(), survey()),
                boxes,
                PriceLists.resolve(garden.suppliers(), garden.sections(), garden.currency()));
        return Plan.builder()
                .garden(garden)
                .outline(outline())
                .survey(survey())
                .layout(new Layout(boxes.stream().map(Box::plan).toList(), List.of(), List.of(), List.of()))
                .boxes(boxes)
                .strength(StrengthMessage.VERDICT.of(
                        Verdict.Kind.DOES_NOT_HOLD.of(),
                        List.of(StrengthMessage.SIDE_BOWS_TOO_MUCH.of("c", 14, 1, 10))))
                .strengthReports(boxes.stream().map(SamplePlan::strength).toList())
                .site(site)
                .shopping(List.of(
                        new ShoppingItem(
                                "screw 5 x 70", new BigDecimal("168"), "pieces", FixingMessage.WALLS_TO_UPRIGHTS.of(2)),
                        new ShoppingItem("liner", new BigDecimal("9.4"), "m2", FixingMessage.STRAP_OVER_A_CORNER.of()),
                        new ShoppingItem("soil", new BigDecimal("1.487"), "m3", FixingMessage.SLATS_TO_BEARERS.of())))
                .basket(basket)
                .cutting(cutting)
                .work(BuildSequence.plan(garden, boxes, site.ground(), site.filling(), cutting))
                .totals(totals)
                .shortfalls(List.of(new Problem(
                        "budget", ShortfallMessage.OVER_BUDGET.of(gbp("234.35"), gbp("14.35"), gbp("220.00")))))
                .build();
    }

    private static Garden garden(String name, UnitSystem units) {
        return GardenResolver.resolve(GivenGarden.builder(
                        name,
                        "GBP",
                        new GivenSurvey(Names.of("A", "B", "C"), null, Length.ofMm(640), List.of(), List.of(), null),
                        GivenBuild.of("larch 25 x 150", "batten 47 x 50"))
                .about("A garden, suppliers and prices of our own.")
                .invented()
                .units(units)
                .budget(new BigDecimal("220"))
                .sections(section("larch 25 x 150", 25, 150), section("batten 47 x 50", 47, 50))
                .days(DAYS)
                .build());
    }

    private static GivenSection section(String name, double t, double w) {
        return GivenSection.builder(name, Length.ofMm(t), Length.ofMm(w))
                .species("larch")
                .build();
    }

    private static Outline outline() {
        Point u = new Point(StrictMath.cos(TURN), StrictMath.sin(TURN));
        Point b = new Point(5400, 0);
        Point c = b.plus(u.times(2915));
        Point front = new Point(5400 - 640 * StrictMath.tan(TURN / 2), 640);
        return new Outline(
                new Ring(List.of(new Point(0, 0), b, c, c.plus(u.left().times(640)), front, new Point(0, 640))),
                List.of("A", "B", "C", "C'", "B'", "A'"),
                List.of(
                        new OutlineEdge(EdgeKind.FENCE, 20, 0, 0),
                        new OutlineEdge(EdgeKind.WALL, 20, 0, 0),
                        new OutlineEdge(EdgeKind.OPEN, 0, 0, 0),
                        new OutlineEdge(EdgeKind.LAWN, 0, 0, 0),
                        new OutlineEdge(EdgeKind.LAWN, 0, 0, 0),
                        new OutlineEdge(EdgeKind.FENCE, 15, 0, 0)),
                new GroundHeights(List.of(
                        new GroundHeights.Spot("A", new Point(0, 0), -452, 3),
                        new GroundHeights.Spot("B", b, -486, 3),
                        new GroundHeights.Spot("C", c, -503, 3))));
    }

    private static SurveyReport survey() {
        List<SurveyReport.SurveyedPoint> points = new ArrayList<>();
        Outline outline = outline();
        for (int i = 0; i < 3; i++) {
            points.add(new SurveyReport.SurveyedPoint(
                    outline.cornerNames().get(i),
                    outline.ring().corner(i),
                    1.1 + i,
                    0.8 + 2 * i,
                    new ErrorEllipse(1.2 + 2.4 * i, 0.7 + 0.5 * i, 0.5 * i)));
        }
        points.add(new SurveyReport.SurveyedPoint("P", new Point(4400, 0), 1.3, 1.0, new ErrorEllipse(1.4, 0.9, 0.2)));
        points.add(new SurveyReport.SurveyedPoint(
                "Q",
                new Point(5400 + 1000 * StrictMath.cos(TURN), 1000 * StrictMath.sin(TURN)),
                1.9,
                2.2,
                new ErrorEllipse(2.4, 1.1, 1.1)));
        return new SurveyReport(
                points,
                List.of(
                        reading(0, ReadingMessage.READING_TAPE.of("A-B"), 5400, 5400.4, 3, "mm", 0.31),
                        reading(1, ReadingMessage.READING_TAPE.of("B-C"), 2915, 2914.6, 3, "mm", 0.22),
                        reading(2, ReadingMessage.READING_ALONG_BASELINE.of("P", "B-A"), 1000, 1000.0, 1, "mm", 0.12),
                        reading(3, ReadingMessage.READING_ALONG_BASELINE.of("Q", "B-C"), 1000, 1000.1, 1, "mm", 0.12),
                        reading(4, ReadingMessage.READING_TAPE.of("P-Q"), 1790, 1789.2, 1, "mm", 0.55),
                        reading(5, ReadingMessage.READING_ANGLE.of("A-B-C"), 128, 127.0, 0.3, "deg", 0.74)),
                List.of(new SurveyReport.Closing(ClosingMessage.CLOSING_ANGLE.of("P-Q", "B"), 18.4, 5.1)),
                1,
                Optional.of(new SurveyReport.GlobalTest(9.31, 3.84, 0.05)),
                new SurveyReport.Suspects(
                        false,
                        List.of(
                                new SurveyReport.Candidate(5, 127.03, 0.09, Optional.empty()),
                                new SurveyReport.Candidate(4, 1797.6, 2.4, Optional.empty())),
                        Optional.of(DisagreementMessage.SEPARATES_BY_REPEATING.of(
                                NextMeasureMessage.NEXT_TAPE.of("A", "C")))),
                new SurveyReport.NextMeasure(
                        NextMeasureMessage.NEXT_TAPE.of("A", "C"), NextMeasureMessage.NEXT_TELLS_WHICH.of(2)));
    }

    private static SurveyReport.Reading reading(
            int i, Message what, double measured, double adjusted, double sd, String unit, double r) {
        double normalised = (adjusted - measured) / (sd * StrictMath.sqrt(r));
        return SurveyReport.Reading.builder()
                .where("survey.measures[" + i + "]")
                .what(what)
                .measured(measured)
                .adjusted(adjusted)
                .sd(sd)
                .unit(unit)
                .redundancyNumber(r)
                .normalised(normalised)
                .build();
    }

    private static CuttingPlan cutting(List<Piece> pieces) {
        List<CuttingPlan.SetUp> setUps = setUps(pieces);
        Map<String, Integer> setUpOf = new LinkedHashMap<>();
        setUps.forEach(s -> s.labels().forEach(l -> setUpOf.put(l, s.number() - 1)));
        List<CuttingPlan.BoardCuts> boards = new ArrayList<>();
        for (String section : List.of("larch 25 x 150", "batten 47 x 50")) {
            List<Piece> rest = new ArrayList<>(pieces.stream()
                    .filter(p -> p.section().equals(section))
                    .sorted(Comparator.comparing(Piece::length).reversed())
                    .toList());
            double boardMm = section.startsWith("larch") ? 3800 : 3000;
            while (!rest.isEmpty()) {
                boards.add(board(section, boardMm, rest, setUpOf, boards.size() + 1));
            }
        }
        return new CuttingPlan(
                boards,
                setUps,
                pieces.stream().filter(Piece::waits).map(Piece::label).toList(),
                List.of(boards.size()),
                List.of());
    }

    private static List<CuttingPlan.SetUp> setUps(List<Piece> pieces) {
        Map<String, List<Piece>> groups = new LinkedHashMap<>();
        for (Piece p : pieces) {
            groups.computeIfAbsent(
                            p.right().tiltDeg() + "/" + p.length().ticks() + "/" + p.section(), k -> new ArrayList<>())
                    .add(p);
        }
        List<CuttingPlan.SetUp> setUps = new ArrayList<>();
        groups.values().forEach(g -> {
            Piece first = g.get(0);
            setUps.add(new CuttingPlan.SetUp(
                    setUps.size() + 1,
                    "table saw with sled",
                    new CuttingPlan.Setting(first.right().tiltDeg(), 0, CuttingPlan.Lean.NONE),
                    first.length(),
                    g.stream().map(Piece::label).toList(),
                    CutMessage.SAW_SET_SQUARE.of("table saw")));
        });
        return setUps;
    }

    private static CuttingPlan.BoardCuts board(
            String section, double boardMm, List<Piece> rest, Map<String, Integer> setUpOf, int number) {
        Length trim = Length.ofMm(12);
        Length at = trim;
        Length end = Length.ofMm(boardMm).minus(trim);
        List<CuttingPlan.Cut> cuts = new ArrayList<>();
        for (Piece p : List.copyOf(rest)) {
            if (at.plus(p.length()).compareTo(end) <= 0) {
                cuts.add(new CuttingPlan.Cut(
                        p.label(),
                        at,
                        p.length(),
                        setUpOf.getOrDefault(p.label(), 0),
                        cuts.size() % 3 == 2,
                        false,
                        false,
                        CuttingPlan.Slant.SQUARE,
                        CuttingPlan.Slant.SQUARE));
                at = at.plus(p.length()).plus(Length.ofMm(3));
                rest.remove(p);
            }
        }
        Length offcut = end.minus(at).compareTo(Length.ZERO) > 0 ? end.minus(at) : Length.ZERO;
        return new CuttingPlan.BoardCuts(
                number,
                section,
                Length.ofMm(boardMm),
                number == 1 ? "shed rack" : "Alder",
                number == 1,
                trim,
                cuts,
                offcut,
                offcut.mm() >= 400);
    }

    private static Basket basket(CuttingPlan cutting) {
        long larch = cutting.boards().stream()
                        .filter(b -> b.section().startsWith("larch"))
                        .count()
                - 1;
        long batten = cutting.boards().stream()
                .filter(b -> b.section().startsWith("batten"))
                .count();
        Money larchSum = gbp("9.60").multipliedBy(larch);
        Money battenSum = gbp("4.20").multipliedBy(batten);
        Money goods = larchSum.plus(battenSum);
        Money delivery = gbp("30.00");
        Basket.Order alder = new Basket.Order(
                "Alder",
                List.of(
                        new Basket.Line("larch 25 x 150", Length.ofMm(3800), (int) larch, 1, gbp("9.60"), larchSum),
                        new Basket.Line("batten 47 x 50", Length.ofMm(3000), (int) batten, 1, gbp("4.20"), battenSum)),
                goods,
                false,
                delivery,
                gbp("0.00"),
                goods.plus(delivery));
        Basket.Order birch = new Basket.Order(
                "Birch",
                List.of(new Basket.Line("screw 5 x 70", Length.ZERO, 1, 1, gbp("12.80"), gbp("12.80"))),
                gbp("12.80"),
                true,
                gbp("0.00"),
                gbp("2.56"),
                gbp("15.36"));
        Money total = alder.total().plus(birch.total());
        return new Basket(
                List.of(alder, birch),
                total,
                total,
                true,
                List.of(new Basket.Unpriced("liner", "9.4 m2")),
                List.of(
                        BasketMessage.ALONE_IMPOSSIBLE.of(BasketMessage.PLAIN_NAME.of("Alder")),
                        BasketMessage.ALONE_COSTS_MORE.of(
                                BasketMessage.PLAIN_NAME.of("Birch"), total.plus(gbp("31.20")), gbp("31.20"))));
    }

    static Money gbp(String amount) {
        return Money.of(GBP, new BigDecimal(amount));
    }

    /** Sides that bow as a sine, the front beyond its limit, and one check that fails. */
    private static StrengthReport strength(Box box) {
        List<SideBow> sides = new ArrayList<>();
        List<BowLine> lines = new ArrayList<>();
        Ring ring = box.plan().outline();
        for (int side = 0; side < ring.size(); side++) {
            double length = ring.sideMm(side);
            double most = side == 2 ? 14 : 3;
            sides.add(new SideBow(side, Character.toString('a' + side), most, 1, length / 2, 0.8, most < 10));
            for (Box.Course course : box.courses()) {
                List<BowLine.At> points = new ArrayList<>();
                for (int i = 0; i <= 8; i++) {
                    double out = most / course.number() * StrictMath.sin(StrictMath.PI * i / 8);
                    points.add(new BowLine.At(length * i / 8, out));
                }
                lines.add(new BowLine(side, course.number(), course.topMm() - 75, points));
            }
        }
        Check screws = new Check(
                PartKind.WALL_SCREWS.of(),
                CheckKind.SCREWS.of(),
                StepMessage.REFERENCE.of("EN 1995-1-1 8.2"),
                LoadEvent.LASTING_FILL.of(),
                1.25,
                List.of(
                        new SheetLine(
                                "Fv,Ed",
                                TimberStep.ALL_FASTENERS.of(),
                                Optional.of(1250.0),
                                "N",
                                StepMessage.REFERENCE.of("")),
                        new SheetLine(
                                "",
                                TimberStep.NO_PULL_IN_END_GRAIN.of(),
                                Optional.empty(),
                                "",
                                StepMessage.REFERENCE.of("EN 1995-1-1 8.3.2"))));
        return StrengthReport.builder()
                .box(box.plan().name())
                .verdict(new Verdict(
                        Verdict.Kind.DOES_NOT_HOLD, List.of(StrengthMessage.SIDE_BOWS_TOO_MUCH.of("c", 14, 1, 10))))
                .rules(RuleSet.EUROCODE.name())
                .bowLimitMm(10)
                .sides(sides)
                .lines(lines)
                .checks(List.of(screws))
                .takenForGranted(List.of(StrengthMessage.PERSON_ASSUMED.of(1000)))
                .notSettled(List.of(StrengthMessage.GROUND_NOT_KNOWN.of()))
                .cures(List.of(
                        new Cure(
                                CureMessage.BRACING.of("larch 25 x 150", 0, 75, 2),
                                "larch 25 x 150",
                                new BracingScheme(600, 0, 75, List.of()),
                                61.5,
                                14,
                                1.4),
                        new Cure(
                                CureMessage.BRACING.of("larch 25 x 150", 1, 75, 2),
                                "larch 25 x 150",
                                new BracingScheme(600, 1200, 75, List.of()),
                                68.2,
                                7.1,
                                0.9)))
                .guidance(StrengthMessage.STRENGTH_GUIDANCE.of())
                .build();
    }
}
