package borderwright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {
    private static final String EXAMPLE = English.METRIC.text(MeasureTextMessage.LENGTH_EXAMPLE.of());

    private static long ticks(String text) {
        return LengthText.parse(text).orThrow().ticks();
    }

    private static String fault(String text) {
        return LengthText.parse(text) instanceof Parsed.Bad<Length> bad
                ? English.METRIC.sentence(bad.fault())
                : "no fault: " + LengthText.parse(text);
    }

    /** International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly, so 1 ft = 304.8 mm, 1 in = 25.4 mm (from memory). */
    @Nested
    class Published {
        @ParameterizedTest
        @CsvSource(
                quoteCharacter = '`',
                value = {
                    "1 in, 25.4",
                    "1 ft, 304.8",
                    "1 yd, 914.4",
                    "5' 3 1/2\", 1612.9",
                    "5'-3-1/2\", 1612.9",
                    "11/16 in, 17.4625",
                    "1/32 in, 0.79375",
                    "1/64 in, 0.396875"
                })
        void inchesAreExact(String text, BigDecimal mm) {
            assertThat(BigDecimal.valueOf(ticks(text))).isEqualByComparingTo(mm.multiply(BigDecimal.valueOf(320)));
        }
    }

    @Nested
    class Spellings {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "1.85 m",
                    "1850 mm",
                    "1850mm",
                    "185 cm",
                    "1,85 m",
                    "+1.85 m",
                    " 1.850 metres ",
                    "1850 MM",
                    "1 m 85 cm",
                    "1 m 850 mm",
                    "1850\u00a0mm"
                })
        void metric(String text) {
            assertThat(ticks(text)).isEqualTo(1850 * 320);
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "6' 4 1/2\"",
                    "6'4 1/2\"",
                    "6' 4½\"",
                    "6′ 4½″",
                    "6’ 4 1/2”",
                    "6 ft 4 1/2 in",
                    "6 ft. 4 1/2 in.",
                    "6ft 4-1/2in",
                    "6'-4-1/2\"",
                    "6' - 4 1/2\"",
                    "6' 4 1/2",
                    "6' 4.5\"",
                    "6' 4 1⁄2''",
                    "76.5 in",
                    "76 1/2 inches",
                    "2 yd 4 1/2 in"
                })
        void imperial(String text) {
            assertThat(ticks(text)).isEqualTo(153 * 8128 / 2);
        }

        @ParameterizedTest
        @CsvSource(
                quoteCharacter = '`',
                value = {
                    "-452 mm, -144640",
                    "−452 mm, -144640",
                    "- 452 mm, -144640",
                    "-1' 6\", -146304",
                    "0, 0",
                    "-0, 0",
                    "0.0, 0",
                    ".5 m, 160000",
                    "½ in, 4064",
                    "18 ft 4-3/8 in, 1791208"
                })
        void signsAndZero(String text, long expected) {
            assertThat(ticks(text)).isEqualTo(expected);
        }

        @Test
        void aDecimalCommaThatCannotPartThousandsIsADecimalComma() {
            assertThat(ticks("0,125 m")).isEqualTo(125 * 320);
            assertThat(ticks("1250,5 mm")).isEqualTo(400160);
            assertThat(ticks("1234,567 m")).isEqualTo(1234567 * 320);
        }

        @Test
        void betweenTwoTicksTheNearerIsTaken() {
            assertThat(ticks("1/3 in")).isEqualTo(2709);
            assertThat(ticks("0.001 mm")).isEqualTo(0);
            assertThat(ticks("0.0015625 mm")).isEqualTo(1);
            assertThat(ticks("-0.0015625 mm")).isEqualTo(-1);
        }
    }

    @Nested
    class Limits {
        @Test
        void tenKilometresIsTheMost() {
            assertThat(ticks("10000 m")).isEqualTo(LengthText.MOST.ticks());
            assertThat(fault("10001 m")).isEqualTo("`10001 m` is more than 10 km. Check the number and its unit.");
            assertThat(fault("-10001 m")).contains("more than 10 km");
        }

        @Test
        void longTextsAndManyDigitsAreRefusedWithoutBeingReckoned() {
            assertThat(fault("9".repeat(50) + " m")).contains("has too many digits");
            assertThat(fault("1/" + "9".repeat(50) + " m")).contains("has too many digits");
            assertThat(fault("9".repeat(1_000_000) + " m")).startsWith("A text of 1000002 characters is too long");
        }
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @CsvSource(
                quoteCharacter = '`',
                delimiter = '|',
                value = {
                    "1850|`1850` has no unit. Write EXAMPLE.",
                    "6-1-1/8|`6-1-1/8` is not understood. Write EXAMPLE.",
                    "6-1\"|`6-1\"` leaves out the mark for feet. Write 6' 1-1/8\", 6'-1-1/8\" or 6 ft 1-1/8 in.",
                    "6-1-1/8\"|`6-1-1/8\"` leaves out the mark for feet. Write 6' 1-1/8\", 6'-1-1/8\" or 6 ft 1-1/8 in.",
                    "6-1-1/8 in|`6-1-1/8 in` leaves out the mark for feet. Write 6' 1-1/8\", 6'-1-1/8\" or 6 ft 1-1/8 in.",
                    "1,850 mm|The comma in `1,850 mm` may separate thousands or decimals. Write 1850 mm or 1.850 mm.",
                    "1,850.5 mm|`1,850.5 mm` has more than one point or comma in a number. Write it without thousands separators, such as 1850.5 mm.",
                    "1 850 mm|`1 850 mm` is not understood. Write EXAMPLE.",
                    "1'850 mm|`1'850 mm` adds units that do not go together. Write EXAMPLE.",
                    "5' 14\"|The last part of `5' 14\"` is as large as one unit of the part before it, or larger. Write EXAMPLE.",
                    "5.5' 3\"|`5.5' 3\"` has a fraction before its last part. Write EXAMPLE.",
                    "3\" 5'|`3\" 5'` adds units that do not go together. Write EXAMPLE.",
                    "1.85 mn|`1.85 mn` has the unit `mn`, which is not a unit of length. Units are mm, cm, m, in, ft, yd, ' and \". Perhaps you meant `mm`.",
                    "3 kg|`3 kg` has the unit `kg`, which is not a unit of length. Units are mm, cm, m, in, ft, yd, ' and \".",
                    "1/0 in|`1/0 in` divides by 0. Write EXAMPLE.",
                    "1e3 mm|`1e3 mm` has the unit `e`, which is not a unit of length. Units are mm, cm, m, in, ft, yd, ' and \".",
                    "NaN|`NaN` is not understood. Write EXAMPLE.",
                    "1.5 1/2 in|`1.5 1/2 in` is not understood. Write EXAMPLE.",
                    "--5 mm|`--5 mm` is not understood. Write EXAMPLE.",
                    "1:30|`1:30` is not understood. Write EXAMPLE.",
                    "١٢ mm|`١٢ mm` is not understood. Write EXAMPLE.",
                    "5 mm 3|`5 mm 3` is not understood. Write EXAMPLE.",
                    "mm|`mm` is not understood. Write EXAMPLE."
                })
        void eachSaysWhatWouldBeRight(String text, String sentence) {
            assertThat(fault(text)).isEqualTo(sentence.replace("EXAMPLE", EXAMPLE));
        }

        @Test
        void nothingAtAll() {
            assertThat(fault("")).isEqualTo("`` is not understood. Write " + EXAMPLE + ".");
        }
    }

    @Nested
    class Properties {
        private static final long SEED = 20260301;

        @Test
        void whatTheFormatWritesIsReadBackToItsLastDigit() {
            Random random = new Random(SEED);
            for (int i = 0; i < 4000; i++) {
                Length length = new Length((long) ((random.nextDouble() - 0.3) * 320 * 30_000));
                for (UnitSystem units : UnitSystem.values()) {
                    LengthFormat format = new LengthFormat(units);
                    long step = units == UnitSystem.METRIC ? 320 : 508;
                    long read = ticks(format.length(length.mm()));
                    assertThat(read % step).as("%s, seed %d", length, SEED).isZero();
                    assertThat(Math.abs(2 * (read - length.ticks())))
                            .as("%s, seed %d", length, SEED)
                            .isLessThanOrEqualTo(step);
                    long piece = ticks(format.piece(length.mm()));
                    assertThat(Math.abs(2 * (piece - length.ticks())))
                            .as("%s, seed %d", length, SEED)
                            .isLessThanOrEqualTo(units == UnitSystem.METRIC ? 32 : 508);
                }
            }
        }

        @Test
        void anyTextIsReadOrRefusedWithASentence() {
            Random random = new Random(SEED);
            String letters = "0123456789 .,-+/'\"mcinftyd½°′ekM\u0000é";
            for (int i = 0; i < 20_000; i++) {
                StringBuilder text = new StringBuilder();
                for (int n = random.nextInt(12); n >= 0; n--) {
                    text.append(letters.charAt(random.nextInt(letters.length())));
                }
                for (Parsed<?> answer :
                        new Parsed<?>[] {LengthText.parse(text.toString()), AngleText.parse(text.toString())}) {
                    if (answer instanceof Parsed.Bad<?> bad) {
                        assertThat(English.METRIC.text(bad.fault()))
                                .as("seed %d", SEED)
                                .isNotBlank();
                        assertThat(English.METRIC.right(bad.fault()))
                                .as("seed %d", SEED)
                                .isNotBlank();
                    }
                }
            }
        }
    }
}
