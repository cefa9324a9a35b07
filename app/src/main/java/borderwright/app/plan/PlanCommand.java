package borderwright.app.plan;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.app.exit.ExitCode;
import borderwright.app.folder.ResultFolder;
import borderwright.app.job.JobResult;
import borderwright.app.job.JobStep;
import borderwright.app.job.PlanJob;
import borderwright.app.job.PlanOrder;
import borderwright.app.job.StopSignal;
import borderwright.app.progress.ProgressOption;
import borderwright.app.progress.ProgressReport;
import borderwright.engine.garden.given.GardenDocument;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.pack.PackWriter;
import borderwright.pack.language.Language;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a garden document and writes the workshop pack. */
@Command(
        name = "plan",
        description = "Plans a garden document and writes the workshop pack.",
        mixinStandardHelpOptions = true)
public final class PlanCommand implements Callable<Integer> {
    /** Search steps for the basket of one design: some seconds at most on a small machine, usually far less. */
    private static final long DEFAULT_EFFORT = 300_000;

    @Parameters(index = "0", paramLabel = "GARDEN", description = "the garden document, YAML or JSON")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private Path garden;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "folder to write the plan into")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private Path out;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "paper of the pack: a4 or letter (default: a4 for metric gardens, letter for imperial ones)")
    private @Nullable PaperSize paper;

    @Option(
            names = "--effort",
            paramLabel = "N",
            description =
                    "most search steps for each design; more may find a cheaper basket (default: ${DEFAULT-VALUE})")
    private long effort = DEFAULT_EFFORT;

    @Mixin
    private final ProgressOption progress = new ProgressOption();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        if (!Files.isRegularFile(garden)) {
            String what = Files.isDirectory(garden)
                    ? garden + " is a folder"
                    : Files.exists(garden) ? garden + " is no ordinary file" : "there is no file " + garden;
            err.println("borderwright: " + what + "; give the path of a garden document.");
            return ExitCode.BAD_INPUT;
        }
        if (!Files.isReadable(garden)) {
            err.println("borderwright: there is no permission to read " + garden + ".");
            return ExitCode.BAD_INPUT;
        }
        if (Files.exists(out) && !Files.isDirectory(out)) {
            err.println("borderwright: " + out + " is a file; give a folder for --out.");
            return ExitCode.BAD_INPUT;
        }
        if (effort < 0) {
            err.println("borderwright: --effort is " + effort + "; give 0 or more.");
            return ExitCode.BAD_INPUT;
        }
        results().check(Set.of());
        DocumentAnswer read;
        try (InputStream in = Files.newInputStream(garden)) {
            read = GardenReader.read(in);
        }
        if (read instanceof DocumentAnswer.Faulty faulty) {
            faulty.faults().forEach(problem -> err.println(problem.print(garden.toString())));
            err.println(
                    faulty.faults().size() == 1
                            ? "borderwright: 1 fault; nothing was written."
                            : "borderwright: " + faulty.faults().size() + " faults; nothing was written.");
            return ExitCode.BAD_INPUT;
        }
        return plan(((DocumentAnswer.Sound) read).document());
    }

    private int plan(GardenDocument document) throws IOException {
        PlanOrder order = new PlanOrder(document, effort, Optional.ofNullable(paper), Optional.empty());
        JobResult result;
        try (ProgressReport report = progress.start(
                GardenResolver.resolve(document.garden()).units(),
                spec.commandLine().getErr())) {
            result = PlanJob.run(order, step -> report.begins(message(step, document)), new StopSignal());
        }
        if (result instanceof JobResult.Planned planned) {
            return write(planned);
        }
        if (result instanceof JobResult.NotPlanned notPlanned) {
            return report(notPlanned);
        }
        return ExitCode.STOPPED;
    }

    private static Message message(JobStep step, GardenDocument document) {
        if (step instanceof JobStep.Planning planning) {
            return planning.design() == 0
                    ? planning.step()
                    : PlanProgressMessage.PLANNING_VARIANT.of(
                            document.variants().get(planning.design() - 1).name(), planning.step());
        }
        return step instanceof JobStep.Comparing
                ? PlanProgressMessage.COMPARING_DESIGNS.of()
                : PlanProgressMessage.MAKING_SHEETS.of();
    }

    private int write(JobResult.Planned planned) throws IOException {
        results().write(planned.files());
        PlanReport.print(
                planned.plan(),
                planned.comparison(),
                planned.files().keySet(),
                out,
                spec.commandLine().getOut());
        return planned.plan().shortfalls().isEmpty() ? ExitCode.DONE : ExitCode.NOT_MET;
    }

    private ResultFolder results() {
        return new ResultFolder(out, PackWriter.MAY_BE_MISSING);
    }

    private int report(JobResult.NotPlanned notPlanned) {
        PrintWriter err = spec.commandLine().getErr();
        Sentences sentences = Language.english().in(notPlanned.units());
        notPlanned
                .reasons()
                .forEach(reason -> err.println(garden + ": " + (reason.where().isEmpty() ? "" : reason.where() + ": ")
                        + reason.sentence(sentences)));
        err.println("borderwright: no plan could be made; nothing was written.");
        return ExitCode.NOT_MET;
    }
}
