package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FloorBench;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.plan.Plan;
import borderwright.pack.bench.BenchRow;
import borderwright.pack.bench.BenchViews;
import borderwright.pack.bench.FloorView;
import borderwright.pack.bench.ScrewRow;
import borderwright.pack.bench.WallView;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The bench sheets of examples, read as a person would. From the printed strings alone every piece is set up again in 3D and
 * compared with the plan; only where a wall or floor stands in the garden is taken from the plan's corners.
 */
class BenchSheetsTest {
    /** Half a millimetre for the place of the hook and half for the distance from it. */
    private static final double TO_1_MM = 1.0 + 1e-6;

    private static final Pattern LENGTH = Pattern.compile("(-?\\d+(?:[.]\\d+)?) (mm|m)\\b");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fence-to-shed",
                "behind-the-shed",
                "patio-planter",
                "garden-bend",
                "sloping-border",
                "terrace-corner",
                "sixty-beds"
            })
    void screwsOnTheDrawingsAddUpToTheTally(String example) throws IOException {
        Plan plan = ExamplePlans.of(example);
        int tally = 0;
        for (Box box : plan.boxes()) {
            Map<String, Integer> off = new TreeMap<>();
            box.fixings().stream()
                    .filter(fixing -> !fixing.item().startsWith("concrete"))
                    .forEach(fixing -> off.merge(fixing.hold() + " " + fixing.item(), -fixing.count(), Integer::sum));
            BoxBench.of(box, plan.garden().sections())
                    .fixings()
                    .forEach(line -> off.merge(line.hold() + " " + line.fixing().item(), line.count(), Integer::sum));
            tally += count(box);
            off.values().removeIf(difference -> difference == 0);
            assertThat(off).as(box.plan().name()).isEmpty();
        }
        BenchViews views = BenchViews.of(plan, PaperSize.A4);
        int printed = 0;
        for (WallView view : views.walls()) {
            printed += count(view.screws()) * (1 + view.alike().size());
        }
        for (FloorView view : views.floors()) {
            printed += count(view.screws()) * (1 + view.alike().size());
        }
        assertThat(printed).isEqualTo(tally).isPositive();
    }

    private static int count(List<ScrewRow> rows) {
        return rows.stream().mapToInt(ScrewRow::count).sum();
    }

    private static int count(Box box) {
        return box.fixings().stream()
                .filter(fixing -> !fixing.item().startsWith("concrete"))
                .mapToInt(Box.Fixing::count)
                .sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"fence-to-shed", "terrace-corner"})
    void everyPieceIsRebuiltFromThePrintedText(String example) throws IOException {
        Plan plan = ExamplePlans.of(example);
        BenchViews views = BenchViews.of(plan, PaperSize.A4);
        int rebuilt = 0;
        for (Box box : plan.boxes()) {
            Map<String, List<Point>> crossing = new HashMap<>();
            Map<String, Piece> pieces = new HashMap<>();
            box.pieces().forEach(piece -> pieces.put(piece.label(), piece));
            for (WallBench wall : BoxBench.of(box, plan.garden().sections()).walls()) {
                Printed printed = printed(views, wall);
                rebuilt += rebuild(printed, wall, box, pieces, crossing);
            }
            for (Map.Entry<String, List<Point>> piece : crossing.entrySet()) {
                for (Point corner : pieces.get(piece.getKey()).place().plan().corners()) {
                    double off = piece.getValue().stream()
                            .mapToDouble(corner::distanceMm)
                            .min()
                            .orElseThrow();
                    assertThat(off).as(piece.getKey()).isLessThan(Math.sqrt(2) * TO_1_MM);
                }
                rebuilt++;
            }
        }
        assertThat(rebuilt).isGreaterThan(20);
    }

    /** A wall's printed lines, with its own pieces' labels in the place of those of the wall that stands for it. */
    private record Printed(WallView view, Map<String, String> own) {}

    private static Printed printed(BenchViews views, WallBench wall) {
        String name = (wall.kind() == WallBench.Kind.WALL ? "side " : "divider ") + wall.mark() + " of " + wall.box();
        for (WallView view : views.walls()) {
            if (view.title().equalsIgnoreCase(name) || view.alike().contains(name)) {
                List<String> labels = labels(wall);
                Map<String, String> own = new HashMap<>();
                for (int i = 0; i < labels.size(); i++) {
                    own.put(view.rows().get(i).label(), labels.get(i));
                }
                assertThat(view.rows()).hasSameSizeAs(labels);
                return new Printed(view, own);
            }
        }
        throw new AssertionError(name + " is on no sheet");
    }

    /** In the order in which the rows are printed: uprights, ties and dividers from left to right, boards, capping. */
    private static List<String> labels(WallBench wall) {
        List<String> labels = new ArrayList<>();
        wall.parts().uprights().forEach(upright -> labels.add(upright.label()));
        wall.parts().crosspieces().forEach(cross -> labels.add(cross.label()));
        wall.parts().boards().forEach(board -> labels.add(board.label()));
        wall.parts().caps().forEach(cap -> labels.add(cap.label()));
        return labels;
    }

    private static int rebuild(
            Printed printed, WallBench wall, Box box, Map<String, Piece> pieces, Map<String, List<Point>> crossing) {
        WallView view = printed.view;
        double thick = mm(view.thickness());
        Ring ring = box.plan().outline();
        boolean isWall = wall.kind() == WallBench.Kind.WALL;
        Point along = isWall ? ring.direction(wall.index()) : wall.face().rightwards();
        Point hook = isWall
                ? ring.corner(wall.index()).minus(along.times(cornerMm(view)))
                : wall.face().hook();
        int rebuilt = 0;
        for (BenchRow row : view.rows()) {
            Piece piece = pieces.get(printed.own.get(row.label()));
            List<Double> far = new ArrayList<>();
            Matcher range = Pattern.compile("(?:far (?:edges|face)|inner edge) (\\S+ m?m) to (\\S+ m?m)")
                    .matcher(notes(row));
            if (range.find()) {
                far.addAll(List.of(mm(range.group(1)), mm(range.group(2))));
            } else {
                far.addAll(List.of(mm(row.from()), mm(row.to())));
            }
            double near = 0;
            double deep = thick;
            switch (row.what()) {
                case "corner post", "brace" -> {
                    if (!notes(row).contains("neighbouring") && isWall) {
                        near = thick;
                        deep = thick + mm(notes(row).substring(0, notes(row).indexOf(" deep")));
                    } else {
                        continue;
                    }
                }
                case "tie", "divider board" -> {
                    if (isWall) {
                        for (String x : List.of(row.from(), row.to())) {
                            crossing.computeIfAbsent(piece.label(), k -> new ArrayList<>())
                                    .add(at(hook, along, mm(x), thick));
                        }
                        high(row, piece, box);
                        continue;
                    }
                }
                case "capping" -> {
                    near = -mm(notes(row).replaceAll(".*outer edge (.*?) outside.*", "$1"));
                    deep = Double.NaN;
                }
                default -> {}
            }
            List<Point> corners = new ArrayList<>();
            corners.add(at(hook, along, mm(row.from()), near));
            corners.add(at(hook, along, mm(row.to()), near));
            if (!Double.isNaN(deep)) {
                corners.add(at(hook, along, far.get(0), deep));
                corners.add(at(hook, along, far.get(1), deep));
            }
            for (Point corner : corners) {
                assertThat(nearest(piece, corner, along))
                        .as("%s of %s: %s", row.label(), view.title(), row)
                        .isLessThanOrEqualTo(TO_1_MM);
            }
            high(row, piece, box);
            rebuilt++;
        }
        return rebuilt;
    }

    private static Point at(Point hook, Point along, double x, double behind) {
        return hook.plus(along.times(x)).plus(along.left().times(behind));
    }

    /** Greater of the distances along and across the wall to the nearest corner of a piece. */
    private static double nearest(Piece piece, Point corner, Point along) {
        return piece.place().plan().corners().stream()
                .mapToDouble(p -> Math.max(
                        Math.abs(p.minus(corner).dot(along)),
                        Math.abs(p.minus(corner).dot(along.left()))))
                .min()
                .orElseThrow();
    }

    private static void high(BenchRow row, Piece piece, Box box) {
        double bottom = box.courses().get(0).bottomMm();
        assertThat(mm(row.bottom())).isCloseTo(piece.place().bottomMm() - bottom, within(TO_1_MM));
        assertThat(mm(row.top())).isCloseTo(piece.place().topMm() - bottom, within(TO_1_MM));
    }

    private static double cornerMm(WallView view) {
        String told = PrintedFigures.in(borderwright.engine.measure.UnitSystem.METRIC)
                .text(view.told().get(view.told().size() - 1));
        return told.contains("to the right") ? mm(told) : -mm(told);
    }

    /** The first length in a text, mm. */
    private static double mm(String text) {
        Matcher found = LENGTH.matcher(text);
        assertThat(found.find()).as(text).isTrue();
        return Double.parseDouble(found.group(1)) * (found.group(2).equals("m") ? 1000 : 1);
    }

    /** terrace-corner has a false floor. */
    @ParameterizedTest
    @ValueSource(strings = {"terrace-corner", "fence-to-shed", "patio-planter"})
    void everySlatBearerAndLegIsRebuiltFromThePrintedText(String example) throws IOException {
        Plan plan = ExamplePlans.of(example);
        if (plan.garden().units() == borderwright.engine.measure.UnitSystem.IMPERIAL) {
            return;
        }
        BenchViews views = BenchViews.of(plan, PaperSize.A4);
        for (Box box : plan.boxes()) {
            Map<String, Piece> pieces = new HashMap<>();
            box.pieces().forEach(piece -> pieces.put(piece.label(), piece));
            for (FloorBench floor : BoxBench.of(box, plan.garden().sections()).floors()) {
                FloorView view = views.floors().stream()
                        .filter(v -> v.title().equals("Floor of " + floor.planter())
                                || v.alike().contains(floor.planter()))
                        .findFirst()
                        .orElseThrow();
                for (int i = 0; i < view.rows().size(); i++) {
                    BenchRow row = view.rows().get(i);
                    Piece piece = pieces.get(floor.strips().get(i).label());
                    if (!piece.notches().isEmpty()) {
                        continue;
                    }
                    Point along = floor.face().rightwards();
                    Point corner = at(floor.face().hook(), along, mm(row.from()), mm(row.bottom()));
                    assertThat(nearest(piece, corner, along)).as(row.toString()).isLessThanOrEqualTo(TO_1_MM);
                }
            }
        }
    }

    private static String notes(BenchRow row) {
        return String.join("; ", row.notes());
    }
}
