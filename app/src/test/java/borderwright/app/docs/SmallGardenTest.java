package borderwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Outcome;
import borderwright.app.exit.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first sample of the guide to the garden file, as a reader would try it. */
class SmallGardenTest {
    private static final String NAMED = ", braces: batten}";

    @TempDir
    private Path folder;

    private static String sample() {
        String guide = Pages.text(Pages.ROOT.resolve("docs").resolve("garden-file.md"));
        int start = guide.indexOf("```yaml\n") + "```yaml\n".length();
        return guide.substring(start, guide.indexOf("```", start));
    }

    private Outcome plan(String document) throws IOException {
        Path file = Files.writeString(folder.resolve("small.yaml"), document);
        Outcome outcome = Outcome.of(
                "plan", file.toString(), "--out", folder.resolve("out").toString(), "--quiet");
        assertThat(outcome.err()).isEmpty();
        return outcome;
    }

    @Test
    void itHolds() throws IOException {
        Outcome outcome = plan(sample());

        assertThat(outcome.out()).doesNotContain("  ! ");
        assertThat(outcome.code()).isEqualTo(ExitCode.DONE);
    }

    @Test
    void withoutABattenThePlanTellsThatUprightsAreCutFromWallBoardsAndWhatToAdd() throws IOException {
        String bare = sample().replace(NAMED, "}")
                .lines()
                .filter(line -> !line.contains("batten"))
                .collect(Collectors.joining("\n"));

        Outcome outcome = plan(bare);

        assertThat(outcome.code()).isEqualTo(ExitCode.NOT_MET);
        assertThat(outcome.out())
                .contains(
                        "Posts and braces have to be cut from the wall boards, `larch`, because no batten is on sale: add one of"
                                + " about 47 mm by 50 mm to `sections` and to a supplier's `boards`, and name it as `braces` in"
                                + " `build`.")
                .doesNotContain("thicker boards");
    }

    @Test
    void aBattenOnSaleThatIsNotNamedIsPointedAt() throws IOException {
        assertThat(sample()).contains(NAMED);

        Outcome outcome = plan(sample().replace(NAMED, "}"));

        assertThat(outcome.code()).isEqualTo(ExitCode.NOT_MET);
        assertThat(outcome.out())
                .contains(
                        "Posts and braces are cut from the wall boards, `larch`, because `build` names nothing else for them:"
                                + " write `braces: batten` there.");
    }
}
