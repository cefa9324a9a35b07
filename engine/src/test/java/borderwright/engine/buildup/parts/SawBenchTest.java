package borderwright.engine.buildup.parts;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SawBenchTest {
    private static final SectionSpec BOARD = WoodResolver.section("larch 25 x 150", Length.ofMm(25), Length.ofMm(150));
    /** 50 x 200 at 700 kg/m3: 7 kg a metre. */
    private static final SectionSpec BEAM = WoodResolver.section("beam 50 x 200", Length.ofMm(50), Length.ofMm(200));

    private static final SawSpec TABLE = saw("table saw", SawKind.TABLE_SAW, true);
    private static final SawSpec MITRE = saw("mitre saw", SawKind.MITRE_SAW, true);
    private static final SawSpec CIRCULAR = saw("circular saw", SawKind.CIRCULAR_SAW, false);
    private static final SawSpec HAND = saw("handsaw", SawKind.HANDSAW, false);

    private static SawSpec saw(String name, SawKind kind, boolean lengthStop) {
        return WoodResolver.saw(
                GivenSaw.builder(name, kind).lengthStop(lengthStop).build());
    }

    private static SawBench.How square(double mm, SectionSpec section, SawSpec... saws) {
        return new SawBench(List.of(saws)).how(new SawBench.Cut(0, 0, section, mm, mm));
    }

    @Test
    void aLongBoardGoesToNoTableSaw() {
        assertThat(square(3563.8, BOARD, TABLE, MITRE).saw()).isEqualTo(MITRE);
        assertThat(square(3563.8, BOARD, TABLE, CIRCULAR).saw()).isEqualTo(CIRCULAR);
        assertThat(square(3563.8, BOARD, TABLE, HAND).saw()).isEqualTo(HAND);
    }

    @Test
    void aLongPieceThatNoStopReachesHasTheSawBroughtToIt() {
        assertThat(square(3563.8, BOARD, TABLE, MITRE, CIRCULAR, HAND).saw()).isEqualTo(CIRCULAR);
        assertThat(square(2400, BOARD, TABLE, MITRE, CIRCULAR, HAND).saw()).isEqualTo(MITRE);
    }

    @Test
    void aHeavyPieceIsNotLiftedOnToASled() {
        assertThat(square(1400, BEAM, TABLE).saw()).isEqualTo(TABLE);
        assertThat(square(1450, BEAM, TABLE).saw()).isNull();
        assertThat(English.METRIC.text(square(1450, BEAM, TABLE).words()))
                .startsWith("10.2 kg heavy, more than table saw can hold (10.0 kg): ");
        assertThat(square(1450, BEAM, TABLE, CIRCULAR).saw()).isEqualTo(CIRCULAR);
    }

    @Test
    void whereNoSawServesItSaysWhatWould() {
        assertThat(English.METRIC.text(square(3563.8, BOARD, TABLE).words()))
                .isEqualTo(
                        "3563.8 mm long, more than table saw can hold (1500 mm): cut it by hand, or with a circular saw"
                                + " along a square, where it lies");
    }

    /** Saws and cuts of every kind: the answer is the same however the saws are listed. */
    @Test
    void theOrderOfListingChangesNothing() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<SawSpec> saws = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                saws.add(anySaw("saw " + i, random));
            }
            List<SawSpec> shuffled = new ArrayList<>(saws);
            Collections.shuffle(shuffled, random);
            SawBench bench = new SawBench(saws);
            SawBench other = new SawBench(shuffled);
            for (int i = 0; i < 50; i++) {
                double longMm = 50 + random.nextInt(5000);
                SawBench.Cut cut = new SawBench.Cut(
                        random.nextBoolean() ? 0 : random.nextInt(60),
                        random.nextBoolean() ? 0 : random.nextInt(70),
                        random.nextBoolean() ? BOARD : BEAM,
                        longMm - random.nextInt(50),
                        longMm);
                assertThat(other.how(cut)).as("seed %s, %s", seed, cut).isEqualTo(bench.how(cut));
            }
        }
    }

    private static SawSpec anySaw(String name, Random random) {
        SawKind[] kinds = SawKind.values();
        return WoodResolver.saw(GivenSaw.builder(name, kinds[random.nextInt(kinds.length)])
                .tilt(Angle.ofDegrees(random.nextInt(50)))
                .mitre(Angle.ofDegrees(random.nextInt(60)))
                .widestBoard(Length.ofMm(140 + random.nextInt(200)))
                .longestPiece(Length.ofMm(500 + random.nextInt(4000)))
                .lengthStop(random.nextBoolean())
                .build());
    }
}
