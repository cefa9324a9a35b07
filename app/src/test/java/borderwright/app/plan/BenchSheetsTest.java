package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FloorBench;
import borderwright.engine.assembly.WorkFace;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.bench.BenchViews;
import borderwright.pack.bench.FloorView;
import borderwright.pack.bench.ScrewRow;
import borderwright.pack.bench.WallView;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The bench sheets of examples, read as a person would. From the text of the PDF file alone every piece is set up again in 3D and
 * compared with the plan; only where a wall or floor stands in the garden is taken from the plan's corners.
 */
class BenchSheetsTest {

    private static final Set<Piece.Role> ON_THE_FLOOR = Set.of(Piece.Role.SLAT, Piece.Role.BEARER, Piece.Role.LEG);

    @ParameterizedTest
    @MethodSource("borderwright.app.plan.ExamplePlans#names")
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

    /** The garden with a bend whose corner has one ripped post instead of two uprights. */
    @Test
    void aRippedPostIsOnTheSheets() throws IOException {
        String document = Files.readString(ExamplePlans.file("garden-bend"))
                .replace("  braces: batten 47 x 50", "  braces: batten 47 x 50\n  posts: post 70 x 95")
                .replace(
                        "\nsections:",
                        "\nsections:\n  - {name: post 70 x 95, thickness: 70 mm, width: 95 mm, species: larch}")
                .replaceFirst(
                        "    boards:", "    boards:\n      - {section: post 70 x 95, length: 3.0 m, price: 14.20}");
        Plan plan = ExamplePlans.plan(document.getBytes(StandardCharsets.UTF_8));
        List<Piece> ripped = plan.boxes().stream()
                .flatMap(box -> box.pieces().stream())
                .filter(piece -> piece.rip() != null)
                .toList();
        assertThat(ripped).isNotEmpty();
        everyPieceIsRebuilt(plan);
        assertThat(CutFromPaper.of(plan).cut(plan.cutting())).isGreaterThan(20);
        String text = String.join(
                " ",
                PrintedBlocks.of(PackPages.pdf(plan, Comparison.NONE, PaperSize.A4, Optional.empty())).stream()
                        .map(PrintedBlocks.Block::text)
                        .toList());
        for (Piece piece : ripped) {
            assertThat(text).contains("Ripped: " + piece.label() + ": tilt the blade");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fence-to-shed", "terrace-corner", "sloping-border", "garden-bend", "behind-the-shed"})
    void everyPieceIsRebuiltFromTheTextOfThePdf(String example) throws IOException {
        everyPieceIsRebuilt(ExamplePlans.of(example));
    }

    private static void everyPieceIsRebuilt(Plan plan) throws IOException {
        List<PrintedBench> pages = printed(plan);
        int pieces = 0;
        for (Box box : plan.boxes()) {
            pieces += new RebuiltBox(plan, pages, box).compared();
        }
        assertThat(pieces)
                .as("pieces of walls, uprights, ties, dividers and cappings")
                .isEqualTo(plan.boxes().stream()
                        .flatMap(box -> box.pieces().stream())
                        .filter(piece -> !ON_THE_FLOOR.contains(piece.role()))
                        .count());
    }

    private static List<PrintedBench> printed(Plan plan) throws IOException {
        return PrintedBench.of(PrintedBlocks.of(PackPages.pdf(plan, Comparison.NONE, PaperSize.A4, Optional.empty())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"patio-planter"})
    void everySlatBearerAndLegIsRebuiltFromTheTextOfThePdf(String example) throws IOException {
        Plan plan = ExamplePlans.of(example);
        List<PrintedBench> pages = printed(plan);
        int compared = 0;
        int notched = 0;
        for (Box box : plan.boxes()) {
            Map<String, Piece> pieces = new HashMap<>();
            box.pieces().forEach(piece -> pieces.put(piece.label(), piece));
            for (FloorBench floor : BoxBench.of(box, plan.garden().sections()).floors()) {
                PrintedBench page = pages.stream()
                        .filter(one -> one.title().equals("Floor of " + floor.planter())
                                || one.alike().contains(floor.planter()))
                        .findFirst()
                        .orElseThrow();
                assertThat(page.lines()).hasSameSizeAs(floor.strips());
                for (PrintedBench.Line line : page.lines()) {
                    Piece piece = pieces.get(
                            page.title().equals("Floor of " + floor.planter())
                                    ? line.labels().get(0)
                                    : line.labels().get(0).replaceFirst("^[^-]*", floor.planter()));
                    Point along = floor.face().rightwards();
                    notched += notches(line, piece, floor.face());
                    if (!piece.notches().isEmpty() && isNotchedAtItsEnds(line)) {
                        continue;
                    }
                    Point corner = RebuiltBox.at(floor.face().hook(), along, line.fromMm(), line.bottomMm());
                    assertThat(RebuiltBox.nearest(piece, corner, along))
                            .as(line.toString())
                            .isLessThanOrEqualTo(RebuiltBox.TO_1_MM);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(10);
        assertThat(notched)
                .isEqualTo(plan.boxes().stream()
                        .flatMap(box -> box.pieces().stream())
                        .mapToInt(piece -> piece.notches().size())
                        .sum())
                .isPositive();
    }

    private static boolean isNotchedAtItsEnds(PrintedBench.Line line) {
        return printedNotches(line).stream()
                .anyMatch(n -> n.fromMm() < 1 || n.toMm() > line.toMm() - line.fromMm() - 1);
    }

    /** As printed: along the slat from its left end. */
    private record PrintedNotch(String edge, double fromMm, double toMm, double depthMm) {}

    private static final Pattern NOTCH = Pattern.compile(
            "notch in the (near|far) edge from (L) to (L) of its left end, (L) deep".replace("L", PrintedBench.LENGTH));

    private static List<PrintedNotch> printedNotches(PrintedBench.Line line) {
        return NOTCH.matcher(line.notes())
                .results()
                .map(m -> {
                    double[] range = PrintedBench.range(m.group(2), m.group(3));
                    return new PrintedNotch(m.group(1), range[0], range[1], PrintedBench.mm(m.group(4)));
                })
                .toList();
    }

    /** Three printed figures make a place of a notch, each to 1/16 in or 1 mm. */
    private static final double NOTCH_MM = 2;

    /** Each notch that is printed is where the plan has taken wood out, and nowhere further; how many there are. */
    private static int notches(PrintedBench.Line line, Piece piece, WorkFace face) {
        List<PrintedNotch> printed = printedNotches(line);
        assertThat(printed).as(line.toString()).hasSameSizeAs(piece.notches());
        for (PrintedNotch notch : printed) {
            boolean isNear = notch.edge().equals("near");
            double edge = isNear ? line.bottomMm() : line.topMm();
            double inwards = isNear ? 1 : -1;
            for (double share : new double[] {0.05, 0.5, 0.95}) {
                double x = line.fromMm() + notch.fromMm() + share * (notch.toMm() - notch.fromMm());
                Point within =
                        RebuiltBox.at(face.hook(), face.rightwards(), x, edge + inwards * (notch.depthMm() - NOTCH_MM));
                Point beyond =
                        RebuiltBox.at(face.hook(), face.rightwards(), x, edge + inwards * (notch.depthMm() + NOTCH_MM));
                assertThat(piece.place().plan().contains(within, 0))
                        .as(line + " taken out")
                        .isFalse();
                assertThat(piece.place().plan().contains(beyond, 0))
                        .as(line + " left")
                        .isTrue();
            }
            for (double outside : new double[] {notch.fromMm() - NOTCH_MM, notch.toMm() + NOTCH_MM}) {
                if (outside > 0 && outside < line.toMm() - line.fromMm()) {
                    Point beside = RebuiltBox.at(
                            face.hook(), face.rightwards(), line.fromMm() + outside, edge + inwards * NOTCH_MM);
                    assertThat(piece.place().plan().contains(beside, 0))
                            .as(line + " beside")
                            .isTrue();
                }
            }
        }
        return printed.size();
    }
}
