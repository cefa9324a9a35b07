package borderwright.app.form;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Outcome;
import borderwright.app.exit.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormCommandTest {
    private static final Offset<Float> CLOSE = Offset.offset(0.5f);

    @TempDir
    private Path folder;

    private static PDRectangle page(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return document.getPage(0).getMediaBox();
        }
    }

    @Test
    void theFolderHoldsTheFormAndNothingElse() throws IOException {
        Path out = folder.resolve("outside");

        Outcome outcome = Outcome.of("form", "--out", out.toString());

        assertThat(outcome.code()).isEqualTo(ExitCode.DONE);
        assertThat(outcome.err()).isEmpty();
        try (var files = Files.list(out)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactly("survey-form.pdf");
        }
        assertThat(page(out.resolve("survey-form.pdf")).getHeight()).isCloseTo(842, CLOSE);
    }

    @Test
    void imperialFormsAreOnLetterUnlessThePaperIsGiven() throws IOException {
        Outcome.of("form", "--imperial", "--out", folder.resolve("a").toString());
        Outcome.of(
                "form",
                "--imperial",
                "--paper",
                "A4",
                "--out",
                folder.resolve("b").toString());
        Outcome.of("form", "--paper", "Letter", "--out", folder.resolve("c").toString());

        assertThat(page(folder.resolve("a/survey-form.pdf")).getHeight()).isCloseTo(792, CLOSE);
        assertThat(page(folder.resolve("b/survey-form.pdf")).getHeight()).isCloseTo(842, CLOSE);
        assertThat(page(folder.resolve("c/survey-form.pdf")).getHeight()).isCloseTo(792, CLOSE);
    }

    @Test
    void aFileInTheWayOfTheFolderIsNotTouched() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");

        Outcome outcome = Outcome.of("form", "--out", file.toString());

        assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(outcome.err().strip()).isEqualTo("borderwright: " + file + " is a file; give a folder for --out.");
        assertThat(file).hasContent("mine");
    }
}
