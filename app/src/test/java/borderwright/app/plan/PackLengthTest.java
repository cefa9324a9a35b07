package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A person carries few pages: how many at most was asked for these examples, planned as anyone plans them. */
class PackLengthTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"fence-to-shed, 16", "patio-planter, 16", "terrace-corner, 22", "sixty-beds, 24"})
    void aPackHasNoMorePagesThanAskedAndABriefOfOne(String example, int most) throws IOException {
        Outcome planned = Outcome.of("plan", ExamplePlans.file(example).toString(), "--out", folder.toString());
        assertThat(planned.code()).as(planned.err()).isIn(0, 1);
        try (PDDocument document = Loader.loadPDF(folder.resolve("pack.pdf").toFile())) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(most);
            PDFTextStripper second = new PDFTextStripper();
            second.setStartPage(2);
            second.setEndPage(2);
            assertThat(second.getText(document).trim()).contains("Cautions by stage");
        }
    }
}
