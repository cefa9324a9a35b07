package borderwright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.text.ParseException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates, held against the formatter of ICU whose syntax they use. */
class TemplateTest {
    private static final PluralRules ENGLISH = rules("one: i = 1 and v = 0");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Nothing to put in.",
                "{name} is {length} long, {name} again",
                "There {count, plural, one {is # roll} other {are # rolls}} of {name}",
                "{count, plural, =0 {no boards} one {one board} other {# boards of {name}}}; {length}",
                "{way, select, lapped {laps {count, plural, one {once} other {# times}}} other {is {way}}} there",
                "It's the planter's {length}; '{'braces'}' stay, # too",
                "{count, plural, one {{name}''s board} other {{name} and '#' more}}"
            })
    void aTemplateReadsAsTheLibraryReadsIt(String pattern) {
        for (long count : new long[] {0, 1, 2, 5, 21}) {
            for (String way : new String[] {"lapped", "mitred"}) {
                Map<String, Object> slots = Map.of("name", "F3", "length", "1850 mm", "count", count, "way", way);
                assertThat(new Template(pattern, ENGLISH).text(slots))
                        .as("%s with %d, %s", pattern, count, way)
                        .isEqualTo(new MessageFormat(pattern, ULocale.UK).format(slots));
            }
        }
    }

    @Test
    void anotherLanguageBringsItsOwnPlurals() {
        PluralRules polish = rules("one: i = 1 and v = 0; few: v = 0 and i % 10 = 2..4 and i % 100 != 12..14");
        Template boards = new Template("{n, plural, one {# deska} few {# deski} other {# desek}}", polish);
        assertThat(boards.text(Map.of("n", 1L))).isEqualTo("1 deska");
        assertThat(boards.text(Map.of("n", 3L))).isEqualTo("3 deski");
        assertThat(boards.text(Map.of("n", 12L))).isEqualTo("12 desek");
    }

    @Test
    void aMissingValueIsNamed() {
        assertThatThrownBy(() -> new Template("{name} stands", ENGLISH).text(Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'name'")
                .hasMessageContaining("{name} stands");
    }

    @Test
    void aPluralNeedsAWholeNumber() {
        assertThatThrownBy(() -> new Template("{n, plural, one {a} other {b}}", ENGLISH).text(Map.of("n", "2")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("whole number");
    }

    private static PluralRules rules(String description) {
        try {
            return PluralRules.parseDescription(description);
        } catch (ParseException e) {
            throw new IllegalArgumentException(description, e);
        }
    }
}
