package borderwright.app.form;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.survey.BorderSurvey;
import borderwright.engine.survey.SurveyAnswer;
import borderwright.engine.survey.checks.SurveyReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The form shows where a second tape finds a slip, and what it promises there is so. */
class SecondTapeTest {
    private static final int SLIP_MM = 100;

    /** A rectangle of 4 m by 3 m. */
    private static final List<String> CLOSED = List.of("A B", "B C", "C D", "D A", "A C", "B D");

    private static final List<Integer> CLOSED_MM = List.of(4000, 3000, 4000, 3000, 5000, 5000);

    private static final List<Integer> STRIP_MM = List.of(1500, 1700, 1600, 3200, 3300, 4800);

    private static SurveyReport survey(String survey) throws IOException {
        String document = """
                name: Form
                currency: GBP
                survey:
                %s
                runs:
                  - {name: run, along: A B, planters: 2, front to back: 500 mm, height: 300 mm}
                build: {walls: larch}
                sections:
                  - {name: larch, thickness: 25 mm, width: 150 mm}
                """.formatted(survey.indent(2).stripTrailing());
        DocumentAnswer read = GardenReader.read(document.getBytes(StandardCharsets.UTF_8));
        assertThat(read).isInstanceOf(DocumentAnswer.Sound.class);
        Garden garden =
                GardenResolver.resolve(((DocumentAnswer.Sound) read).document().garden());
        SurveyAnswer answer = BorderSurvey.adjust(garden.survey());
        return ((SurveyAnswer.Adjusted) answer).report();
    }

    private static List<Integer> slipped(List<Integer> lengths, int which) {
        List<Integer> read = new ArrayList<>(lengths);
        if (which >= 0) {
            read.set(which, read.get(which) + SLIP_MM);
        }
        return read;
    }

    private static String tape(String ends, int mm) {
        return "  - {tape: " + ends + ", reads: " + mm + " mm}\n";
    }

    private static SurveyReport closed(int slip) throws IOException {
        List<Integer> read = slipped(CLOSED_MM, slip);
        StringBuilder measures = new StringBuilder("corners: A B C D\nmeasures:\n");
        for (int i = 0; i < CLOSED.size(); i++) {
            measures.append(tape(CLOSED.get(i), read.get(i)));
        }
        return survey(measures.toString());
    }

    private static SurveyReport strip(int slip) throws IOException {
        List<Integer> read = slipped(STRIP_MM, slip);
        return survey("corners: A B\nstrip width: 600 mm\nmeasures:\n  - {chain: A P Q B, lengths: ["
                + read.get(0) + " mm, " + read.get(1) + " mm, " + read.get(2) + " mm]}\n" + tape("A Q", read.get(3))
                + tape("P B", read.get(4)) + tape("A B", read.get(5)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void aSlipInAnySideOrDiagonalOfAClosedBorderShows(int slip) throws IOException {
        assertThat(closed(-1).suspects().candidates()).isEmpty();
        assertThat(closed(slip).suspects().candidates()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void aSlipInAnyLengthOfAStripIsNamed(int slip) throws IOException {
        assertThat(strip(-1).suspects().candidates()).isEmpty();

        SurveyReport.Suspects suspects = strip(slip).suspects();

        assertThat(suspects.named()).isTrue();
        assertThat(suspects.candidates().get(0).implied()).isCloseTo(STRIP_MM.get(slip), Offset.offset(10.0));
    }
}
