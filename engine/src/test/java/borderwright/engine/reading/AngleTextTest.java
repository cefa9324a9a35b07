package borderwright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.measure.Angle;
import borderwright.engine.message.English;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleTextTest {
    private static final String EXAMPLE = English.METRIC.text(MeasureTextMessage.ANGLE_EXAMPLE.of());

    private static String fault(String text) {
        return AngleText.parse(text) instanceof Parsed.Bad<Angle> bad
                ? English.METRIC.sentence(bad.fault())
                : "no fault: " + AngleText.parse(text);
    }

    /** Definitions: 1 gon = 0.9 degrees, 60 minutes to the degree, 60 seconds to the minute (ISO 80000-3:2019, from memory). */
    @Nested
    class Published {
        @ParameterizedTest
        @CsvSource(
                quoteCharacter = '`',
                value = {
                    "127 deg, 127",
                    "127°, 127",
                    "127º, 127",
                    "126° 30', 126.5",
                    "126°30′, 126.5",
                    "126 degrees 30', 126.5",
                    "126 deg 30 min, 126.5",
                    "25° 30' 00\", 25.5",
                    "25 deg 30 min 36 sec, 25.51",
                    "30 gon, 27",
                    "1 gon, 0.9",
                    "`88,5 deg`, 88.5",
                    "-12.5 deg, -12.5",
                    "360 deg, 360",
                    "22½°, 22.5",
                    "0, 0"
                })
        void degrees(String text, double degrees) {
            assertThat(AngleText.parse(text).orThrow().degrees()).isCloseTo(degrees, within(1e-12));
        }
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @CsvSource(
                quoteCharacter = '`',
                delimiter = '|',
                value = {
                    "127|`127` has no unit. Write EXAMPLE.",
                    "25-30-00|`25-30-00` does not begin with degrees. Write EXAMPLE.",
                    "127 dge|`127 dge` does not begin with degrees. Write EXAMPLE. Perhaps you meant `deg`.",
                    "126° 75'|`126° 75'` is not understood. Write EXAMPLE.",
                    "126.5° 30'|`126.5° 30'` is not understood. Write EXAMPLE.",
                    "361 deg|`361 deg` is more than a full turn. Write EXAMPLE.",
                    "126d 30m|`126d 30m` shortens the units of an angle to d, m or s. Write deg, min and sec, such as 126 deg 30 min, or 126° 30'.",
                    "126d|`126d` shortens the units of an angle to d, m or s. Write deg, min and sec, such as 126 deg 30 min, or 126° 30'.",
                    "25° 30m 36s|`25° 30m 36s` shortens the units of an angle to d, m or s. Write deg, min and sec, such as 126 deg 30 min, or 126° 30'.",
                    "30 m|`30 m` does not begin with degrees. Write EXAMPLE.",
                    "30 gon 5 min|`30 gon 5 min` is not understood. Write EXAMPLE.",
                    "127 mm|`127 mm` does not begin with degrees. Write EXAMPLE.",
                    "1° 2' 3\" 4\"|`1° 2' 3\" 4\"` is not understood. Write EXAMPLE."
                })
        void eachSaysWhatWouldBeRight(String text, String sentence) {
            assertThat(fault(text)).isEqualTo(sentence.replace("EXAMPLE", EXAMPLE));
        }

        @Test
        void nothingAtAll() {
            assertThat(fault(" ")).isEqualTo("` ` is not understood. Write " + EXAMPLE + ".");
        }
    }
}
