package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureBreakerTest {
    private static List<String> parts(String text) {
        FigureBreaker breaker = new FigureBreaker();
        breaker.setText(text);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int at = breaker.next(); at != BreakIterator.DONE; at = breaker.next()) {
            parts.add(text.substring(from, at).strip());
            from = at;
        }
        return parts;
    }

    /** A line may end where a bar stands, and nowhere else. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '"',
            value = {
                "Boards are 47 mm thick;Boards|are|47 mm|thick",
                "clearance 7/32\"\", 18' 4-3/8\"\" long;clearance|7/32\"\",|18' 4-3/8\"\"|long",
                "\"2.5 litres of damp-proof paint, 8 planks\";\"2.5 litres|of|damp-|proof|paint,|8|planks\"",
                "TE5-tie1 into TE5-brace3;TE5-tie1|into|TE5-brace3",
                "at 79, 129, 179 mm: 8 m;at|79,|129,|179 mm:|8 m",
            })
    void figuresLabelsAndUnitsStayWhole(String text, String whole) {
        assertThat(String.join("|", parts(text.replace("\"\"", "\"")))).isEqualTo(whole.replace("\"\"", "\""));
    }
}
