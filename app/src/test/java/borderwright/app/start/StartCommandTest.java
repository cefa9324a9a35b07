package borderwright.app.start;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Outcome;
import borderwright.app.exit.ExitCode;
import borderwright.engine.measure.UnitSystem;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StartCommandTest {
    @TempDir
    private Path folder;

    static Stream<Arguments> kinds() {
        return Arrays.stream(GardenKind.values())
                .flatMap(kind -> Arrays.stream(UnitSystem.values()).map(units -> Arguments.of(kind, units)));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyKindHoldsAsItStandsWithEverythingPricedAndAProvenBasket(GardenKind kind, UnitSystem units)
            throws IOException {
        Path file = folder.resolve("new").resolve("garden.yaml");
        Path out = folder.resolve("out");

        Outcome started = units == UnitSystem.IMPERIAL
                ? Outcome.of("start", kind.word(), "--imperial", "--out", file.toString())
                : Outcome.of("start", kind.word(), "--out", file.toString());
        Outcome planned = Outcome.of("plan", file.toString(), "--out", out.toString(), "--quiet");

        assertThat(started.err()).isEmpty();
        assertThat(started.code()).isEqualTo(ExitCode.DONE);
        assertThat(planned.err()).isEmpty();
        assertThat(planned.out())
                .contains("Proven for the goods that suppliers list", "  in all ")
                .doesNotContain("  ! ", "not priced by anyone");
        assertThat(planned.code()).isEqualTo(ExitCode.DONE);
        JsonNode plan = new ObjectMapper().readTree(out.resolve("plan.json").toFile());
        assertThat(plan.at("/shortfalls").isArray()).isTrue();
        assertThat(plan.at("/shortfalls")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyKindSaysThatItIsInventedAndWhatToChangeFirst(GardenKind kind, UnitSystem units) {
        String document = new String(kind.document(units), StandardCharsets.UTF_8);

        assertThat(document)
                .contains(
                        "\ninvented: yes",
                        "#  1. ",
                        "#  4. ",
                        "units: " + units.name().toLowerCase(Locale.ROOT));
        assertThat(document.lines().filter(line -> line.length() > 130)).isEmpty();
    }

    @Test
    void aFileThatExistsIsLeftAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "mine");

        Outcome outcome = Outcome.of("start", "bend", "--out", file.toString());

        assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(outcome.err().strip())
                .isEqualTo("borderwright: There is something at " + file
                        + " already; it was left alone. Give another name for --out.");
        assertThat(file).hasContent("mine");
    }

    @Test
    void aFolderInThePlaceOfTheFileIsLeftAlone() {
        Outcome outcome = Outcome.of("start", "bend", "--out", folder.toString());

        assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aKindThatIsMisspeltGetsTheNearestOne() {
        Outcome outcome =
                Outcome.of("start", "bent", "--out", folder.resolve("a.yaml").toString());

        assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(outcome.err()).contains("`bent`", "Perhaps you meant `bend`.", "straight", "roof");
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(strings = {"greenhouse", ""})
    void aKindLikeNoneGetsAllOfThem(String kind) {
        Outcome outcome =
                Outcome.of("start", kind, "--out", folder.resolve("a.yaml").toString());

        assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(outcome.err())
                .contains("straight", "bend", "island", "terrace", "roof")
                .doesNotContain("Perhaps");
        assertThat(folder).isEmptyDirectory();
    }
}
