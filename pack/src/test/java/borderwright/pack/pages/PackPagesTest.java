package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.problem.Problem;
import borderwright.pack.SamplePack;
import borderwright.pack.SamplePlan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PackPagesTest {
    private static List<String> pages;
    private static List<String> dated;

    @BeforeAll
    static void read() throws IOException {
        pages = SamplePack.pages(SamplePack.metric());
        Optional<LocalDate> day = Optional.of(LocalDate.of(2026, 3, 2));
        dated = SamplePack.pages(PackPages.pdf(SamplePlan.small("Small"), Comparison.NONE, PaperSize.A4, day));
    }

    private static byte[] small(String name) {
        return SamplePack.print(SamplePlan.small(name), PaperSize.A4);
    }

    @Test
    void everyPageIsHeadedByTheGardenAndSaysWhichOfHowManyItIs() {
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains("Fence and bend", "page " + (i + 1) + " of " + pages.size())
                    .contains("Invented data, not a real garden.")
                    .contains("not a licensed engineer's design");
        }
    }

    @Test
    void theFirstPageSaysWhatDoesNotHoldAndHowFarOverTheBudgetItIs() {
        Plan plan = SamplePlan.metric();
        PrintedFigures f = PrintedFigures.in(UnitSystem.METRIC);
        String brief = SamplePack.oneLine(pages.get(0));
        Money over = plan.totals().costs().overBudget().orElseThrow();

        assertThat(plan.shortfalls().stream().map(Problem::where)).contains("survey.measures", "build", "budget");
        assertThat(brief).contains("Look at this first");
        plan.shortfalls().forEach(shortfall -> assertThat(brief).contains(inQuotes(f.sentence(shortfall))));
        assertThat(over.isPositive()).isTrue();
        assertThat(brief).contains("GBP " + over.getAmount().toPlainString() + " over the budget.");
        assertThat(brief.indexOf("Look at this first")).isLessThan(brief.indexOf("over the budget."));
    }

    @Test
    void everyPieceIsNamedInItsBoxAndOnItsBoard() throws IOException {
        Plan plan = SamplePlan.metric();
        String boxes = SamplePack.text(PackPages.working(plan, PaperSize.A4, Optional.empty()));
        String cutting = sheet(pages, "For the saw");

        plan.boxes().forEach(b -> b.pieces().forEach(p -> assertThat(boxes).contains(p.label())));
        plan.cutting().boards().forEach(b -> {
            assertThat(cutting).containsPattern("☐[\\s\\u00a0]*" + b.number() + "\\b");
            b.cuts().forEach(c -> assertThat(cutting).contains(c.label()));
        });
    }

    /** What stands between backticks in a sentence stands in quotes on paper. */
    private static String inQuotes(String sentence) {
        return sentence.replaceAll("`([^`]*)`", "\u201c$1\u201d");
    }

    private static String sheet(List<String> pages, String title) {
        StringBuilder out = new StringBuilder();
        pages.stream()
                .filter(p -> p.contains("\n" + title) || p.contains(" " + title))
                .forEach(out::append);
        return out.toString();
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void pagesHaveTheSizeOfThePaper(UnitSystem units) throws IOException {
        PaperSize paper = units == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER;
        try (PDDocument document = Loader.loadPDF(SamplePack.in(units))) {
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
        assertThat(SamplePack.print(SamplePlan.metric(), PaperSize.A4)).isEqualTo(SamplePack.metric());
    }

    @Test
    void aDatedPackSaysItsDayOnTheBrief() {
        assertThat(pages.get(0)).doesNotContain("Pack of");
        assertThat(dated.get(0)).contains("Pack of 2026-03-02.");
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
            List<String> hostile = SamplePack.pages(small(name));

            assertThat(hostile).hasSameSizeAs(dated);
            if (name.chars().allMatch(c -> c < 0x80)) {
                assertThat(hostile.get(0).replaceAll("\\s+", " ")).contains(name);
            }
        }

        @Test
        void aNameOfTwoHundredCharactersWrapsOnTheBriefAndIsCutInTheHead() throws IOException {
            String name = "X".repeat(200);
            List<String> long200 = SamplePack.pages(small(name));

            assertThat(long200.get(0).chars().filter(c -> c == 'X').count()).isEqualTo(200 + 63);
            assertThat(long200.get(1)).contains("X".repeat(63) + "\u2026");
        }
    }
}
