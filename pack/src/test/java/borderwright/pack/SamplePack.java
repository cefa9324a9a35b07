package borderwright.pack;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The packs of {@link SamplePlan}, each printed once and shared by all tests of the pack. */
public final class SamplePack {
    private SamplePack() {}

    /** On A4. */
    public static byte[] metric() {
        return Metric.PDF.clone();
    }

    /** On Letter. */
    public static byte[] imperial() {
        return Imperial.PDF.clone();
    }

    /** One of these two. */
    public static byte[] in(UnitSystem units) {
        return units == UnitSystem.METRIC ? metric() : imperial();
    }

    /** A pack on the paper, printed anew. */
    public static byte[] print(Plan plan, PaperSize paper) {
        return PackPages.pdf(plan, Comparison.NONE, paper, Optional.empty());
    }

    /** All papers of a plan: the pack, the working and the labels, one after the other. */
    public static String allText(Plan plan, byte[] pack, PaperSize paper) throws IOException {
        return text(pack)
                + " " + text(PackPages.working(plan, paper, Optional.empty()))
                + " " + text(PackPages.labels(plan, paper, Optional.empty()).orElseThrow());
    }

    /** The text of each page. */
    public static List<String> pages(byte[] pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int i = 1; i <= document.getNumberOfPages(); i++) {
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }

    /** The text of all pages on one line. */
    public static String text(byte[] pdf) throws IOException {
        return oneLine(String.join(" ", pages(pdf)));
    }

    /** A text with a blank for each break of a line. */
    public static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** Holds a pack from when it is first asked for. */
    private static final class Metric {
        private static final byte[] PDF = print(SamplePlan.metric(), PaperSize.A4);
    }

    private static final class Imperial {
        private static final byte[] PDF = print(SamplePlan.imperial(), PaperSize.LETTER);
    }
}
