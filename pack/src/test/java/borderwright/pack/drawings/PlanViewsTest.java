package borderwright.pack.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FacingGap;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePlan;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.SvgWriter;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** What the plan and the fronts say of a garden. */
class PlanViewsTest {
    private static final double WIDTH_MM = 277;
    private static final double HEIGHT_MM = 180;

    static Stream<Plan> plans() {
        return Stream.of(SamplePlan.metric(), SamplePlan.imperial(), SamplePlan.paved(), SamplePlan.field());
    }

    private static List<String> texts(Drawing drawing) {
        List<String> texts = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Text text) {
                texts.add(text.text());
            }
        }
        return texts;
    }

    @ParameterizedTest
    @MethodSource("plans")
    void thePlanSaysTheWidthOfEveryGap(Plan plan) {
        LengthFormat lengths = new LengthFormat(plan.garden().units());
        List<FacingGap> gaps = FacingGap.of(plan.layout().boxes(), plan.outline());

        assertThat(gaps).isNotEmpty();
        assertThat(texts(PlanDrawing.draw(plan, WIDTH_MM, HEIGHT_MM)))
                .containsAll(
                        gaps.stream().map(gap -> lengths.length(gap.widthMm())).toList());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void thePlanSaysTheDiagonalsOfBoxesOfFourCorners(Plan plan) {
        LengthFormat lengths = new LengthFormat(plan.garden().units());
        List<String> texts = texts(PlanDrawing.draw(plan, WIDTH_MM, HEIGHT_MM));

        for (Box box : plan.boxes()) {
            Ring ring = box.plan().outline();
            if (ring.size() == 4) {
                assertThat(texts)
                        .as(box.plan().name())
                        .contains("diagonal " + lengths.length(ring.corner(0).distanceMm(ring.corner(2))));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void noTwoFrontsHaveOneTitle(Plan plan) {
        List<String> titles = ElevationDrawing.all(plan, WIDTH_MM, HEIGHT_MM).stream()
                .map(front -> texts(front).get(0))
                .toList();

        assertThat(titles)
                .isNotEmpty()
                .doesNotHaveDuplicates()
                .allSatisfy(title -> assertThat(title).startsWith("Front of "));
    }

    @Test
    void aBoxRoundACornerNamesTheEdgeBehindEachFront() {
        assertThat(ElevationDrawing.all(SamplePlan.metric(), WIDTH_MM, HEIGHT_MM))
                .extracting(front -> texts(front).get(0))
                .anySatisfy(title -> assertThat(title).endsWith("along edge A B"))
                .anySatisfy(title -> assertThat(title).endsWith("along edge B C"));
    }

    @Test
    void everyLayerOfThePlanIsAGroupOfItsOwn() throws Exception {
        String svg = SvgWriter.write(PlanDrawing.draw(SamplePlan.metric(), WIDTH_MM, HEIGHT_MM));
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        NodeList groups = document.getElementsByTagName("g");
        List<String> names = new ArrayList<>();
        for (int i = 0; i < groups.getLength(); i++) {
            assertThat(groups.item(i).hasChildNodes()).isTrue();
            names.add(groups.item(i).getAttributes().getNamedItem("id").getNodeValue());
        }

        assertThat(names)
                .doesNotHaveDuplicates()
                .contains("border", "boxes", "dimensions", "dimensions-texts", "names-texts", "near", "scale");
        assertThat(document.getDocumentElement().getElementsByTagName("path").getLength())
                .as("nothing is drawn outside a layer")
                .isEqualTo(inGroups(groups, "path"));
    }

    private static int inGroups(NodeList groups, String tag) {
        int count = 0;
        for (int i = 0; i < groups.getLength(); i++) {
            count += ((org.w3c.dom.Element) groups.item(i))
                    .getElementsByTagName(tag)
                    .getLength();
        }
        return count;
    }
}
