package borderwright.app.start;

import borderwright.app.exit.ExitCode;
import borderwright.app.exit.StopSignals;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.spelling.NearestName;
import borderwright.pack.language.Language;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a garden document that holds at once, to be changed bit by bit. */
@Command(
        name = "start",
        description = "Writes a garden document that holds at once, to be changed bit by bit into your own.",
        mixinStandardHelpOptions = true)
public final class StartCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "KIND",
            description = {
                "the kind of border:",
                "straight: one run along a fence or wall",
                "bend: along two walls and round the corner between them",
                "island: beds in a lawn, reached from all sides",
                "terrace: on paving, with a floor and feet",
                "roof: on a roof or balcony, with a load limit and light soil"
            })
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private String kind;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "file to write; never one that exists")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private Path out;

    @Option(names = "--imperial", description = "feet and inches, and boards in inches")
    private boolean imperial;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Optional<GardenKind> known = GardenKind.of(kind);
        if (known.isEmpty()) {
            return refuse(NearestName.of(kind, GardenKind.words())
                    .map(near -> StartMessage.START_KIND_MISSPELT.of(kind, near, GardenKind.words()))
                    .orElseGet(() -> StartMessage.START_KIND_UNKNOWN.of(kind, GardenKind.words())));
        }
        StopSignals.beforeFiles();
        Path folder = out.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        try {
            Files.write(out, known.get().document(units()), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException taken) {
            return refuse(StartMessage.START_FILE_EXISTS.of(out.toString()));
        }
        spec.commandLine()
                .getOut()
                .println(text(StartMessage.START_WRITTEN.of(
                        out.toString(), known.get().word())));
        return ExitCode.DONE;
    }

    private int refuse(Message why) {
        spec.commandLine().getErr().println("borderwright: " + text(why));
        return ExitCode.BAD_INPUT;
    }

    private UnitSystem units() {
        return imperial ? UnitSystem.IMPERIAL : UnitSystem.METRIC;
    }

    private String text(Message message) {
        return Language.english().in(units()).text(message);
    }
}
