package borderwright.engine.buildup;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.EndCut.LongPoint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random boxes, put together from their pieces. */
class BoxClosesTest {
    private static final int BOXES_A_SEED = 100;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 22, 33, 44, 55, 66, 77, 88})
    void piecesFillTheWallsAndNothingOverlaps(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int built = 0;
        for (int i = 0; i < BOXES_A_SEED; i++) {
            Ring ring = Footprints.random(random);
            BuildSpec rules = rules(random);
            double wall = rules.walls().equals(Footprints.LARCH.name()) ? 25 : 47;
            BuildMeans means = means(random);
            FootprintPlan plan = plan(ring, random);
            Box box = BoxBuilder.build(plan, rules, means);
            if (box.pieces().isEmpty()) {
                assertThat(box.unmet()).extracting("code").contains("walls-meet");
                continue;
            }
            built++;
            assertThat(PutTogether.faults(box, Footprints.SECTIONS, wall, i % 10 == 0))
                    .as("seed %s box %s: %s", seed, i, plan)
                    .isEmpty();
            assertThat(box.pieces()).extracting(Piece::label).doesNotHaveDuplicates();
        }
        assertThat(built).isGreaterThan(BOXES_A_SEED * 8 / 10);
    }

    private static FootprintPlan plan(Ring ring, SplittableRandom random) {
        List<DividerLine> dividers = random.nextInt(3) == 0 ? List.of() : Footprints.dividers(ring, random);
        double platform = random.nextInt(4) == 0 ? random.nextDouble(60, 250) : 0;
        return Footprints.plan(ring, dividers, random.nextDouble(140, 700), platform, random.nextInt(3) == 0);
    }

    private static BuildSpec rules(SplittableRandom random) {
        CornerStyle style = random.nextBoolean() ? CornerStyle.LAPPED : CornerStyle.MITRED;
        return switch (random.nextInt(4)) {
            case 0 -> Footprints.rules(Footprints.LARCH.name(), Footprints.POST.name(), style);
            case 1 -> Footprints.rules(Footprints.LARCH.name(), null, style);
            case 2 -> Footprints.rules(Footprints.TREATED.name(), Footprints.TREATED_BATTEN.name(), style);
            default -> Footprints.rules(Footprints.LARCH.name(), Footprints.BATTEN.name(), style);
        };
    }

    private static BuildMeans means(SplittableRandom random) {
        double tilt = random.nextInt(4) == 0 ? random.nextDouble(0, 60) : 45;
        double longest = random.nextDouble(1700, 4800);
        return Footprints.means(tilt, Map.of(Footprints.LARCH.name(), longest, Footprints.TREATED.name(), longest));
    }

    /** Two courses hold each lap once either way, so a mirrored box has the same boards with left and right changed. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {3, 5, 7})
    void theMirroredBoxHasTheMirroredCuts(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            Ring ring = Footprints.random(random);
            BuildSpec rules = rules(random);
            BuildMeans means = Footprints.means(45, Map.of());
            double height = rules.walls().equals(Footprints.LARCH.name()) ? 300 : 400;
            Box box = BoxBuilder.build(Footprints.plan(ring, height), rules, means);
            Box mirrored = BoxBuilder.build(Footprints.plan(Footprints.mirrored(ring), height), rules, means);
            assertThat(boards(mirrored, true))
                    .as("seed %s box %s: %s", seed, i, ring)
                    .isEqualTo(boards(box, false));
        }
    }

    private static Map<String, Integer> boards(Box box, boolean turned) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Piece piece : box.pieces()) {
            if (piece.role() == Piece.Role.WALL) {
                EndCut left = turned ? piece.right() : piece.left();
                EndCut right = turned ? piece.left() : piece.right();
                String board = Math.round(piece.length().mm() * 10) + " mm/10 " + cut(left) + " " + cut(right);
                counts.merge(board, 1, Integer::sum);
            }
        }
        return counts;
    }

    private static String cut(EndCut cut) {
        return cut.longPoint() == LongPoint.NONE
                ? "square"
                : Math.round(cut.tiltDeg() * 100) + "/100 deg " + cut.longPoint();
    }
}
