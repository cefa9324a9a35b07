package borderwright.app;

import borderwright.app.cut.CutCommand;
import borderwright.app.exit.ExitCode;
import borderwright.app.exit.StopSignals;
import borderwright.app.form.FormCommand;
import borderwright.app.plan.EstimateCommand;
import borderwright.app.plan.PlanCommand;
import borderwright.app.start.StartCommand;
import borderwright.app.usage.FileTrouble;
import borderwright.app.usage.PlainNumber;
import borderwright.app.usage.WrongUse;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line: one subcommand for each thing a person can ask for. */
@Command(
        name = "borderwright",
        description = "Turns a tape survey of a garden border into boards, cuts and a printed pack.",
        mixinStandardHelpOptions = true,
        version = "Borderwright 0.1.0",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:something does not hold or cannot be met; the reason comes first",
            "2:bad input or wrong use; nothing was written",
            "3:a fault of the program",
            "4:stopped before there was an answer, also by Ctrl-C; nothing was written",
            "5:the computer gave up: a full disk, no permission"
        },
        footer = {
            "",
            "Without a command, ./borderwright plans the first example into out/.",
            "Example: ./borderwright plan my-garden.yaml --out out/my-garden",
            "docs/index.md lists all pages."
        },
        subcommands = {StartCommand.class, FormCommand.class, PlanCommand.class, EstimateCommand.class, CutCommand.class
        })
public final class Borderwright implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        StopSignals signals = StopSignals.heard(err);
        int code = run(args, out, err);
        signals.over(code);
        System.exit(code);
    }

    /** Runs one command with its output going to the writers given; the exit code by {@link ExitCode}. */
    public static int run(String[] args, PrintWriter out, PrintWriter err) {
        // Numbers are written the same everywhere; what a person types is read by our own parsers.
        Locale.setDefault(Locale.ROOT);
        CommandLine command = new CommandLine(new Borderwright())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((fault, wrong) -> WrongUse.say(fault))
                .setExecutionExceptionHandler((fault, failed, parsed) -> failed(fault, failed));
        PlainNumber.registerWith(command);
        try {
            return command.execute(args);
        } catch (StackOverflowError | OutOfMemoryError | LinkageError fault) {
            // Even when the machine gives up, a person gets a sentence and the shell a code that says whose fault it
            // is.
            return ourFault(fault, err);
        }
    }

    /** Without a subcommand: plans the first example into {@code out/}, so that there is something to look at. */
    @Override
    public Integer call() {
        String home = System.getenv("BORDERWRIGHT_HOME");
        Path example = Path.of(home == null ? "." : home, "examples", "fence-to-shed.yaml");
        CommandLine plan =
                Objects.requireNonNull(spec.commandLine().getSubcommands().get("plan"));
        return plan.execute(
                example.toString(), "--out", Path.of("out", "fence-to-shed").toString());
    }

    private static int failed(Exception fault, CommandLine command) {
        if (fault instanceof IOException file) {
            FileTrouble.Said said = FileTrouble.of(file);
            command.getErr().println("borderwright: " + said.sentence());
            return said.exitCode();
        }
        return ourFault(fault, command.getErr());
    }

    private static int ourFault(Throwable fault, PrintWriter err) {
        err.println("borderwright: this is a fault of ours, not yours: " + fault);
        for (StackTraceElement frame : fault.getStackTrace()) {
            if (frame.getClassName().startsWith("borderwright.")) {
                err.println("  at " + frame);
                break;
            }
        }
        err.println("Please report it with the input that caused it; nothing was written.");
        return ExitCode.OUR_FAULT;
    }
}
