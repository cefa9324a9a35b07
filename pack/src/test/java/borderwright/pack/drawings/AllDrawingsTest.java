package borderwright.pack.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.plan.Plan;
import borderwright.pack.AllDrawings;
import borderwright.pack.SamplePlan;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every drawing of a pack. */
class AllDrawingsTest {
    private static final List<Arguments> PACKS = List.of(
            pack("metric on A4", SamplePlan.metric(), PaperSize.A4),
            pack("metric on Letter", SamplePlan.metric(), PaperSize.LETTER),
            pack("imperial on Letter", SamplePlan.imperial(), PaperSize.LETTER),
            pack("imperial on A4", SamplePlan.imperial(), PaperSize.A4),
            pack("paved", SamplePlan.paved(), PaperSize.A4),
            pack("sixty boxes", SamplePlan.field(), PaperSize.A4));

    private static Arguments pack(String name, Plan plan, PaperSize paper) {
        return Arguments.of(name, plan, paper, AllDrawings.of(plan, paper));
    }

    static Stream<Arguments> packs() {
        return PACKS.stream();
    }

    private static List<Mark.Text> texts(Drawing drawing) {
        List<Mark.Text> texts = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Text text) {
                texts.add(text);
            }
        }
        return texts;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packs")
    void noTextCoversAnother(String name, Plan plan, PaperSize paper, List<Drawing> drawings) {
        for (Drawing drawing : drawings) {
            List<Mark.Text> texts = texts(drawing);
            for (int i = 0; i < texts.size(); i++) {
                for (int j = i + 1; j < texts.size(); j++) {
                    assertThat(texts.get(i).box().overlaps(texts.get(j).box()))
                            .as(
                                    "%s: '%s' over '%s'",
                                    drawing.says(),
                                    texts.get(i).text(),
                                    texts.get(j).text())
                            .isFalse();
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packs")
    void everyTextLiesOnItsSheet(String name, Plan plan, PaperSize paper, List<Drawing> drawings) {
        for (Drawing drawing : drawings) {
            for (Mark.Text text : texts(drawing)) {
                assertThat(text.box().inside(drawing.widthMm(), drawing.heightMm()))
                        .as("%s: '%s'", drawing.says(), text.text())
                        .isTrue();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packs")
    void everyStrokeLiesOnItsSheet(String name, Plan plan, PaperSize paper, List<Drawing> drawings) {
        for (Drawing drawing : drawings) {
            for (Mark mark : drawing.marks()) {
                if (mark instanceof Mark.Path path) {
                    assertThat(path.spots()).as(drawing.says()).allSatisfy(s -> {
                        assertThat(s.x()).isBetween(0.0, drawing.widthMm());
                        assertThat(s.y()).isBetween(0.0, drawing.heightMm());
                    });
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packs")
    void everyDrawingFitsItsPageAndLeavesNoLabelOut(String name, Plan plan, PaperSize paper, List<Drawing> drawings) {
        for (Drawing drawing : drawings) {
            assertThat(drawing.widthMm()).isLessThanOrEqualTo(paper.roomWidthMm(Orientation.LANDSCAPE) + 1e-6);
            assertThat(drawing.heightMm())
                    .as(drawing.says())
                    .isLessThanOrEqualTo(paper.roomHeightMm(
                                    drawing.widthMm() > paper.roomWidthMm(Orientation.PORTRAIT) + 1
                                            ? Orientation.LANDSCAPE
                                            : Orientation.PORTRAIT)
                            + 1e-6);
            assertThat(drawing.leftOut()).as(drawing.says()).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packs")
    void noNumberStandsWithoutItsUnit(String name, Plan plan, PaperSize paper, List<Drawing> drawings) {
        List<String> names = names(plan);
        for (Drawing drawing : drawings) {
            for (Mark.Text text : texts(drawing)) {
                String words = drawing.says().startsWith("Labels ") ? withoutBoards(text.text()) : text.text();
                assertThat(withoutNamesAndQuantities(words, names))
                        .as("%s: '%s'", drawing.says(), text.text())
                        .doesNotContainPattern("\\d");
            }
        }
    }

    /** A label without a line of board numbers, such as {@code boards 2 to 6, 9,} or what is left of it on the next line. */
    private static String withoutBoards(String line) {
        return line.replaceAll("^(boards )?\\d+( to( \\d+)?)?(, \\d+( to( \\d+)?)?)*,?$", "");
    }

    private static List<String> names(Plan plan) {
        List<String> names = new ArrayList<>();
        for (Box box : plan.boxes()) {
            names.add(box.plan().name());
            names.addAll(box.plan().planters());
            box.pieces().stream().map(Piece::label).forEach(names::add);
        }
        plan.garden().sections().forEach(s -> names.add(s.name()));
        names.addAll(plan.outline().cornerNames());
        names.sort(Comparator.comparingInt(String::length).reversed());
        return names;
    }

    static String withoutNamesAndQuantities(String text, List<String> names) {
        String rest = text;
        for (String name : names) {
            rest = rest.replaceAll("(?<![\\w-])" + java.util.regex.Pattern.quote(name) + "(?![\\w-])", "");
        }
        return rest.replaceAll("bulge drawn \\d+:\\d+", "")
                .replaceAll(
                        "(Course|course|Board|cut|peg|mark|Step|part|of|no\\.|open|and) \\d+( more)?|^\\d+-\\d+$", "")
                .replaceAll("scale (\\d[\\d/-]*\" to \\d+' \\()?1:\\d+\\)?", "")
                .replaceAll(
                        "-?\\d+([.]\\d+)?(-\\d+/\\d+|/\\d+)?( mm| m3| m2| m| in| litres| cu yd| cu ft|°|'|\"| %| boards| screws)",
                        "");
    }

    @Test
    void theCheckForUnitsCanFail() {
        assertThat(withoutNamesAndQuantities("F1-F3-2 1850", List.of("F1-F3-2")))
                .contains("1850");
        assertThat(withoutNamesAndQuantities("F1-F3-2 1850 mm", List.of("F1-F3-2")))
                .doesNotContain("1850");
        assertThat(withoutNamesAndQuantities("6' 4-1/2\"", List.of())).isBlank();
    }
}
