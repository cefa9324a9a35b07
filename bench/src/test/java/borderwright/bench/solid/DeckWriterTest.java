package borderwright.bench.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.StrengthResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.StrengthTerms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The deck of one box, read back from its text. The package itself is not needed. */
class DeckWriterTest {
    private static final double SOIL_N_PER_MM3 = 16e-6;
    private static final double AT_REST = 0.5;

    private static SectionSpec section(String name, double thicknessMm, double widthMm) {
        return WoodResolver.section(GivenSection.builder(name, Length.ofMm(thicknessMm), Length.ofMm(widthMm))
                .build());
    }

    private static SolidBox solid(Drawing drawing) {
        List<SectionSpec> sections = List.of(section("board", 25, 150), section("batten", 47, 50));
        SidePlan side = SidePlan.free(SidePlan.Role.FRONT, EdgeKind.OPEN, 0);
        FootprintPlan plan = FootprintPlan.builder()
                .name("P")
                .run("run")
                .outline(Ring.rectangle(0, 0, 1200, 600))
                .sides(List.of(side, side, side, side))
                .planters(List.of("P"))
                .bedMm(0)
                .heightMm(450)
                .build();
        Box box = BoxBuilder.build(
                plan,
                BuildResolver.of("board", "batten"),
                new BuildMeans(sections, List.of(), Map.of("board", 3600.0), UnitSystem.METRIC),
                new BracingScheme(1e5, 600, 75, List.of()));
        StrengthTerms terms = StrengthTerms.of(
                StrengthResolver.usual(UnitSystem.METRIC),
                SoilResolver.usual(),
                GroundResolver.usual(),
                sections,
                Origins.NONE);
        return new SolidBox(box, terms, Mesh.USUAL, drawing);
    }

    /** Lines under each keyword, in order. */
    private static Map<String, List<String>> read(String deck) {
        Map<String, List<String>> blocks = new HashMap<>();
        String keyword = "";
        for (String line : deck.split("\n", -1)) {
            if (line.startsWith("*")) {
                keyword = line;
            } else if (!line.isEmpty()) {
                blocks.computeIfAbsent(keyword, k -> new ArrayList<>()).add(line);
            }
        }
        return blocks;
    }

    @ParameterizedTest
    @EnumSource
    void everyBrickIsWholeAndTogetherTheyAreAsLargeAsThePieces(Drawing drawing) {
        SolidBox solid = solid(drawing);
        Map<String, List<String>> deck = read(DeckWriter.write(solid, new States(solid.links)));
        Map<String, double[]> nodes = new HashMap<>();
        deck.get("*NODE").forEach(line -> nodes.put(line.split(",", 2)[0], numbers(line.split(",", 2)[1])));
        double volume = 0;
        Set<String> bricks = new HashSet<>();
        for (Map.Entry<String, List<String>> block : deck.entrySet()) {
            if (block.getKey().startsWith("*ELEMENT,TYPE=C3D8I")) {
                for (String line : block.getValue()) {
                    String[] cells = line.split(",", -1);
                    assertThat(cells).hasSize(9);
                    assertThat(bricks.add(cells[0])).as("number of a brick").isTrue();
                    volume += volume(nodes, cells);
                }
            }
        }
        double pieces = solid.box.pieces().stream()
                .filter(piece -> piece.role() != Piece.Role.CAPPING)
                .mapToDouble(piece -> piece.place().volumeMm3())
                .sum();
        assertThat(bricks).hasSize(solid.bricks());
        assertThat(nodes).hasSize(solid.nodes());
        assertThat(volume).isCloseTo(pieces, within(1e-6 * pieces));
    }

    private static double[] numbers(String line) {
        String[] cells = line.split(",", -1);
        double[] numbers = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            numbers[i] = Double.parseDouble(cells[i]);
        }
        return numbers;
    }

    /** Of an upright prism: the area of its lower face, anticlockwise, times its height. */
    private static double volume(Map<String, double[]> nodes, String[] brick) {
        double twice = 0;
        for (int i = 0; i < 4; i++) {
            double[] a = nodes.get(brick[1 + i]);
            double[] b = nodes.get(brick[1 + (i + 1) % 4]);
            twice += a[0] * b[1] - a[1] * b[0];
        }
        return twice / 2 * (nodes.get(brick[5])[2] - nodes.get(brick[1])[2]);
    }

    @ParameterizedTest
    @EnumSource
    void aBoxThatMovesAsOneStretchesNothingInside(Drawing drawing) {
        SolidBox solid = solid(drawing);
        assertThat(solid.links).isNotEmpty();
        for (Link link : solid.links) {
            for (int axis = 1; axis <= 3; axis++) {
                int one = axis;
                double sum = link.terms().stream()
                        .filter(term -> term.axis() == one)
                        .mapToDouble(Link.Term::factor)
                        .sum();
                boolean across = link.kind() == Link.Kind.FILL && axis < 3 && Math.abs(sum) > 0.5;
                assertThat(Math.abs(sum)).as(link.kind() + " " + axis).isCloseTo(across ? 1 : 0, within(1e-9));
            }
        }
    }

    /** Earth at rest: K0 gamma h2 / 2 for each mm of wall (Das, Principles of Foundation Engineering; from memory). */
    @ParameterizedTest
    @EnumSource
    void theFillPushesAsEarthAtRest(Drawing drawing) {
        SolidBox solid = solid(drawing);
        Map<String, List<String>> deck = read(DeckWriter.write(solid, new States(solid.links)));
        double deep = 450 - solid.terms.fill().belowRimMm();
        double wanted = AT_REST * SOIL_N_PER_MM3 * deep * deep / 2 * 2 * (1150 + 550);
        Map<Integer, Double> areas = areas(solid);
        double sum = 0;
        for (String line : deck.get("*DLOAD")) {
            String[] cells = line.split(",", -1);
            assertThat(cells[1]).isEqualTo("P5");
            sum += Double.parseDouble(cells[2]) * areas.get(Integer.valueOf(cells[0]));
        }
        assertThat(sum).isCloseTo(wanted, within(1e-6 * wanted));
    }

    /** Of the inner face of each brick that has one, mm2. */
    private static Map<Integer, Double> areas(SolidBox solid) {
        Map<Integer, Double> areas = new HashMap<>();
        for (Block block : solid.blocks) {
            for (int i = 0; i < block.along; i++) {
                double length = block.plan(i, block.across).distanceMm(block.plan(i + 1, block.across));
                for (int k = 0; k < block.up; k++) {
                    areas.put(
                            block.brick(i, block.across - 1, k), length * (block.heightMm(k + 1) - block.heightMm(k)));
                }
            }
        }
        return areas;
    }
}
