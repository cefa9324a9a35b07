package borderwright.engine.garden.checks;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.given.GivenBoardPrice;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSupplier;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GardenChecksTest {
    private static final Length M = Length.ofMm(1000);
    private static final GivenMeasure.GivenTapeLength A_B = tape("A", "B");

    private static GivenMeasure.GivenTapeLength tape(String... names) {
        return GivenMeasure.GivenTapeLength.of(Names.of(names), M);
    }

    private static GivenSurvey survey(Names corners, boolean strip, GivenMeasure... measures) {
        return GivenSurvey.builder(corners)
                .stripWidth(strip ? M : null)
                .measures(List.of(measures))
                .build();
    }

    private static GivenRun run(String name, Names along, Integer planters, LengthRange length) {
        LengthRange half = LengthRange.of(Length.ofMm(500));
        return GivenRun.builder(name, along, half, half)
                .planters(planters)
                .length(length)
                .build();
    }

    private static GivenSection section(String name) {
        return GivenSection.builder(name, Length.ofMm(25), Length.ofMm(150)).build();
    }

    private static GivenBuild walls(String walls) {
        return GivenBuild.builder(walls).build();
    }

    private static GivenGarden garden(GivenSurvey survey, List<GivenRun> runs, List<GivenBoardPrice> boards) {
        GivenSupplier alder = GivenSupplier.builder("Alder").boards(boards).build();
        return GivenGarden.builder("Test", "GBP", survey, walls("larch"))
                .runs(runs)
                .sections(section("larch"))
                .suppliers(alder)
                .build();
    }

    private static List<String> said(GivenSurvey survey, GivenRun... runs) {
        return said(garden(survey, List.of(runs), List.of()));
    }

    private static List<String> said(GivenGarden garden) {
        return GardenChecks.check(garden).stream()
                .map(p -> p.where() + ": " + p.sentence(English.METRIC))
                .toList();
    }

    private static final GivenSurvey STRIP = survey(Names.of("A", "B"), true, A_B);
    private static final GivenSurvey RING = survey(Names.of("A", "B", "C", "D"), false, A_B);

    @Test
    void aSoundGardenHasNoFaults() {
        assertThat(said(STRIP, run("r", Names.of("A", "B"), 4, null))).isEmpty();
        assertThat(said(RING, run("r", Names.of("D", "A", "B"), 4, null))).isEmpty();
    }

    @Nested
    class Borders {
        @Test
        void aRingHasThreeCornersAStripTwo() {
            assertThat(said(survey(Names.of("A", "B"), false)))
                    .containsExactly("survey.corners: A closed border has at least 3 corners; 2 are named."
                            + " Name them all, or give `strip width` where the border lies along one line.");
            assertThat(said(survey(Names.of("A"), true)))
                    .containsExactly("survey.corners: A strip has at least 2 corners; 1 is named."
                            + " Name both ends of the line.");
        }

        @Test
        void theLastCornerOfARingMeetsTheFirstButNotThatOfAStrip() {
            GivenSurvey strip = survey(Names.of("A", "B", "C"), true);
            assertThat(said(strip, run("r", Names.of("C", "A"), 4, null)))
                    .containsExactly("runs[0].along: The border has no edge from `C` to `A`."
                            + " Its edges join neighbours in A B C.");
            assertThat(said(survey(Names.of("A", "B", "C"), false), run("r", Names.of("C", "A"), 4, null)))
                    .isEmpty();
        }

        @Test
        void aRunMayFollowTheBorderBackwardsButNoEdgeTwice() {
            assertThat(said(RING, run("r", Names.of("C", "B", "A"), 4, null))).isEmpty();
            assertThat(said(RING, run("r", Names.of("A", "B", "A"), 4, null)))
                    .containsExactly("runs[0].along: The run follows the edge `B A` twice. Follow each edge once.");
        }
    }

    @Nested
    class Points {
        @Test
        void aPointIsKnownByAnOffsetAChainOrTwoMeasures() {
            GivenMeasure offset = GivenMeasure.GivenBaselineOffset.of("P", Names.of("A", "B"), M, M);
            GivenMeasure chain = GivenMeasure.GivenTapeChain.of(Names.of("A", "Q", "B"), List.of(M, M));
            GivenMeasure angle =
                    new GivenMeasure.GivenGaugeAngle(Names.of("A", "R", "B"), Angle.ofDegrees(90), null, null);
            GivenMeasure level = new GivenMeasure.GivenLevelReading("Q", M, null, null);
            assertThat(said(survey(
                            Names.of("A", "B"), true, offset, chain, angle, tape("A", "R"), level, tape("P", "Q"))))
                    .isEmpty();
        }

        @Test
        void aPointThatOneMeasureNamesIsASlip() {
            assertThat(said(survey(Names.of("fence", "shed"), true, tape("fence", "shef"))))
                    .containsExactly(
                            "survey.measures[0].tape: The point `shef` is named only here, so nothing fixes its"
                                    + " place. Perhaps you meant `shed`.");
        }

        @Test
        void aChainHasOneLengthFewerThanPoints() {
            GivenMeasure chain = GivenMeasure.GivenTapeChain.of(Names.of("A", "B"), List.of(M, M));
            assertThat(said(survey(Names.of("A", "B"), true, chain)))
                    .containsExactly("survey.measures[0].lengths: A chain of 2 points has 1 length; 2 are given."
                            + " Write one length between each two neighbours.");
        }
    }

    @Nested
    class Prices {
        private List<String> saidOf(Length length, List<Length> lengths, String price, String perMetre) {
            GivenBoardPrice board = GivenBoardPrice.builder("larch")
                    .length(length)
                    .lengths(lengths)
                    .price(price == null ? null : new BigDecimal(price))
                    .perMetre(perMetre == null ? null : new BigDecimal(perMetre))
                    .build();
            return said(garden(STRIP, List.of(), List.of(board)));
        }

        @Test
        void aWholeBoardHasItsLengthAndAPriceByLengthTheLengthsSold() {
            assertThat(saidOf(M, List.of(), "9.60", null)).isEmpty();
            assertThat(saidOf(null, List.of(M), null, "2.0525")).isEmpty();
            assertThat(saidOf(M, List.of(M), "9.60", null)).hasSize(1);
            assertThat(saidOf(M, List.of(), null, "2.05")).hasSize(1);
            assertThat(saidOf(null, List.of(), null, null)).hasSize(1);
        }

        @Test
        void aPriceHasNoMoreDecimalsThanItsCurrency() {
            assertThat(saidOf(M, List.of(), "9.600", null)).isEmpty();
            assertThat(saidOf(M, List.of(), "9.605", null))
                    .containsExactly("suppliers[0].boards[0].price: 9.605 has more decimals than GBP, which has 2."
                            + " Round it to what is paid.");
        }
    }

    @Nested
    class Blanks {
        @Test
        void aBlankNameMayBeAnyNameSoNothingIsSaidOfIt() {
            assertThat(said(survey(Names.of(), false), run("", Names.of("X", "Y"), 4, null)))
                    .isEmpty();
            GivenGarden blankSection = GivenGarden.builder("Test", "", STRIP, walls("oak"))
                    .sections(section(""))
                    .build();
            assertThat(said(blankSection)).isEmpty();
        }
    }

    @Nested
    class Limits {
        @Test
        void noMoreThanFiveHundredFaultsAreGathered() {
            List<GivenRun> runs =
                    new ArrayList<>(Collections.nCopies(5_000, run("r", Names.of("A", "X"), 1, LengthRange.of(M))));
            List<Problem> found = GardenChecks.check(garden(STRIP, runs, List.of()));
            assertThat(found).hasSize(GardenChecks.MOST_FAULTS);
        }
    }

    @Test
    void everyCurrencyOfTheIsoListIsTakenAndNoOther() {
        Stream.of("GBP", "USD", "EUR", "JPY", "KWD")
                .forEach(code -> assertThat(said(withCurrency(code))).isEmpty());
        assertThat(said(withCurrency("gbp")))
                .containsExactly(
                        "currency: `gbp` is not a currency of ISO 4217. Write its three letters, such as `GBP`,"
                                + " `EUR` or `USD`. Perhaps you meant `GBP`.");
    }

    private static GivenGarden withCurrency(String code) {
        return GivenGarden.builder("Test", code, STRIP, walls("larch"))
                .sections(section("larch"))
                .build();
    }
}
