package borderwright.app.form;

import borderwright.app.exit.ExitCode;
import borderwright.app.folder.ResultFolder;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.language.Language;
import borderwright.pack.pages.FormPages;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the survey form. */
@Command(
        name = "form",
        description = "Writes a survey form of two pages to fill in outside: survey-form.pdf.",
        mixinStandardHelpOptions = true)
public final class FormCommand implements Callable<Integer> {
    static final String FILE = "survey-form.pdf";

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "folder to write the form into")
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private Path out;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "paper: A4 or Letter (default: A4, with --imperial Letter)")
    private @Nullable PaperSize paper;

    @Option(names = "--imperial", description = "a grid of 1/4 in in place of 5 mm")
    private boolean imperial;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before any call
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        UnitSystem units = imperial ? UnitSystem.IMPERIAL : UnitSystem.METRIC;
        var sentences = Language.english().in(units);
        if (Files.exists(out) && !Files.isDirectory(out)) {
            spec.commandLine()
                    .getErr()
                    .println("borderwright: "
                            + sentences.text(FormCommandMessage.FORM_FOLDER_IS_A_FILE.of(out.toString())));
            return ExitCode.BAD_INPUT;
        }
        PaperSize usual = imperial ? PaperSize.LETTER : PaperSize.A4;
        new ResultFolder(out, Set.of()).write(Map.of(FILE, FormPages.pdf(paper == null ? usual : paper, units)));
        spec.commandLine()
                .getOut()
                .println(sentences.text(
                        FormCommandMessage.FORM_WRITTEN.of(out.resolve(FILE).toString())));
        return ExitCode.DONE;
    }
}
