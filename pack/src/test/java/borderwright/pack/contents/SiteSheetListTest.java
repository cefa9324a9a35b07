package borderwright.pack.contents;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePack;
import borderwright.pack.SamplePlan;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.language.Language;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is printed of the site, read back from the PDF. */
class SiteSheetListTest {
    private static final Plan PLAN = SamplePlan.metric();
    private static final Plan MANY = SamplePlan.field();
    private static String text;
    private static String textOfMany;

    @BeforeAll
    static void read() throws IOException {
        text = SamplePack.allText(PLAN, SamplePack.metric(), PaperSize.A4);
        textOfMany = SamplePack.allText(MANY, SamplePack.print(MANY, PaperSize.A4), PaperSize.A4);
    }

    @Test
    void everySheetOfTheSiteIsThere() {
        assertThat(text)
                .contains(
                        "Build sequence",
                        "Digging and bed",
                        "Fill sheet",
                        "Planting sheet",
                        "Cautions by stage",
                        "Labels to cut out");
        assertThat(text).doesNotContain("Wall chart");
        assertThat(textOfMany).contains("Wall chart");
    }

    @Test
    void plantersAddUpToTheTotalThatIsPrinted() {
        PrintedFigures f = PrintedFigures.in(PLAN.garden().units());
        double sum = PLAN.site().filling().planters().stream()
                .mapToDouble(SoilVolume::filledM3)
                .sum();
        assertThat(sum).isCloseTo(PLAN.site().filling().filledM3(), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(text)
                .contains("in all " + f.lengths().volume(sum) + " "
                        + f.lengths().volume(PLAN.site().filling().orderedM3()));
    }

    @Test
    void boxesAddUpToTheSpoilThatIsPrinted() {
        PrintedFigures f = PrintedFigures.in(PLAN.garden().units());
        double dug = PLAN.site().ground().boxes().stream()
                .mapToDouble(b -> b.dugM3())
                .sum();
        assertThat(dug).isCloseTo(PLAN.site().ground().spoil().dugM3(), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(text).contains("earth dug, in place " + f.lengths().volume(dug));
    }

    @Test
    void everyTaskIsPrintedWithItsHours() {
        PLAN.work()
                .tasks()
                .forEach(task -> assertThat(text)
                        .contains(Language.english().in(PLAN.garden().units()).text(task.what())));
    }

    @Test
    void cautionsSayBuriedServicesOnlyWhereSomethingIsDug() {
        assertThat(text).contains("Call the dig-enquiry service").contains("The saw's manual comes first");
    }

    @Test
    void likeBedsAreSaidOnce() {
        assertThat(textOfMany).contains("F1 to F60 (60)");
    }

    @Test
    void manyPiecesAreCountedAndStillAllSaid() {
        List<Piece> walls = MANY.boxes().get(0).pieces().stream()
                .filter(p -> p.role() == Piece.Role.WALL)
                .toList();
        assertThat(walls).isNotEmpty();
        MANY.cutting().setUps().forEach(setUp -> {
            List<String> lines = PartLabels.inShort(setUp.labels());
            lines.forEach(line -> assertThat(textOfMany).contains(line));
            assertThat(textOfMany).contains(setUp.labels().size() + " pieces");
        });
    }

    @Test
    void partsOfManyPlantersAreSaidWithEachPlanterOnce() {
        assertThat(PartLabels.inShort(List.of(
                        "N1-1a",
                        "N2-1a",
                        "N3-1a",
                        "N10-1a",
                        "N2-1c",
                        "N1-1c",
                        "N3-1c",
                        "S4-tie1",
                        "S4-tie10",
                        "S4-tie2",
                        "S4-tie3",
                        "S4-cap-a")))
                .containsExactly("1a, 1c of N1 to N3", "1a of N10", "cap-a, tie1 to tie3, tie10 of S4");
    }
}
