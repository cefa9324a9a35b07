package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.pack.SamplePack;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** ISO 14289-1 (PDF/UA-1), as far as a machine can check it: the rules of veraPDF, a validator that shares no code with ours. */
class AccessiblePdfTest {
    private static final Logger ROOT = Logger.getLogger("");

    @BeforeAll
    static void quietly() {
        ROOT.setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static ValidationResult validate(byte[] pdf) throws VeraPDFException, IOException {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            return validator.validate(parser);
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void noRuleIsBroken(UnitSystem units) throws VeraPDFException, IOException {
        ValidationResult result = validate(SamplePack.in(units));
        assertThat(result.getTotalAssertions()).isGreaterThan(10_000);
        assertThat(result.getTestAssertions())
                .filteredOn(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                .isEmpty();
        assertThat(result.isCompliant()).isTrue();
    }

    @Test
    void aPackWithoutItsTagsWouldBeFound() throws VeraPDFException, IOException {
        byte[] untagged;
        try (PDDocument document = Loader.loadPDF(SamplePack.metric())) {
            document.getDocumentCatalog().setStructureTreeRoot(null);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            untagged = out.toByteArray();
        }
        assertThat(validate(untagged).isCompliant()).isFalse();
    }
}
