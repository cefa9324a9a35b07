package borderwright.app.usage;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Borderwright;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips on the command line are answered in our words, with a code of 2 and no name of Java's. */
class WrongUseTest {
    private static final Path EXAMPLE = Path.of("..", "examples", "patio-planter.yaml");

    private record Answer(int code, String text) {}

    private static Answer run(String... args) {
        StringWriter err = new StringWriter();
        int code = Borderwright.run(args, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
        return new Answer(code, err.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plna garden.yaml | There is no command `plna`. Perhaps you meant `plan`.",
                "plan g.yaml --outt x | also needs --out DIR",
                "plan --hight 3 --out x g.yaml | has no option `--hight`",
                "estimate --run 9.6m --depth 600mm --heigth 450mm | also needs --height",
                "estimate --run 9.6m --depth 600mm --height 450mm --board-price abc | --board-price: `abc` is not a number.",
                "estimate --run 9.6m --depth 600mm --height 450mm --delivery 1E+999999999 | is not a number. Give plain",
                "estimate --run 9.6m --depth 600mm --height 450mm --planters 3.5 | --planters: `3.5` is not a whole number.",
                "cut --pieces p --boards b --keep-from 300 --keep-worth 1E+400 | --keep-worth: `1E+400` is not a number.",
                "cut --pieces p --boards b --effort x | --effort: `x` is not a whole number.",
                "cut --pieces p --boards b --kerf 3 --kerf 4 | --kerf is given twice.",
                "plan g.yaml --paper A5 --out x | --paper: `A5` is not one of a4 and letter."
            })
    void isAnsweredInOurWords(String line, String expected) {
        Answer answer = run(line.split(" "));
        assertThat(answer.text).contains(expected).doesNotContainPattern("java|Exception|Unmatched|Invalid value");
        assertThat(answer.code).isEqualTo(2);
    }

    @Test
    void aFolderOrADeviceIsNoGarden(@TempDir Path folder) {
        assertThat(run("plan", folder.toString(), "--out", "x").text).contains(folder + " is a folder");
        assertThat(run("plan", "/dev/null", "--out", "x").text).contains("/dev/null is no ordinary file");
    }

    /** Found before the plan is worked out: nothing is planned. */
    @Test
    void aFolderThatCannotBeIsFoundFirst(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        Answer under =
                run("plan", EXAMPLE.toString(), "--out", file.resolve("out").toString());
        assertThat(under.text).contains("a part of it is a file");
        assertThat(under.code).isEqualTo(2);
        Files.createDirectories(folder.resolve("labels.pdf"));
        Answer taken = run("plan", EXAMPLE.toString(), "--out", folder.toString());
        assertThat(taken.text).contains("labels.pdf is a folder");
        assertThat(taken.code).isEqualTo(2);
    }
}
