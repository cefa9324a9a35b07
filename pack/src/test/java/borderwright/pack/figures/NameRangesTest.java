package borderwright.pack.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameRangesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "N1 N2 N3 | N1 to N3",
                "N1 N2 | N1, N2",
                "N1 N2 N3 N5 N6 N7 S1 | N1 to N3, N5 to N7, S1",
                "N9 N10 N11 | N9 to N11",
                "E10 E9 E8 | E10 to E8",
                "N3 N2 N5 N6 N7 | N3, N2, N5 to N7",
                "N1 S2 N3 | N1, S2, N3",
                "F1-F3 F4 | F1-F3, F4",
                "shed rack | shed, rack",
                "A | A"
            })
    void rangesTakeInNoNameThatIsNotThere(String names, String said) {
        assertThat(NameRanges.of(List.of(names.split(" ")))).isEqualTo(said);
    }
}
