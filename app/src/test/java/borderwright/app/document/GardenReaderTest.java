package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.given.GardenDocument;
import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.vocabulary.FaceOut;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

class GardenReaderTest {
    static final String SMALL = Documents.resource("small.yaml");

    static List<Path> examples() {
        return Documents.examples();
    }

    private static GardenDocument document(String text) {
        DocumentAnswer answer = Documents.read(text);
        assertThat(answer).isInstanceOf(DocumentAnswer.Sound.class);
        return ((DocumentAnswer.Sound) answer).document();
    }

    private static GivenGarden garden(String text) {
        return document(text).garden();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsSound(Path example) throws IOException {
        assertThat(Documents.faults(Files.readAllBytes(example))).isEmpty();
    }

    private static GivenSection section(GivenGarden garden, String name) {
        return garden.sections().stream()
                .filter(section -> section.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Nested
    class Values {
        private final GivenGarden garden = garden(Documents.everyKey());

        @Test
        void textsNumbersChoicesAndDates() {
            assertThat(garden.name()).isEqualTo("Every key");
            assertThat(garden.units()).isEqualTo(UnitSystem.METRIC);
            assertThat(garden.budget()).isEqualByComparingTo("1420.5");
            assertThat(garden.build().faceOut()).isEqualTo(FaceOut.BEST_OUT);
            assertThat(section(garden, "batten").grade()).isEqualTo("24");
            assertThat(garden.suppliers().get(0).quoted()).isEqualTo(LocalDate.of(2026, 3, 2));
            assertThat(garden.suppliers().get(0).taxIncluded()).isFalse();
            assertThat(garden.suppliers().get(0).boards().get(1).perMetre()).isEqualByComparingTo("2.0525");
            assertThat(garden.cutting().keepWhole()).isEqualTo(1);
        }

        @Test
        void lengthsToTheTickInAnyUnit() {
            assertThat(garden.runs().get(0).endGap()).isEqualTo(new Length(4064));
            assertThat(garden.runs().get(1).height().from()).isEqualTo(new Length(18 * 8128));
            assertThat(garden.build().tieSpacing()).isEqualTo(Length.ZERO);
            assertThat(garden.suppliers().get(0).boards().get(1).lengths())
                    .containsExactly(new Length(3000 * 320), new Length(144 * 8128));
        }

        @Test
        void oneLengthOrARange() {
            GivenRun run = garden.runs().get(0);
            assertThat(run.frontToBack().from()).isEqualTo(Length.ofMm(500));
            assertThat(run.frontToBack().to()).isEqualTo(Length.ofMm(600));
            assertThat(run.height().isFixed()).isTrue();
        }

        @Test
        void namesAsATextOrAList() {
            assertThat(garden.survey().corners()).isEqualTo(Names.of("A", "B", "C", "D"));
            assertThat(garden.survey().edges().get(2).edge()).isEqualTo(Names.of("C", "D"));
        }

        @Test
        void eachMeasureByTheKeyThatTellsItsKind() {
            assertThat(garden.survey().measures())
                    .extracting(m -> (Object) m.getClass())
                    .containsExactly(
                            GivenMeasure.GivenTapeLength.class,
                            GivenMeasure.GivenTapeLength.class,
                            GivenMeasure.GivenGaugeAngle.class,
                            GivenMeasure.GivenBaselineOffset.class,
                            GivenMeasure.GivenTapeChain.class,
                            GivenMeasure.GivenLevelReading.class,
                            GivenMeasure.GivenRise.class,
                            GivenMeasure.GivenWallLean.class,
                            GivenArc.class);
            assertThat(garden.survey().measures().get(0).with()).isEqualTo(Instrument.LONG_TAPE);
            assertThat(((GivenMeasure.GivenTapeLength)
                                    garden.survey().measures().get(0))
                            .held())
                    .isEqualTo(TapeHeld.ALONG_THE_GROUND);
        }

        @Test
        void whatIsLeftOutIsAbsentOrEmpty() {
            GivenGarden small = garden(SMALL);
            assertThat(small.budget()).isNull();
            assertThat(small.owned()).isEmpty();
            assertThat(small.runs().get(0).length()).isNull();
            assertThat(small.suppliers().get(0).goods()).isEmpty();
        }
    }

    @Nested
    class Yaml {
        /** YAML 1.2.2, 10.3: in the core schema yes, no, on, off are texts and 010 is ten. */
        @Test
        void wordsThatOlderYamlTurnedIntoSomethingElseStayTexts() {
            assertThat(garden(SMALL.replace("name: Small", "name: no")).name()).isEqualTo("no");
            assertThat(garden(SMALL.replace("name: Small", "name: 2026-03-02")).name())
                    .isEqualTo("2026-03-02");
            assertThat(garden(SMALL.replace("planters: 4", "planters: 010"))
                            .runs()
                            .get(0)
                            .planters())
                    .isEqualTo(10);
            assertThat(garden(SMALL.replace("corners: A B", "corners: Y N").replace("A B", "Y N"))
                            .survey()
                            .corners())
                    .isEqualTo(Names.of("Y", "N"));
        }

        @ParameterizedTest
        @ValueSource(strings = {"yes", "true", "True", "TRUE", "\"yes\"", "'true'"})
        void yesInEverySpelling(String yes) {
            assertThat(section(garden(SMALL.replace("width: 150 mm", "width: 150 mm, treated: " + yes)), "larch")
                            .treated())
                    .isTrue();
        }

        @ParameterizedTest
        @ValueSource(strings = {"15' 9\"", "\"15' 9\\\"\"", "'15'' 9\"'", "15′ 9″", "189 in", "15' 9"})
        void feetAndInchesWithAndWithoutQuotes(String length) {
            GivenGarden read = garden(SMALL.replace("4.8 m", length));
            assertThat(((GivenMeasure.GivenTapeLength) read.survey().measures().get(0)).reads())
                    .isEqualTo(new Length(189 * 8128));
        }

        @Test
        void aByteOrderMarkAndWindowsLineEndsDoNoHarm() {
            assertThat(garden("\ufeff" + SMALL.replace("\n", "\r\n"))).isEqualTo(garden(SMALL));
        }

        @Test
        void aCharacterOfTwoUnitsMayStandAnywhere() {
            for (int before = 1000; before < 1040; before++) {
                assertThat(Documents.faults("# " + "x".repeat(before) + "🌱\n" + SMALL))
                        .isEmpty();
            }
        }

        @Test
        void numbersMayComeWithAnExponentAsProgramsWriteThem() {
            assertThat(garden(SMALL.replace("currency: GBP", "currency: GBP\nbudget: 4.2E+2"))
                            .budget())
                    .isEqualTo(new BigDecimal("420"));
        }
    }

    @Nested
    class Json {
        @Test
        void theSameGardenInJsonIsTheSameGarden() throws IOException {
            Object loaded = new Load(
                            LoadSettings.builder().setSchema(new CoreSchema()).build())
                    .loadFromString(Documents.everyKey());
            ObjectMapper mapper = new ObjectMapper();
            GardenDocument yaml = document(Documents.everyKey());
            assertThat(document(mapper.writeValueAsString(loaded))).isEqualTo(yaml);
            String tabs = mapper.writerWithDefaultPrettyPrinter()
                    .writeValueAsString(loaded)
                    .replace("  ", "\t");
            assertThat(document(tabs)).isEqualTo(yaml);
        }

        @Test
        void escapesAreRead() {
            String json = "{\"name\": \"H\\u00fctte \\/ \\ud83c\\udf31 \\\"x\\\"\", \"currency\": \"EUR\","
                    + " \"survey\": {\"corners\": \"A B C\"}, \"build\": {\"walls\": \"w\"},"
                    + " \"sections\": [{\"name\": \"w\", \"thickness\": \"1\\\"\", \"width\": \"15 cm\"}]}";
            assertThat(garden(json).name()).isEqualTo("Hütte / 🌱 \"x\"");
        }
    }

    @Nested
    class Variants {
        private final GardenDocument every = document(Documents.everyKey());

        @Test
        void aVariantIsAWholeGarden() {
            GardenDocument.Variant variant = every.variants().get(0);
            assertThat(variant.name()).isEqualTo("treated, one planter less");
            assertThat(variant.garden().build().walls()).isEqualTo("treated");
            assertThat(variant.garden().build().slatGap()).isEqualTo(Length.ofMm(12));
            assertThat(variant.garden().runs()).hasSize(3);
            assertThat(variant.garden().runs().get(0).planters()).isEqualTo(7);
            assertThat(variant.garden().runs().get(0).frontToBack())
                    .isEqualTo(every.garden().runs().get(0).frontToBack());
            assertThat(variant.garden().sections())
                    .extracting("name")
                    .containsExactly("larch 25 x 150", "batten", "treated");
            assertThat(variant.garden().suppliers()).isEqualTo(every.garden().suppliers());
        }

        @Test
        void nothingTakesAKeyAway() {
            assertThat(every.variants().get(0).garden().about()).isNull();
        }

        @Test
        void whatDiffersIsListedInTheOrderWrittenAndWhatIsTheSameIsNot() {
            // `posts: batten` is what the garden says already
            assertThat(every.variants().get(0).changed())
                    .containsExactly("about", "runs[0].planters", "sections[2]", "build.walls");
        }

        @Test
        void measuresAreReplacedWhole() {
            String variant = SMALL
                    + "variants:\n  - name: again\n    changes:\n      survey: {measures: [{tape: B A, reads: 4.81 m}]}\n";
            assertThat(document(variant).variants().get(0).garden().survey().measures())
                    .singleElement()
                    .isInstanceOf(GivenMeasure.GivenTapeLength.class);
        }

        @Test
        void aFaultOfTheGardenIsSaidOnceAndNotAgainForEachVariant() {
            String faulty = SMALL.replace("GBP", "GPB")
                    + "variants:\n  - {name: a, changes: {budget: 1}}\n  - {name: b, changes: {budget: 2}}\n";
            assertThat(Documents.faults(faulty)).hasSize(1);
        }
    }

    @Test
    void faultsArePrintedOneToALine() {
        assertThat(Documents.faults("name: a\n".getBytes(StandardCharsets.UTF_8)))
                .allMatch(line -> line.matches("garden\\.yaml:\\d+:\\d+: (.+: )?.+\\."));
    }
}
