package borderwright.app.exit;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Borderwright;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Signals to real processes. */
class StopSignalsTest {
    /** A joined run that keeps any computer busy for longer than it takes to send a signal. */
    private static final String LONG_GARDEN = """
            name: Long
            invented: yes
            currency: GBP
            survey:
              corners: A B
              strip width: 600 mm
              measures:
                - {tape: A B, reads: 480 m yes really}
            runs:
              - {name: run, along: A B, planters: 400, front to back: 500 mm, height: 450 mm}
            build: {walls: larch}
            sections:
              - {name: larch, thickness: 25 mm, width: 150 mm}
            suppliers:
              - name: Supplier
                boards:
                  - {section: larch, length: 3.6 m, price: 9.60}
            """;

    private static final long MOST_S = 60;

    @TempDir
    private Path folder;

    private final List<Process> started = new ArrayList<>();

    @AfterEach
    void leaveNoProcessBehind() {
        started.forEach(Process::destroyForcibly);
    }

    /** A Java program whose signals are those of a shell, even where this one ignores some. */
    private Process start(Class<?> program, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                "env",
                "--default-signal=INT",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        command.addAll(List.of(args));
        Process process = new ProcessBuilder(command).start();
        started.add(process);
        return process;
    }

    private static int send(String signal, Process process) throws IOException, InterruptedException {
        assertThat(new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid()))
                        .start()
                        .waitFor())
                .isZero();
        assertThat(process.waitFor(MOST_S, TimeUnit.SECONDS))
                .as("the program ends after " + signal)
                .isTrue();
        return process.exitValue();
    }

    private static String rest(InputStream stream) throws IOException {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM"})
    void aPlanThatIsStoppedSaysSoWithItsCodeAndLeavesTheFolderAlone(String signal)
            throws IOException, InterruptedException {
        Path garden = Files.writeString(folder.resolve("garden.yaml"), LONG_GARDEN);
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(out.resolve("pack.pdf"), "of an earlier plan");

        Process process = start(Borderwright.class, "plan", garden.toString(), "--out", out.toString());
        BufferedReader err = process.errorReader();
        // The first line of progress: the plan is under way.
        assertThat(err.readLine()).endsWith(" ...");
        int code = send(signal, process);

        assertThat(code).isEqualTo(ExitCode.STOPPED);
        assertThat(err.lines().toList())
                .last()
                .isEqualTo("borderwright: Stopped before there was an answer; nothing was written.");
        assertThat(rest(process.getInputStream())).isEmpty();
        try (Stream<Path> left = Files.list(out)) {
            assertThat(left).containsExactly(out.resolve("pack.pdf"));
        }
        assertThat(out.resolve("pack.pdf")).hasContent("of an earlier plan");
    }

    @Test
    void aStopWhileFilesAreWrittenIsTooLate() throws IOException, InterruptedException {
        Path file = folder.resolve("file");

        Process process = start(SlowWriter.class, "write", file.toString());
        assertThat(process.inputReader().readLine()).isEqualTo("begun");
        int code = send("INT", process);

        assertThat(code).isEqualTo(ExitCode.NOT_MET);
        assertThat(rest(process.getErrorStream())).isEmpty();
        assertThat(file).hasContent("whole");
    }

    @Test
    void aStopBeforeFilesAreWrittenComesFirst() throws IOException, InterruptedException {
        Path file = folder.resolve("file");

        Process process = start(SlowWriter.class, "work", file.toString());
        assertThat(process.inputReader().readLine()).isEqualTo("begun");
        int code = send("INT", process);

        assertThat(code).isEqualTo(ExitCode.STOPPED);
        assertThat(file).hasContent("half");
    }
}
