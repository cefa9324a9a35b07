package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.form.FormChoice;
import borderwright.pack.form.FormTable;
import borderwright.pack.form.SurveyForm;
import borderwright.pack.paper.PaperSize;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The survey form asks for the document's keys, in its words and order, so that it is copied row by row. */
class FormKeysTest {
    private static final SurveyForm FORM = new SurveyForm(PaperSize.A4, UnitSystem.METRIC);

    private static List<String> columns(FormTable table) {
        return table.columns().stream().map(FormTable.Column::key).toList();
    }

    @Test
    void everyKindOfMeasureHasATableOfItsKeysInTheDocumentsOrder() {
        List<FormTable> tables = List.of(
                FORM.tapes(),
                FORM.levels(),
                FORM.chains(),
                FORM.offsets(),
                FORM.angles(),
                FORM.leans(),
                FORM.arcs(),
                FORM.rises());

        assertThat(tables.stream().map(table -> columns(table).get(0)))
                .containsExactlyInAnyOrderElementsOf(RecordShape.measures().keySet());
        for (FormTable table : tables) {
            List<String> keys =
                    RecordShape.measures().get(columns(table).get(0)).keys();
            assertThat(columns(table))
                    .isEqualTo(
                            keys.stream().filter(key -> !key.equals("straight")).toList());
        }
    }

    @Test
    void edgesAndNearbyThingsHaveAllTheirKeys() {
        assertThat(columns(FORM.edges()))
                .isEqualTo(RecordShape.of(GivenSurvey.GivenEdge.class).keys());
        assertThat(columns(FORM.near()))
                .isEqualTo(RecordShape.of(GivenNearby.class).keys());
    }

    @Test
    void whatIsWrittenOnLinesAndTickedAreKeysOfSurveyAndGround() {
        RecordShape survey = RecordShape.of(GivenSurvey.class);
        RecordShape ground = RecordShape.of(GivenGround.class);

        assertThat(FORM.surveyLines()).hasSize(2).isSubsetOf(survey.keys());
        assertThat(Set.of(FORM.goingRound().key())).isSubsetOf(survey.keys());
        assertThat(FORM.goingRound().choices())
                .isEqualTo(survey.field(FORM.goingRound().key()).orElseThrow().choices());
        for (FormChoice choice : FORM.ground()) {
            assertThat(choice.choices())
                    .isEqualTo(ground.field(choice.key()).orElseThrow().choices());
        }
        assertThat(ground.keys()).contains(FORM.loadLimit());
    }

    @Test
    void columnsFillTheirTable() {
        for (FormTable table : List.of(FORM.tapes(), FORM.offsets(), FORM.near(), FORM.chains())) {
            assertThat(table.columns().stream()
                            .mapToInt(FormTable.Column::percent)
                            .sum())
                    .isBetween(90, 100);
        }
    }
}
