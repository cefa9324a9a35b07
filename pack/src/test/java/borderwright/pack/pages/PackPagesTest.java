package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePlan;
import borderwright.pack.language.Language;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PackPagesTest {
    private static final byte[] METRIC = pdf(SamplePlan.metric(), PaperSize.A4);

    private static byte[] pdf(Plan plan, PaperSize paper) {
        return PackPages.pdf(plan, Comparison.NONE, paper, Optional.empty());
    }

    private static List<String> pages(byte[] pdf) throws IOException {
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

    @Test
    void everyPageIsHeadedByTheGardenAndSaysWhichOfHowManyItIs() throws IOException {
        List<String> pages = pages(METRIC);

        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains("Fence and bend", "page " + (i + 1) + " of " + pages.size())
                    .contains("Invented data, not a real garden.")
                    .contains("not a licensed engineer's design");
        }
    }

    @Test
    void allTextStandsOnOneScaleOfSixSizes() {
        String css = PageStyle.css(SamplePlan.metric().garden(), List.of(), PaperSize.A4);
        List<String> sizes = Pattern.compile("font-size: *([^;]+);")
                .matcher(css)
                .results()
                .map(found -> found.group(1).trim())
                .distinct()
                .sorted()
                .toList();
        assertThat(sizes).containsExactly("10pt", "11pt", "17pt", "21pt", "7.4pt", "8.4pt");
    }

    @Test
    void theFirstPageSaysWhatDoesNotHoldAndHowFarOverTheBudgetItIs() throws IOException {
        Plan plan = SamplePlan.metric();
        String brief = pages(METRIC).get(0).replaceAll("\\s+", " ");

        assertThat(brief)
                .contains(
                        "Look at this first",
                        plan.shortfalls().get(0).right(Language.english().in(UnitSystem.METRIC)));
        assertThat(brief).contains("GBP 14.35 over the budget.");
        assertThat(brief.indexOf("Look at this first")).isLessThan(brief.indexOf("over the budget."));
    }

    @Test
    void everyPieceIsNamedInItsBoxAndOnItsBoard() throws IOException {
        Plan plan = SamplePlan.metric();
        List<String> pages = pages(METRIC);
        String boxes = sheet(pages, "Box ");
        String cutting = sheet(pages, "Cutting sheets");

        plan.boxes().forEach(b -> b.pieces().forEach(p -> assertThat(boxes).contains(p.label())));
        plan.cutting().boards().forEach(b -> {
            assertThat(cutting).containsPattern("☐[\\s\\u00a0]*" + b.number() + "\\b");
            b.cuts().forEach(c -> assertThat(cutting).contains(c.label()));
        });
    }

    private static String sheet(List<String> pages, String title) {
        StringBuilder out = new StringBuilder();
        pages.stream()
                .filter(p -> p.contains("\n" + title) || p.contains(" " + title))
                .forEach(out::append);
        return out.toString();
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void pagesHaveTheSizeOfThePaper(PaperSize paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SamplePlan.small("Small"), paper))) {
            double width = document.getPage(0).getMediaBox().getWidth() * 25.4 / 72;
            double height = document.getPage(0).getMediaBox().getHeight() * 25.4 / 72;
            assertThat(width)
                    .isBetween(paper.widthMm(Orientation.PORTRAIT) - 0.1, paper.widthMm(Orientation.PORTRAIT) + 0.1);
            assertThat(height)
                    .isBetween(paper.heightMm(Orientation.PORTRAIT) - 0.1, paper.heightMm(Orientation.PORTRAIT) + 0.1);
        }
    }

    @Test
    void theSamePlanGivesTheSameBytes() {
        assertThat(pdf(SamplePlan.metric(), PaperSize.A4)).isEqualTo(METRIC);
    }

    @Test
    void aDatedPackSaysItsDayOnTheBrief() throws IOException {
        byte[] pdf = PackPages.pdf(
                SamplePlan.small("Dated"), Comparison.NONE, PaperSize.A4, Optional.of(LocalDate.of(2026, 3, 2)));

        assertThat(pages(pdf).get(0)).contains("Pack of 2026-03-02.");
    }

    @Nested
    class Limits {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "<script>alert(1)</script> & \"Sons\"",
                    "a]]>b</title></style>{}@page;\\",
                    "גן ירק",
                    "花园 🌱 \u0000\u0007",
                    "'; } body { display: none } /*"
                })
        void aHostileNameIsPrintedAsItIs(String name) throws IOException {
            List<String> pages = pages(pdf(SamplePlan.small(name), PaperSize.A4));

            assertThat(pages).hasSameSizeAs(pages(pdf(SamplePlan.small("Plain"), PaperSize.A4)));
            if (name.chars().allMatch(c -> c < 0x80)) {
                assertThat(pages.get(0).replaceAll("\\s+", " ")).contains(name);
            }
        }

        @Test
        void aNameOfTwoHundredCharactersWrapsOnTheBriefAndIsCutInTheHead() throws IOException {
            String name = "X".repeat(200);
            List<String> pages = pages(pdf(SamplePlan.small(name), PaperSize.A4));

            assertThat(pages.get(0).chars().filter(c -> c == 'X').count()).isEqualTo(200 + 63);
            assertThat(pages.get(1)).contains("X".repeat(63) + "\u2026");
        }
    }
}
