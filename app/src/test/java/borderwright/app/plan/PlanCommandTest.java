package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Outcome;
import borderwright.app.exit.ExitCode;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The main job end to end: a garden document in, a folder of files out. */
class PlanCommandTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final List<String> FILES = List.of(
            "plan.json",
            "cutting.csv",
            "shopping.csv",
            "layout.svg",
            "model.glb",
            "pack.pdf",
            "working.pdf",
            "labels.pdf");

    /** Examples whose measures disagree on purpose. */
    private static final List<String> PLANTED =
            List.of("behind-the-shed.yaml", "fence-to-shed.yaml", "garden-bend.yaml", "patio-planter.yaml");

    /** Packs of examples, each made once by {@link #planned}. */
    @TempDir
    private static Path packs;

    private static final Map<String, Outcome> PLANNED = new HashMap<>();

    @TempDir
    private Path folder;

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleGivesTheWholePackAndLeavesNothingElseBehind(Path example) throws IOException {
        String name = example.getFileName().toString();

        Outcome outcome = planned(name);

        Path out = packs.resolve(name);
        assertThat(outcome.err()).isEmpty();
        JsonNode plan = new ObjectMapper().readTree(out.resolve("plan.json").toFile());
        assertThat(outcome.code()).isEqualTo(plan.at("/shortfalls").isEmpty() ? ExitCode.DONE : ExitCode.NOT_MET);
        List<String> expected = new ArrayList<>(FILES);
        if (plan.at("/garden/workshop/work").has("start")) {
            expected.add("build.ics");
        }
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(expected);
        }
        for (String file : expected) {
            assertThat(out.resolve(file)).isNotEmptyFile();
        }
        if (PLANTED.contains(name)) {
            assertThat(outcome.out()).contains("The measures disagree");
        }
        assertThat(outcome.out()).containsPattern("strength .*hold");
    }

    @Test
    void theFenceMeasuredTwiceIsFoundToDifferBy17Millimetres() throws IOException {
        planned("fence-to-shed.yaml");
        JsonNode plan = new ObjectMapper()
                .readTree(
                        packs.resolve("fence-to-shed.yaml").resolve("plan.json").toFile());

        JsonNode closing = plan.at("/survey/closings/0");
        assertThat(closing.toString()).contains("against 8 lengths");
        assertThat(Math.abs(closing.get("error_mm").asDouble()))
                .isEqualTo(17.0, org.assertj.core.data.Offset.offset(0.05));
        // One measure to spare: the pull and the eight lengths are all candidates, none is accused.
        assertThat(plan.at("/survey/suspects/named").asBoolean()).isFalse();
        assertThat(plan.at("/survey/suspects/candidates")).hasSizeGreaterThanOrEqualTo(9);
    }

    /** A level read 1.5 m off leaves a wall that the ground pushes over by any amount: told with figures, and no cure that is none. */
    @Test
    void groundThatNoWallHoldsBackIsNoFaultOfOurs() throws IOException {
        Path steep = folder.resolve("steep.yaml");
        Files.writeString(
                steep,
                Files.readString(ExamplePlans.file("terrace-corner"))
                        .replace("{level: C, reads: -5 mm}", "{level: C, reads: -1500 mm}"));
        Path out = folder.resolve("steep");

        Outcome outcome = Outcome.of("plan", steep.toString(), "--out", out.toString());

        assertThat(outcome.code()).as(outcome.err()).isEqualTo(ExitCode.NOT_MET);
        assertThat(outcome.out() + outcome.err())
                .contains("more than 999 %", "No bracing holds the ground back", "no wall is built the 2985 mm high")
                .doesNotContain("The cheapest bracing or change that holds");
        assertThat(Files.readString(out.resolve("plan.json"))).doesNotContain("Infinity", "NaN");
    }

    @Test
    void postsInTheGroundReachBelowTheBedAndTheirConcreteIsOnTheList() throws IOException {
        Path footed = folder.resolve("footed.yaml");
        Outcome.of("start", "straight", "--out", footed.toString());
        Files.writeString(footed, Files.readString(footed).replace("\nbuild:\n", "\nbuild:\n  post footing: 600 mm\n"));
        Path out = folder.resolve("footed");

        Outcome.of("plan", footed.toString(), "--out", out.toString());

        JsonNode box =
                new ObjectMapper().readTree(out.resolve("plan.json").toFile()).at("/boxes/0");
        int posts = 0;
        for (JsonNode piece : box.get("pieces")) {
            if (piece.get("role").asText().equals("post")) {
                posts++;
                assertThat(piece.at("/place/bottom_mm").asDouble())
                        .isEqualTo(box.at("/plan/bed_mm").asDouble() - 600);
            }
        }
        assertThat(posts).isEqualTo(4);
        assertThat(Files.readString(out.resolve("shopping.csv"))).contains("concrete, 25 kg bag");
    }

    private static Outcome planned(String example) {
        return PLANNED.computeIfAbsent(
                example,
                name -> Outcome.of(
                        "plan",
                        EXAMPLES.resolve(name).toString(),
                        "--out",
                        packs.resolve(name).toString(),
                        "--quiet"));
    }

    @Nested
    class Refusals {
        @Test
        void aMissingFileIsNamed() {
            Outcome outcome = Outcome.of("plan", "no-such.yaml", "--out", folder.toString());

            assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(outcome.err().strip())
                    .isEqualTo("borderwright: there is no file no-such.yaml; give the path of a garden document.");
        }

        @Test
        void aFaultyDocumentWritesNothingAndNamesEveryFault() throws IOException {
            String good = Files.readString(EXAMPLES.resolve("fence-to-shed.yaml"));
            Path bad = Files.writeString(
                    folder.resolve("bad.yaml"),
                    good.replace("walls: larch 25 x 150\n", "walls: larch 25 x 15\n")
                            .replace("front to back: 560 mm", "front too back: 560 mm"));
            Path out = folder.resolve("never");

            Outcome outcome = Outcome.of("plan", bad.toString(), "--out", out.toString());

            assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(outcome.err()).contains("front too back").contains("nothing was written");
            assertThat(out).doesNotExist();
        }

        @Test
        void aBorderThatIsNotFixedGetsTheMeasureThatWouldFixIt() throws IOException {
            String good = Files.readString(EXAMPLES.resolve("behind-the-shed.yaml"));
            Path loose = Files.writeString(
                    folder.resolve("loose.yaml"),
                    good.replace("\n    - {tape: A C, reads: 3.900 m, give or take: 4 mm}\n", "\n")
                            .replace("\n    - {angle: A B C, reads: 62.0 deg, give or take: 0.5 deg}\n", "\n"));
            Path out = folder.resolve("never");

            Outcome outcome = Outcome.of("plan", loose.toString(), "--out", out.toString());

            assertThat(outcome.code()).isEqualTo(ExitCode.NOT_MET);
            assertThat(outcome.err()).contains("A").contains("C").contains("no plan could be made");
            assertThat(out).doesNotExist();
        }

        @Test
        void anImperialGardenThatCannotBePlannedIsAnsweredInInches() throws IOException {
            String good = Files.readString(EXAMPLES.resolve("patio-planter.yaml"));
            Path shallow = Files.writeString(
                    folder.resolve("shallow.yaml"), good.replace("front to back: 24 in", "front to back: 6 in"));

            Outcome outcome = Outcome.of(
                    "plan", shallow.toString(), "--out", folder.resolve("never").toString());

            assertThat(outcome.code()).isEqualTo(ExitCode.NOT_MET);
            assertThat(outcome.err())
                    .contains("Planters 6\" from front to back are less than")
                    .doesNotContain(" mm");
        }

        @Test
        void aFileInTheWayOfTheFolderIsNotTouched() throws IOException {
            Path file = Files.writeString(folder.resolve("taken"), "mine");

            Outcome outcome =
                    Outcome.of("plan", EXAMPLES.resolve("fence-to-shed.yaml").toString(), "--out", file.toString());

            assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(file).hasContent("mine");
        }

        @Test
        void wrongUseGetsOneSentenceAndAPointer() {
            Outcome outcome =
                    Outcome.of("plan", EXAMPLES.resolve("fence-to-shed.yaml").toString());

            assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(outcome.err()).contains("--out").contains("See: borderwright plan --help");
        }
    }

    @Nested
    class Estimates {
        @Test
        void anEstimateNeedsThreeLengthsInAnyUnit() {
            Outcome outcome = Outcome.of("estimate", "--run", "9.6m", "--depth", "600", "--height", "45 cm");

            assertThat(outcome.code()).isEqualTo(ExitCode.DONE);
            assertThat(outcome.out())
                    .contains("soil")
                    .contains("The simple count")
                    .contains("61.2 m");
        }

        @Test
        void anEstimateInFeetAndInches() {
            Outcome outcome = Outcome.of(
                    "estimate",
                    "--run",
                    "32 ft",
                    "--depth",
                    "24 in",
                    "--height",
                    "16 1/2 in",
                    "--imperial",
                    "--currency",
                    "USD");

            assertThat(outcome.code()).isEqualTo(ExitCode.DONE);
            assertThat(outcome.out()).contains("USD").contains(" ft").doesNotContain(" mm");
        }

        @Test
        void allFaultsOfAnEstimateComeTogether() {
            Outcome outcome = Outcome.of(
                    "estimate",
                    "--run",
                    "nine",
                    "--depth",
                    "600 spans",
                    "--height",
                    "450mm",
                    "--currency",
                    "ZZZ",
                    "--planters",
                    "0");

            assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(outcome.err()
                            .lines()
                            .filter(l -> l.startsWith("borderwright: --"))
                            .count())
                    .isEqualTo(4);
        }
    }
}
