package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.SamplePlan;
import borderwright.pack.contents.CutOutList;
import borderwright.pack.drawings.AngleTemplate;
import borderwright.pack.drawings.TemplateAngles;
import borderwright.pack.paper.PaperSize;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The full-size templates, measured on the printed page. */
class AngleTemplatesTest {
    private static final double TENTH_MM = 0.1;
    private static final double LEG_MM = AngleTemplate.LEG_MM;

    /** Both corners of the bend, and the cut for its mitre as where no scale sets it. */
    private static byte[] printed(UnitSystem units) {
        List<TemplateAngles> angles = new ArrayList<>(TemplateAngles.of(SamplePlan.in(units)));
        angles.add(new TemplateAngles(TemplateAngles.Kind.CUT, Angle.ofDegrees(mitreDeg(units)), List.of("P1-1a")));
        PaperSize paper = units == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER;
        return PackPages.pdf(
                PageMessage.TITLE_OF_LABELS,
                SamplePlan.in(units),
                List.of(CutOutList.templates(angles, units, paper).orElseThrow()),
                paper,
                Optional.empty());
    }

    /** A saw is set to a tenth of a degree, on the steep side. */
    private static double mitreDeg(UnitSystem units) {
        return StrictMath.ceil((90 - bendDeg(units) / 2) * 10 - 1e-6) / 10;
    }

    private static double barMm(UnitSystem units) {
        return units == UnitSystem.METRIC ? 100 : 101.6;
    }

    /** Degrees inside the planter that goes round the corner, at its back, as the engine laid it out. */
    private static double bendDeg(UnitSystem units) {
        Ring outline = SamplePlan.in(units).boxes().get(0).plan().outline();
        return IntStream.range(0, outline.size())
                .mapToDouble(i -> StrictMath.toDegrees(outline.insideAngle(i)))
                .filter(degrees -> degrees > 91 && degrees < 180)
                .findFirst()
                .orElseThrow();
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
    @EnumSource(UnitSystem.class)
    void checkBarsAreAsLongAsTheySayToATenthOfAMillimetre(UnitSystem units) throws IOException {
        try (PDDocument document = Loader.loadPDF(printed(units))) {
            List<List<Point2D>> bars = strokes(document, "this bar must measure").stream()
                    .filter(s -> s.size() == 2 && StrictMath.abs(length(s) - barMm(units)) < 2)
                    .toList();

            List<List<Point2D>> half = strokes(document, "this bar must measure").stream()
                    .filter(s -> s.size() == 2 && StrictMath.abs(length(s) - barMm(units) / 2) < 0.3 && isUpright(s))
                    // At the right edge of the page; the legs of a template stand at the left.
                    .filter(s -> s.get(0).getX() > 150)
                    .toList();

            // A level bar, and an upright one of half its length: a printer may stretch one way only.
            assertThat(bars).hasSize(1).allMatch(AngleTemplatesTest::isLevel);
            assertThat(length(bars.get(0))).isCloseTo(barMm(units), within(TENTH_MM));
            assertThat(half).hasSize(1);
            assertThat(length(half.get(0))).isCloseTo(barMm(units) / 2, within(TENTH_MM));
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void cornersOpenByTheirAngleToATenthOfAMillimetreAtTheEndOfTheirLegs(UnitSystem units) throws IOException {
        try (PDDocument document = Loader.loadPDF(printed(units))) {
            List<List<Point2D>> corners = strokes(document, "inside the planter").stream()
                    .filter(s -> s.size() == 3)
                    .filter(s -> StrictMath.abs(s.get(0).distance(s.get(1)) - LEG_MM) < TENTH_MM)
                    .toList();

            assertThat(corners).hasSize(2);
            for (List<Point2D> corner : corners) {
                // Both corners of the bend stand as far open on their hollow side: the front is 360 degrees less the
                // back.
                double across = 2 * LEG_MM * StrictMath.sin(StrictMath.toRadians(bendDeg(units) / 2));
                assertThat(corner.get(0).distance(corner.get(2))).isCloseTo(across, within(TENTH_MM));
                assertThat(corner.get(1).distance(corner.get(2))).isCloseTo(LEG_MM, within(TENTH_MM));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theCutLeansByItsAngleToATenthOfAMillimetre(UnitSystem units) throws IOException {
        try (PDDocument document = Loader.loadPDF(printed(units))) {
            double tiltDeg = mitreDeg(units);
            double aside = LEG_MM * StrictMath.sin(StrictMath.toRadians(tiltDeg));
            double up = LEG_MM * StrictMath.cos(StrictMath.toRadians(tiltDeg));
            String says = new LengthFormat(units).angle(Angle.ofDegrees(tiltDeg));

            assertThat(strokes(document, "Cut " + says + " from square")).anySatisfy(s -> {
                assertThat(s).hasSize(2);
                assertThat(s.get(1).getX() - s.get(0).getX()).isCloseTo(aside, within(TENTH_MM));
                assertThat(s.get(1).getY() - s.get(0).getY()).isCloseTo(up, within(TENTH_MM));
            });
        }
    }

    /** Another way of measuring: black dots on the page as a printer would put them. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theLevelBarMeasuresRightInAPictureOfThePage(UnitSystem units) throws IOException {
        try (PDDocument document = Loader.loadPDF(printed(units))) {
            int page = pagesOf(document, "this bar must measure").get(0);
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 508);
            int longest = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                longest = StrictMath.max(longest, longestDarkRun(image, y));
            }
            // 20 dots to a millimetre; the stroke's own width reaches past neither end.
            assertThat(longest / 20.0).isCloseTo(barMm(units), within(TENTH_MM + 0.25));
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

    private static boolean isUpright(List<Point2D> stroke) {
        return StrictMath.abs(stroke.get(0).getX() - stroke.get(1).getX()) < 0.01;
    }

    private static boolean isLevel(List<Point2D> stroke) {
        return StrictMath.abs(stroke.get(0).getY() - stroke.get(1).getY()) < 0.01;
    }
}
