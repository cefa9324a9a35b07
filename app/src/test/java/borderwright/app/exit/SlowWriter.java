package borderwright.app.exit;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A program that takes its time: {@code SlowWriter work|write FILE}. Prints a line when it is at it. */
final class SlowWriter {
    private static final long WORK_MS = 60_000;
    private static final long WRITE_MS = 700;

    private SlowWriter() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        StopSignals signals = StopSignals.heard(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        boolean writes = args[0].equals("write");
        if (writes) {
            StopSignals.beforeFiles();
        }
        System.out.println("begun");
        Files.writeString(Path.of(args[1]), "half");
        Thread.sleep(writes ? WRITE_MS : WORK_MS);
        StopSignals.beforeFiles();
        Files.writeString(Path.of(args[1]), "whole");
        signals.over(ExitCode.NOT_MET);
        System.exit(ExitCode.NOT_MET);
    }
}
