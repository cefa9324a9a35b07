package borderwright.pack.figures;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Litres to buy are rounded up to the tenth once, as on the shopping list: 1.1 times ten is a hair more than eleven. */
class PrintedLitresTest {
    @ParameterizedTest
    @CsvSource({"1.1, 1.1 litres", "3.62, 3.7 litres", "0.42, 0.5 litres", "2, 2.0 litres"})
    void litresAreRoundedUpToTheTenth(double litres, String printed) {
        assertThat(PrintedFigures.in(UnitSystem.METRIC).liquid(litres)).isEqualTo(printed);
    }
}
