package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePlan;
import borderwright.pack.drawings.AngleTemplate;
import borderwright.pack.paper.PaperSize;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The full-size templates, measured on the printed page. */
class AngleTemplatesTest {
    private static final double TENTH_MM = 0.1;
    private static final double LEG_MM = AngleTemplate.LEG_MM;

    private static final Map<PaperSize, byte[]> PRINTED = new EnumMap<>(PaperSize.class);

    static Stream<Arguments> packs() {
        return Stream.of(
                Arguments.of(SamplePlan.metric(), PaperSize.A4, 100.0),
                Arguments.of(SamplePlan.imperial(), PaperSize.LETTER, 101.6));
    }

    private static PDDocument print(Plan plan, PaperSize paper) throws IOException {
        byte[] pdf = PRINTED.computeIfAbsent(paper, p -> PackPages.pdf(plan, Comparison.NONE, p, Optional.empty()));
        return Loader.loadPDF(pdf);
    }

    private static List<Integer> pagesOf(PDDocument document, String text) throws IOException {
        List<Integer> pages = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper();
        for (int i = 1; i <= document.getNumberOfPages(); i++) {
            stripper.setStartPage(i);
            stripper.setEndPage(i);
            if (stripper.getText(document).contains(text)) {
                pages.add(i - 1);
            }
        }
        return pages;
    }

    private static List<List<Point2D>> strokes(PDDocument document, String text) throws IOException {
        List<List<Point2D>> strokes = new ArrayList<>();
        for (int page : pagesOf(document, text)) {
            strokes.addAll(PageStrokes.of(document.getPage(page)));
        }
        return strokes;
    }

    @ParameterizedTest
    @MethodSource("packs")
    void checkBarsAreAsLongAsTheySayToATenthOfAMillimetre(Plan plan, PaperSize paper, double barMm) throws IOException {
        try (PDDocument document = print(plan, paper)) {
            List<List<Point2D>> bars = strokes(document, "this bar must measure").stream()
                    .filter(s -> s.size() == 2 && StrictMath.abs(length(s) - barMm) < 2)
                    .toList();

            // Two templates of corners and one of a blade, each with a level and an upright bar.
            assertThat(bars).hasSize(6);
            assertThat(bars).allSatisfy(b -> assertThat(length(b)).isCloseTo(barMm, within(TENTH_MM)));
            assertThat(bars.stream().filter(AngleTemplatesTest::isLevel)).hasSize(3);
        }
    }

    @ParameterizedTest
    @MethodSource("packs")
    void cornersOpenByTheirAngleToATenthOfAMillimetreAtTheEndOfTheirLegs(Plan plan, PaperSize paper, double barMm)
            throws IOException {
        try (PDDocument document = print(plan, paper)) {
            List<List<Point2D>> corners = strokes(document, "inside the planter").stream()
                    .filter(s -> s.size() == 3)
                    .filter(s -> StrictMath.abs(s.get(0).distance(s.get(1)) - LEG_MM) < TENTH_MM)
                    .toList();

            assertThat(corners).hasSize(2);
            for (List<Point2D> corner : corners) {
                // Both corners of the bend stand 127 degrees open on their hollow side: 233 is 360 less 127.
                double across = 2 * LEG_MM * StrictMath.sin(StrictMath.toRadians(127.0 / 2));
                assertThat(corner.get(0).distance(corner.get(2))).isCloseTo(across, within(TENTH_MM));
                assertThat(corner.get(1).distance(corner.get(2))).isCloseTo(LEG_MM, within(TENTH_MM));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("packs")
    void theBladeLeansByItsSettingToATenthOfAMillimetre(Plan plan, PaperSize paper, double barMm) throws IOException {
        try (PDDocument document = print(plan, paper)) {
            double aside = LEG_MM * StrictMath.sin(StrictMath.toRadians(26.5));
            double up = LEG_MM * StrictMath.cos(StrictMath.toRadians(26.5));

            assertThat(strokes(document, "Blade 26.5° from square")).anySatisfy(s -> {
                assertThat(s).hasSize(2);
                assertThat(s.get(1).getX() - s.get(0).getX()).isCloseTo(aside, within(TENTH_MM));
                assertThat(s.get(1).getY() - s.get(0).getY()).isCloseTo(up, within(TENTH_MM));
            });
        }
    }

    /** Another way of measuring: black dots on the page as a printer would put them. */
    @ParameterizedTest
    @MethodSource("packs")
    void theLevelBarMeasuresRightInAPictureOfThePage(Plan plan, PaperSize paper, double barMm) throws IOException {
        try (PDDocument document = print(plan, paper)) {
            int page = pagesOf(document, "this bar must measure").get(0);
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 508);
            int longest = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                longest = StrictMath.max(longest, longestDarkRun(image, y));
            }
            // 20 dots to a millimetre; the stroke's own width reaches past neither end.
            assertThat(longest / 20.0).isCloseTo(barMm, within(TENTH_MM + 0.25));
        }
    }

    private static int longestDarkRun(BufferedImage image, int y) {
        int longest = 0;
        int run = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            boolean dark = (image.getRGB(x, y) & 0xff) < 100;
            run = dark ? run + 1 : 0;
            longest = StrictMath.max(longest, run);
        }
        return longest;
    }

    private static double length(List<Point2D> stroke) {
        return stroke.get(0).distance(stroke.get(1));
    }

    private static boolean isLevel(List<Point2D> stroke) {
        return StrictMath.abs(stroke.get(0).getY() - stroke.get(1).getY()) < 0.01;
    }
}
