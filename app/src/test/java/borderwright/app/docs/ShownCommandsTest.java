package borderwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Borderwright;
import borderwright.app.Outcome;
import borderwright.app.docs.Pages.CodeLine;
import borderwright.app.exit.ExitCode;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * What README, CONTRIBUTING and docs/ tell people to type works.
 *
 * <p>Blocks marked {@code sh} hold commands, each of which is tried: copies and calls of the program are run one after
 * the other as on a fresh clone, the scripts of developers are looked up with what they name. Blocks marked {@code text}
 * that begin with the program's name are synopses, whose options must exist.
 */
class ShownCommandsTest {
    private static final String PROGRAM = "./borderwright";

    /** Planned, but something may not hold or be met, which the examples contain on purpose. */
    private static final List<Integer> MAY_END_WITH = List.of(ExitCode.DONE, ExitCode.NOT_MET);

    @TempDir
    Path folder = Path.of("");

    private static List<CodeLine> shown(String language) {
        return Pages.code().stream()
                .filter(line -> line.language().equals(language))
                .toList();
    }

    private static List<String> words(CodeLine line) {
        String command = line.text().replaceAll("(^|\\s+)#.*", "");
        return command.isBlank() ? List.of() : List.of(command.split("\\s+"));
    }

    @Test
    void callsOfTheProgramStandInBlocksThatAreTried() {
        assertThat(Pages.code())
                .filteredOn(line -> line.text().startsWith(PROGRAM))
                .isNotEmpty()
                .allMatch(line -> Set.of("sh", "text").contains(line.language()));
    }

    @Test
    void everyOptionShownExists() {
        CommandLine program = new CommandLine(new Borderwright());
        List<String> unknown = new ArrayList<>();
        String command = "";
        for (CodeLine line : shown("text")) {
            if (line.text().startsWith(PROGRAM + " ")) {
                command = line.text().split("\\s+")[1];
            }
            for (String word : line.text().split("[^a-z-]+")) {
                if (word.startsWith("--")
                        && !program.getSubcommands()
                                .get(command)
                                .getCommandSpec()
                                .optionsMap()
                                .containsKey(word)) {
                    unknown.add(line + ": " + word);
                }
            }
        }
        assertThat(command).isNotEmpty();
        assertThat(unknown).isEmpty();
    }

    @Test
    void everyCommandShownWorks() throws IOException, InterruptedException {
        copyExamples();
        Set<List<String>> done = new HashSet<>();
        for (CodeLine line : shown("sh")) {
            List<String> words = words(line);
            if (!words.isEmpty() && done.add(words)) {
                tryOut(line, words);
            }
        }
        assertThat(done).hasSizeGreaterThan(5);
    }

    private void tryOut(CodeLine line, List<String> words) throws IOException, InterruptedException {
        switch (words.get(0)) {
            case PROGRAM -> {
                List<String> arguments = words.subList(1, words.size());
                if (arguments.isEmpty()) {
                    runApart(line);
                } else {
                    run(line, arguments);
                }
            }
            case "cp" -> Files.copy(folder.resolve(words.get(1)), folder.resolve(words.get(2)));
            case "./test" -> testsExist(line, words.get(1), words.get(2));
            case "./verify", "bench/measure" ->
                assertThat(Pages.ROOT.resolve(words.get(0))).isExecutable();
            case "bench/run" -> assertThat(benchExists(words)).as("%s", line).isTrue();
            case "mvn" -> assertThat(words).as("%s", line).contains("-q");
            default -> throw new AssertionError("not known how to try " + line);
        }
    }

    /** Runs the program in this Java machine, with the paths that it is given taken from the temporary folder. */
    private void run(CodeLine line, List<String> arguments) {
        List<String> resolved = new ArrayList<>();
        for (String word : arguments) {
            boolean isPath = Files.exists(folder.resolve(word))
                    || (!resolved.isEmpty() && resolved.get(resolved.size() - 1).equals("--out"));
            resolved.add(isPath ? folder.resolve(word).toString() : word);
        }
        Outcome outcome = Outcome.of(resolved.toArray(String[]::new));
        assertThat(outcome.code())
                .as("exit code of %s, which printed: %s%s", line, outcome.out(), outcome.err())
                .isIn(MAY_END_WITH);
        assertThat(outcome.out()).as("what %s prints", line).isNotBlank();
    }

    /** Runs the bare program, which looks for its example where it is started, in a Java machine of its own in the temporary folder. */
    private void runApart(CodeLine line) throws IOException, InterruptedException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-cp",
                absoluteClassPath(),
                Borderwright.class.getName());
        Path output = folder.resolve("output.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("%s ends", line).isTrue();
        assertThat(process.exitValue())
                .as("exit code of %s, which printed: %s", line, Files.readString(output))
                .isIn(MAY_END_WITH);
        assertThat(Files.size(output)).isPositive();
    }

    private static String absoluteClassPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .reduce((all, entry) -> all + File.pathSeparator + entry)
                .orElseThrow();
    }

    private void copyExamples() throws IOException {
        Path examples = Pages.ROOT.resolve("examples");
        try (Stream<Path> files = Files.walk(examples)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(Pages.ROOT.relativize(file)));
            }
        }
    }

    private static void testsExist(CodeLine line, String module, String names) throws IOException {
        List<String> known;
        try (Stream<Path> files = Files.walk(Pages.ROOT.resolve(module).resolve("src/test/java"))) {
            known = files.map(file -> file.getFileName().toString()).toList();
        }
        for (String name : names.split(",")) {
            assertThat(known).as("%s", line).contains(name.replaceAll("#.*", "") + ".java");
        }
    }

    private static boolean benchExists(List<String> words) {
        String name = words.get(1).equals("main") ? words.get(2) : words.get(1);
        Path source = Pages.ROOT.resolve("bench/src/main/java/borderwright/bench");
        return Files.exists(source.resolve(name.replace('.', '/') + ".java"));
    }
}
