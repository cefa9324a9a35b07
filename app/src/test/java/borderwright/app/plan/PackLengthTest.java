package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.plan.Comparison;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A person carries few pages: how many at most was asked for these examples. */
class PackLengthTest {
    @ParameterizedTest
    @CsvSource({"fence-to-shed, 16", "patio-planter, 16", "sixty-beds, 24"})
    void aPackHasNoMorePagesThanAskedAndABriefOfOne(String example, int most) throws IOException {
        byte[] pack = PackPages.pdf(ExamplePlans.of(example), Comparison.NONE, PaperSize.A4, Optional.empty());
        try (PDDocument document = Loader.loadPDF(pack)) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(most);
            PDFTextStripper second = new PDFTextStripper();
            second.setStartPage(2);
            second.setEndPage(2);
            assertThat(second.getText(document).trim()).contains("Cautions by stage");
        }
    }
}
