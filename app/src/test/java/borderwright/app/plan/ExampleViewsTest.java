package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.layout.plan.FacingGap;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.RimHeight;
import borderwright.pack.drawings.ElevationDrawing;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans and fronts of the examples. */
class ExampleViewsTest {
    /** The brief lists all sheets by title, and may run over. */
    private static final int FIRST_PAGE_AFTER_CONTENTS = 2;

    private static final double WIDTH_MM = 277;
    private static final double HEIGHT_MM = 180;

    private static List<Mark.Text> texts(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(Mark.Text.class::cast)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("borderwright.app.plan.ExamplePlans#names")
    void frontsHaveTitlesOfTheirOwnAndGapsTheirWidths(String example) {
        Plan plan = ExamplePlans.of(example);
        LengthFormat lengths = new LengthFormat(plan.garden().units());
        List<Drawing> fronts = ElevationDrawing.all(plan, WIDTH_MM, HEIGHT_MM / 2);
        Drawing layout = PlanDrawing.draw(plan, WIDTH_MM, HEIGHT_MM);

        assertThat(fronts)
                .extracting(front -> texts(front).get(0).text())
                .isNotEmpty()
                .doesNotHaveDuplicates();
        assertThat(texts(layout))
                .extracting(Mark.Text::text)
                .containsAll(FacingGap.of(plan.layout().boxes(), plan.outline()).stream()
                        .map(gap -> lengths.length(gap.widthMm()))
                        .toList());
        Stream.concat(Stream.of(layout), fronts.stream()).forEach(ExampleViewsTest::textsStandClear);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fence-to-shed", "patio-planter"})
    void everySheetGivesOneRimAndOneDepthOfSoil(String example) throws IOException {
        Plan plan = ExamplePlans.of(example);
        PrintedFigures f = PrintedFigures.in(plan.garden().units());
        assertThat(plan.boxes()).hasSize(1);
        RimHeight heights = plan.site().planting().rims().get(0);
        String rim = f.text(heights.rim().inWords());
        List<String> pages = pages(PackPages.pdf(plan, Comparison.NONE, PaperSize.A4, Optional.empty()));

        assertThat(pages.get(0)).as("brief").contains(rim).contains("soil depth " + f.length(heights.soilMm()));
        List<String> sheets = new ArrayList<>(pages.subList(FIRST_PAGE_AFTER_CONTENTS, pages.size()));
        sheets.addAll(pages(PackPages.working(plan, PaperSize.A4, Optional.empty())));
        for (String title : List.of("Plan and elevations", "Digging and bed", "Planting sheet")) {
            assertThat(sheet(sheets, title)).as(title).contains(rim);
        }
        for (String title : List.of("Plan and elevations", "Planting sheet")) {
            assertThat(sheet(sheets, title)).as(title).contains(f.length(heights.soilMm()));
        }
    }

    /** A sheet from its title on, to the end of the page after the one where it begins. */
    private static String sheet(List<String> pages, String title) {
        for (int i = 0; i < pages.size(); i++) {
            int start = pages.get(i).indexOf(title);
            if (start >= 0) {
                return pages.get(i).substring(start) + (i + 1 < pages.size() ? pages.get(i + 1) : "");
            }
        }
        throw new AssertionError("no sheet " + title);
    }

    /** The text of each page on one line. */
    private static List<String> pages(byte[] pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
        }
        return pages;
    }

    private static void textsStandClear(Drawing drawing) {
        List<Mark.Text> texts = texts(drawing);
        assertThat(drawing.leftOut()).as(drawing.says()).isEmpty();
        for (int i = 0; i < texts.size(); i++) {
            for (Mark.Text other : texts.subList(i + 1, texts.size())) {
                assertThat(texts.get(i).box().overlaps(other.box()))
                        .as("%s: '%s' over '%s'", drawing.says(), texts.get(i).text(), other.text())
                        .isFalse();
            }
        }
    }
}
