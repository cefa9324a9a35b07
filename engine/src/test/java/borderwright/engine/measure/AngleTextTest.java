package borderwright.engine.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleTextTest {

    private static String fault(String text) {
        return AngleText.parse(text) instanceof Parsed.Bad<Angle> bad
                ? bad.what() + " " + bad.right()
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
                    "126d 30m, 126.5",
                    "126 deg 30 min, 126.5",
                    "25° 30' 00\", 25.5",
                    "25d 30m 36s, 25.51",
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
                    "30 gon 5 m|`30 gon 5 m` is not understood. Write EXAMPLE.",
                    "127 mm|`127 mm` does not begin with degrees. Write EXAMPLE.",
                    "1° 2' 3\" 4\"|`1° 2' 3\" 4\"` is not understood. Write EXAMPLE."
                })
        void eachSaysWhatWouldBeRight(String text, String sentence) {
            assertThat(fault(text)).isEqualTo(sentence.replace("EXAMPLE", AngleText.EXAMPLE));
        }

        @Test
        void nothingAtAll() {
            assertThat(fault(" ")).isEqualTo("` ` is not understood. Write " + AngleText.EXAMPLE + ".");
        }
    }
}
