package borderwright.app.progress;

import borderwright.engine.measure.UnitSystem;
import java.io.PrintWriter;
import picocli.CommandLine.Option;

/** The option {@code --quiet} of every command that may take long. */
public final class ProgressOption {
    @Option(names = "--quiet", description = "write no lines about what is being worked out")
    private boolean quiet;

    /** A report that is running, to be closed before the answer is written. */
    public ProgressReport start(UnitSystem units, PrintWriter err) {
        return quiet ? ProgressReport.withoutClock(units, err) : ProgressReport.running(units, err);
    }
}
