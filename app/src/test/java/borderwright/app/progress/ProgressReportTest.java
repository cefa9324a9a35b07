package borderwright.app.progress;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.PlanStage;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class ProgressReportTest {
    private final StringWriter err = new StringWriter();
    private final ProgressReport report = ProgressReport.withoutClock(UnitSystem.METRIC, new PrintWriter(err));

    private String written() {
        String text = err.toString();
        err.getBuffer().setLength(0);
        return text;
    }

    @Test
    void aStepIsWrittenAtTheNextTickAndNotAgain() {
        report.begins(PlanStage.SURVEY.begins());
        assertThat(written()).isEmpty();

        report.tick();
        assertThat(written()).isEqualToIgnoringNewLines("Working out the shape of the border ...");

        report.tick();
        report.begins(PlanStage.SURVEY.begins());
        report.tick();
        assertThat(written()).isEmpty();
    }

    @Test
    void ofManyStepsTheLatestIsWritten() {
        report.begins(PlanStage.SURVEY.begins());
        report.begins(PlanStage.LAYOUT.begins());
        report.begins(PlanStage.BUYING.begins());
        report.tick();

        assertThat(written()).isEqualToIgnoringNewLines("Looking for the cheapest basket ...");
    }

    @Test
    void noLineComesBeforeAStepOrAfterTheEnd() {
        report.tick();
        report.begins(PlanStage.SITE.begins());
        report.close();
        report.tick();

        assertThat(written()).isEmpty();
    }

    @Test
    void aQuietReportHasNoClock() {
        for (String[] args : new String[][] {{}, {"--quiet"}}) {
            ProgressOption option = new ProgressOption();
            new CommandLine(option).parseArgs(args);
            try (ProgressReport started = option.start(UnitSystem.METRIC, new PrintWriter(err))) {
                assertThat(started.hasClock()).isEqualTo(args.length == 0);
            }
        }
    }
}
