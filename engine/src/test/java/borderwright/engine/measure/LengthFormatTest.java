package borderwright.engine.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {
    private static final LengthFormat METRIC = new LengthFormat(UnitSystem.METRIC);
    private static final LengthFormat IMPERIAL = new LengthFormat(UnitSystem.IMPERIAL);

    /** Factors from the 1959 yard and pound agreement (from memory): 1 in = 25.4 mm, 1 lb = 0.45359237 kg. */
    @Nested
    class Published {
        @Test
        void aThousandMillimetresAreThirtyNineAndThreeEighthsInches() {
            // 1000 / 25.4 = 39.3701; the nearest sixteenth is 39 6/16
            assertThat(IMPERIAL.piece(1000)).isEqualTo("39-3/8\"");
        }

        @ParameterizedTest
        @CsvSource(
                quoteCharacter = '`',
                value = {
                    "1612.9, 5' 3-1/2\"",
                    "17.4625, 11/16\"",
                    "304.8, 1' 0\"",
                    "304.7, 1' 0\"",
                    "303.2, 11-15/16\"",
                    "0, 0\"",
                    "0.79375, 1/16\"",
                    "-0.79375, -1/16\"",
                    "0.79, 0\"",
                    "-452, -1' 5-13/16\""
                })
        void feetAndInchesAreReducedAndCarried(double mm, String written) {
            assertThat(IMPERIAL.length(mm)).isEqualTo(written);
        }
    }

    @Nested
    class Metric {
        @ParameterizedTest
        @CsvSource({"1850, 1850 mm", "1850.5, 1851 mm", "-452.5, -453 mm", "9999.4, 9999 mm", "9999.5, 10.000 m"})
        void lengths(double mm, String written) {
            assertThat(METRIC.length(mm)).isEqualTo(written);
        }

        @Test
        void runsOfBoardToTheTenthOfAMetre() {
            assertThat(METRIC.run(61_249)).isEqualTo("61.2 m");
            assertThat(IMPERIAL.run(61_249)).isEqualTo("201 ft"); // 61.249 / 0.3048 = 200.95
        }

        @Test
        void piecesToTheTenthOfAMillimetre() {
            assertThat(METRIC.piece(1217.64)).isEqualTo("1217.6 mm");
            assertThat(METRIC.piece(1218)).isEqualTo("1218 mm");
            assertThat(METRIC.piece(-0.05)).isEqualTo("-0.1 mm");
            assertThat(METRIC.piece(-0.01)).isEqualTo("0 mm");
        }

        @Test
        void siteLengthsInMetres() {
            assertThat(METRIC.site(9605)).isEqualTo("9.605 m");
            assertThat(METRIC.site(-96)).isEqualTo("-0.096 m");
        }
    }

    @Test
    void areasVolumesWeightsAndAngles() {
        assertThat(METRIC.area(2.405)).isEqualTo("2.41 m2");
        assertThat(IMPERIAL.area(2.405)).isEqualTo("25.9 sq ft");
        assertThat(METRIC.volume(0.864)).isEqualTo("864 litres");
        assertThat(METRIC.volume(2.4265)).isEqualTo("2.43 m3");
        assertThat(IMPERIAL.volume(2.4265)).isEqualTo("3.17 cu yd");
        assertThat(IMPERIAL.volume(0.35)).isEqualTo("12.4 cu ft");
        assertThat(METRIC.weight(24.31)).isEqualTo("24.3 kg");
        assertThat(IMPERIAL.weight(24.31)).isEqualTo("53.6 lb");
        assertThat(METRIC.weight(1234.5)).isEqualTo("1235 kg");
        assertThat(METRIC.angle(Angle.ofDegrees(26.5))).isEqualTo("26.5°");
    }

    @Test
    void theSameInAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(METRIC.piece(1217.6)).isEqualTo("1217.6 mm");
            assertThat(IMPERIAL.length(1612.9)).isEqualTo("5' 3-1/2\"");
            assertThat(METRIC.weight(24.31)).isEqualTo("24.3 kg");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatIsNotANumberIsACallersBug() {
        assertThatThrownBy(() -> METRIC.length(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> METRIC.area(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void rulesOfTheTradeAreRoundInBothUnits() {
        assertThat(new LengthFormat(UnitSystem.METRIC).rule(300)).isEqualTo(300);
        LengthFormat inches = new LengthFormat(UnitSystem.IMPERIAL);
        assertThat(inches.length(inches.rule(300))).isEqualTo("1' 0\"");
        assertThat(inches.length(inches.rule(150))).isEqualTo("6\"");
        assertThat(inches.rule(152.4)).isEqualTo(152.4);
    }
}
