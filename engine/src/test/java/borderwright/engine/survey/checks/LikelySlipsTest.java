package borderwright.engine.survey.checks;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.survey.fieldbook.FieldBook.Entry;
import borderwright.engine.survey.fieldbook.FieldBook.Kind;
import borderwright.engine.survey.fieldbook.ReadingMessage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LikelySlipsTest {

    private static String slip(Kind kind, double measured, double implied, double sd, UnitSystem units) {
        Entry entry = new Entry("", ReadingMessage.READING_TAPE.of("A-B"), kind, measured, sd, 0, 1);
        return new LikelySlips(units)
                .likely(entry, implied, sd)
                .map(English.in(units)::text)
                .orElse("");
    }

    @ParameterizedTest
    @CsvSource({
        "3905, 4906, 'perhaps it was read 1 m too short'",
        "3905, 2904, 'perhaps it was read 1 m too long'",
        "3905, 3806, 'perhaps the tape was held at its 100 mm mark and this was not subtracted'",
        "3905, 4004, 'perhaps it was read 100 mm too short'",
        "3905, 3895, 'perhaps it was read 10 mm too long'",
        "2750, 2706, 'perhaps two digits were swapped: 2750 mm for 2705 mm'",
        "3900, 3963, 'perhaps 3.90 m was read for 3.96 m'",
        "3900, 3932, ''",
    })
    void ofTapes(double measured, double implied, String words) {
        assertThat(slip(Kind.LENGTH, measured, implied, 2, UnitSystem.METRIC)).isEqualTo(words);
    }

    @Test
    void ofAHook() {
        assertThat(slip(Kind.LENGTH, 1200, 1202, 0.5, UnitSystem.METRIC))
                .isEqualTo("perhaps the tape's hook was badly seated");
    }

    @ParameterizedTest
    @CsvSource({
        "62, 118, 'perhaps the gauge showed the supplement: 180 deg less 62 deg'",
        "62, 28, 'perhaps the gauge showed the complement: 90 deg less 62 deg'",
        "127, 117.2, 'perhaps it was read 10 deg too large'",
        "88.5, 98.3, 'perhaps it was read 10 deg too small'",
        "127, 172.2, 'perhaps two digits were swapped: 127 deg for 172 deg'",
        "62, 65, ''",
    })
    void ofGauges(double measured, double implied, String words) {
        assertThat(slip(Kind.ANGLE, measured, implied, 0.3, UnitSystem.METRIC)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "96, -95, 'perhaps above was mistaken for below'",
        "-420, -518, 'perhaps it was read 100 mm too high'",
        "-420, -240, 'perhaps two digits were swapped: -420 mm for -240 mm'",
    })
    void ofLevels(double measured, double implied, String words) {
        assertThat(slip(Kind.HEIGHT, measured, implied, 2, UnitSystem.METRIC)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "72, 84, 'perhaps it was read 1 ft too short'",
        "72, 71, 'perhaps the tape was held at its 1 in mark and this was not subtracted'",
        "72.125, 72.375, 'perhaps it was read 1/4\" too short'",
        "72.125, 72.0, 'perhaps it was read 1/8\" too long'",
    })
    void ofTapesInInches(double measuredInches, double impliedInches, String words) {
        assertThat(slip(Kind.LENGTH, 25.4 * measuredInches, 25.4 * impliedInches, 0.5, UnitSystem.IMPERIAL))
                .isEqualTo(words);
    }

    @Test
    void aSlipWithinTheSurenessIsNoSlip() {
        assertThat(slip(Kind.LENGTH, 3905, 3895, 8, UnitSystem.METRIC)).isEmpty();
    }
}
