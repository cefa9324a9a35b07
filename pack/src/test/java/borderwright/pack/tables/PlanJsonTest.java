package borderwright.pack.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePlan;
import borderwright.pack.language.Language;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
    private static final double HALF_A_TICK_MM = 0.5 / Length.TICKS_PER_MM;

    private final Plan plan = SamplePlan.metric();

    private JsonNode read() throws IOException {
        return new ObjectMapper()
                .readTree(
                        PlanJson.write(plan, Language.english().in(plan.garden().units())));
    }

    @Test
    void everyPartOfThePlanIsThereInTheOrderOfItsDeclaration() throws IOException {
        List<String> names = new ArrayList<>();
        read().fieldNames().forEachRemaining(names::add);

        assertThat(names)
                .containsExactly(
                        "garden",
                        "outline",
                        "survey",
                        "layout",
                        "boxes",
                        "strength",
                        "strength_reports",
                        "site",
                        "shopping",
                        "basket",
                        "cutting",
                        "work",
                        "totals",
                        "shortfalls");
    }

    @Test
    void lengthsCarryTheirUnitInTheirName() throws IOException {
        List<Piece> pieces = plan.boxes().get(0).pieces();
        JsonNode written = read().at("/boxes/0/pieces");

        assertThat(written).hasSameSizeAs(pieces);
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            JsonNode node = written.get(i);
            assertThat(node.get("label").asText()).isEqualTo(piece.label());
            assertThat(node.get("length_mm").asDouble())
                    .isCloseTo(piece.length().mm(), within(HALF_A_TICK_MM));
            assertThat(node.at("/place/bottom_mm").asDouble())
                    .isCloseTo(piece.place().bottomMm(), within(1e-6));
            assertThat(node.at("/left/tilt_deg").asDouble())
                    .isCloseTo(piece.left().tiltDeg(), within(1e-6));
        }
        assertThat(pieces)
                .anySatisfy(piece -> assertThat(piece.left().tiltDeg()).isGreaterThan(20));
        assertThat(read().at("/cutting/boards/0/trim_mm").asDouble())
                .isEqualTo(plan.garden().cutting().trim().mm());
    }

    @Test
    void aNumberThatMayBeMissingIsANumberOrLeftOut() throws IOException {
        byte[] written =
                PlanJson.write(plan, Language.english().in(plan.garden().units()));
        assertThat(new String(written, StandardCharsets.UTF_8)).doesNotContain("Optional");
        assertThat(read().at("/garden/design/strength/fasteners").properties())
                .extracting(Map.Entry::getKey)
                .containsExactly("withdrawal_nper_mm2", "pull_through_nper_mm2");
    }

    @Test
    void everyAngleIsInDegrees() throws IOException {
        JsonNode ellipse = read().at("/survey/points/0/ellipse");
        double bearingRad = plan.survey().points().get(0).ellipse().bearingRad();

        assertThat(ellipse.get("bearing_deg").asDouble()).isCloseTo(Math.toDegrees(bearingRad), within(1e-6));
        assertThat(ellipse.has("bearing_rad")).isFalse();
    }

    @Test
    void cornersAreAListOfNames() throws IOException {
        JsonNode corners = read().at("/garden/survey/corners");

        assertThat(corners.isArray()).isTrue();
        assertThat(corners.get(0).asText())
                .isEqualTo(plan.garden().survey().corners().get(0));
    }

    @Test
    void namesAreLowerCaseWithUnderscoresOnly() throws IOException {
        Pattern plain = Pattern.compile("[a-z][a-z0-9_]*");
        checkNames(read(), plain);
    }

    private static void checkNames(JsonNode node, Pattern plain) {
        Iterator<Map.Entry<String, JsonNode>> fields = node.fields();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            assertThat(field.getKey()).matches(plain);
            checkNames(field.getValue(), plain);
        }
        node.elements().forEachRemaining(e -> checkNames(e, plain));
    }

    @Test
    void moneyIsACurrencyAndAnExactDecimal() throws IOException {
        JsonNode total = read().at("/basket/total");

        assertThat(total.get("currency").asText()).isEqualTo("GBP");
        assertThat(total.get("amount").asText())
                .isEqualTo(plan.basket().total().getAmount().toPlainString());
    }

    @Test
    void whatWasNotSaidIsLeftOut() throws IOException {
        assertThat(read().at("/garden/workshop/first_planter").isMissingNode()).isTrue();
        assertThat(read().at("/garden/heading/about").asText()).startsWith("A garden");
        assertThat(read().at("/garden/heading/kind").asText()).isEqualTo("invented");
    }

    @Test
    void theSamePlanGivesTheSameBytes() {
        assertThat(PlanJson.write(SamplePlan.metric(), Language.english().in(UnitSystem.METRIC)))
                .isEqualTo(
                        PlanJson.write(SamplePlan.metric(), Language.english().in(UnitSystem.METRIC)));
    }
}
