package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.PaperSize;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

class FormPagesTest {
    /** Text that is read standing; the foot of each page is smaller. */
    private static final double LEAST_PT = 10;

    private static final double FOOT_PT = 40;

    private static final Map<List<Object>, byte[]> PRINTED = new HashMap<>();

    /** The form, printed once. */
    private static byte[] form(PaperSize paper, UnitSystem units) {
        return PRINTED.computeIfAbsent(List.of(paper, units), p -> FormPages.pdf(paper, units));
    }

    @BeforeAll
    static void validator() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    static Stream<Arguments> forms() {
        return Arrays.stream(PaperSize.values())
                .flatMap(paper -> Arrays.stream(UnitSystem.values()).map(units -> Arguments.of(paper, units)));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void itHasTwoPagesWithNothingSmallerThanTenPointsButTheFoot(PaperSize paper, UnitSystem units) throws IOException {
        try (PDDocument document = Loader.loadPDF(form(paper, units))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            List<String> small = new ArrayList<>();
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    TextPosition first = positions.get(0);
                    double fromFoot = first.getPageHeight() - first.getYDirAdj();
                    if (fromFoot > FOOT_PT && first.getYScale() < LEAST_PT - 0.01) {
                        small.add(text + " at " + first.getYScale() + " pt");
                    }
                }
            }.getText(document);
            assertThat(small).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("forms")
    void noRuleOfAccessibilityIsBroken(PaperSize paper, UnitSystem units) throws VeraPDFException, IOException {
        byte[] pdf = form(paper, units);
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            var result = validator.validate(parser);
            assertThat(result.getTotalAssertions()).isGreaterThan(1_000);
            assertThat(result.getTestAssertions())
                    .filteredOn(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .isEmpty();
        }
    }

    @Test
    void headingsAreHeadings() throws IOException {
        try (PDDocument document = Loader.loadPDF(form(PaperSize.A4, UnitSystem.METRIC))) {
            List<String> types = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), types);
            assertThat(types.stream().filter("H1"::equals)).hasSize(2);
            assertThat(types.stream().filter("H2"::equals)).hasSize(15);
            assertThat(types.indexOf("H1")).isLessThan(types.indexOf("H2"));
        }
    }

    private static void collect(PDStructureNode node, List<String> types) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                types.add(element.getStandardStructureType());
                collect(element, types);
            }
        }
    }

    @Test
    void theSameFormHasTheSameBytes() {
        assertThat(FormPages.pdf(PaperSize.LETTER, UnitSystem.IMPERIAL))
                .isEqualTo(form(PaperSize.LETTER, UnitSystem.IMPERIAL));
    }

    @Test
    void everySizeOfTypeIsOnTheScale() {
        String css = FormStyle.css(PaperSize.A4, PrintedFigures.in(UnitSystem.METRIC));
        assertThat(Pattern.compile("font-size: *([0-9.]+)pt")
                        .matcher(css)
                        .results()
                        .map(found -> Double.valueOf(found.group(1))))
                .isNotEmpty()
                .isSubsetOf(PageStyle.SIZES_PT);
    }
}
