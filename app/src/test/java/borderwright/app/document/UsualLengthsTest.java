package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths that are more likely a slip than true. */
class UsualLengthsTest {
    private static String faults(String board) {
        String text = Documents.resource("small.yaml");
        return String.join("\n", Documents.faults(text.replace("length: 3.6 m", "length: " + board)));
    }

    @ParameterizedTest
    @CsvSource({"36 m, 3.6 m", "3600 m, 3600 mm", "140 ft, 14 ft", "100 mm, 1000 mm", "12.5 cm, 125 cm"})
    void asksForWhatWasProbablyMeant(String written, String meant) {
        assertThat(faults(written)).contains("Did you mean `" + meant + "`?");
    }

    @Test
    void whatIsInsistedOnIsBelieved() {
        assertThat(faults("9.6 m")).contains("`9.6 m` is unusual here");
        assertThat(faults("9.6 m yes really")).isEmpty();
        assertThat(faults("\"9.6 m, yes really\"")).isEmpty();
        assertThat(faults("3.6 m yes really")).isEmpty();
    }

    /** 0.01 mm is 3 of 320 ticks to the millimetre, which are a little less. */
    @Test
    void aLimitDoesNotRefuseItself() {
        Limits limits = new Limits(FieldKind.LENGTH, 0.01, 10);
        assertThat(limits.has(Length.ofMm(0.01).mm())).isTrue();
        assertThat(limits.has(Length.ofMm(0.006).mm())).isFalse();
    }

    /** A limit that nothing can pass stays one. */
    @Test
    void insistingDoesNotPassALimit() {
        assertThat(faults("10 mm yes really")).contains("is out of range");
    }
}
