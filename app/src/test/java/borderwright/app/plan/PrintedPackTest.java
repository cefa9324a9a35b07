package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.PaperSize;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * The printed packs of examples: accessible as PDF/UA-1 (ISO 14289-1) asks, in the judgement of veraPDF, an open-source
 * validator made by others; and nothing printed in the margins, where a printer cuts it.
 */
class PrintedPackTest {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final Logger VALIDATOR_LOG = Logger.getLogger("org.verapdf");

    @BeforeAll
    static void readyTheValidator() {
        VALIDATOR_LOG.setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
    }

    @ParameterizedTest
    @ValueSource(strings = {"fence-to-shed", "behind-the-shed", "patio-planter", "sixty-beds"})
    void isAccessibleAndKeepsToItsMargins(String example) throws Exception {
        Plan plan = ExamplePlans.of(example);
        PaperSize paper = plan.garden().units() == UnitSystem.IMPERIAL ? PaperSize.LETTER : PaperSize.A4;
        byte[] pdf = PackPages.pdf(plan, Comparison.NONE, paper, Optional.empty());

        assertThat(faults(pdf)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .hasSizeGreaterThan(9)
                    .allSatisfy(bookmark -> assertThat(bookmark.findDestinationPage(document))
                            .as(bookmark.getTitle())
                            .isNotNull());
            assertThat(wordless(document.getDocumentCatalog().getStructureTreeRoot()))
                    .isEmpty();
            assertThat(outside(document, paper)).isEmpty();
            assertThat(new PDFTextStripper().getText(document).lines().filter(line -> line.contains("`")))
                    .as("what is to be written stands in quotes")
                    .isEmpty();
        }
    }

    @Test
    void theWorkingAndTheLabelsAreAccessibleToo() throws Exception {
        Plan plan = ExamplePlans.of("fence-to-shed");

        assertThat(faults(PackPages.working(plan, PaperSize.A4, Optional.empty())))
                .isEmpty();
        assertThat(faults(PackPages.labels(plan, PaperSize.A4, Optional.empty()).orElseThrow()))
                .isEmpty();
    }

    @Test
    void theValidatorFindsFaultWithAPackWhoseTagsAreGone() throws Exception {
        Plan plan = ExamplePlans.of("patio-planter");
        byte[] pdf = PackPages.pdf(plan, Comparison.NONE, PaperSize.A4, Optional.empty());
        try (PDDocument document = Loader.loadPDF(pdf);
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.STRUCT_TREE_ROOT);
            document.save(out);

            assertThat(faults(out.toByteArray())).isNotEmpty();
        }
    }

    private static List<String> faults(byte[] pdf) throws Exception {
        try (PDFAParser parser =
                Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1)) {
            ValidationResult result = Foundries.defaultInstance()
                    .createValidator(PDFAFlavour.PDFUA_1, false)
                    .validate(parser);
            return result.getTestAssertions().stream()
                    .map(fault -> "ISO 14289-1 " + fault.getRuleId().getClause() + ": " + fault.getMessage() + " "
                            + fault.getLocation().getContext())
                    .distinct()
                    .toList();
        }
    }

    /** Figures that say nothing to whoever does not see them. */
    private static List<String> wordless(PDStructureNode node) {
        List<String> found = new ArrayList<>();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                String says = element.getAlternateDescription();
                if (element.getStructureType().equals("Figure") && (says == null || says.length() < 10)) {
                    found.add("a figure saying: " + says);
                }
                found.addAll(wordless(element));
            }
        }
        return found;
    }

    /** Text that reaches over the side margins, by page. */
    private static List<String> outside(PDDocument document, PaperSize paper) throws IOException {
        List<String> found = new ArrayList<>();
        double side = paper.sideMm() * POINTS_PER_MM;
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                double width = getCurrentPage().getMediaBox().getWidth();
                boolean isOver = positions.stream()
                        .anyMatch(p -> p.getXDirAdj() < side - 1
                                || (p.getDir() == 0 && p.getXDirAdj() + p.getWidthDirAdj() > width - side + 1));
                if (isOver) {
                    found.add("page " + getCurrentPageNo() + ": " + text);
                }
            }
        };
        stripper.getText(document);
        return found;
    }
}
