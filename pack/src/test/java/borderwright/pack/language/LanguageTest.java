package borderwright.pack.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import borderwright.engine.layout.run.LayoutNote;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Sentences;
import borderwright.engine.message.Slot;
import borderwright.words.Catalogue;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A language is a folder of message files: neither US spelling nor another language touches the engine. */
class LanguageTest {
    private static final Map<String, String> BRITISH = Map.of(
            "lumber", "timber",
            "mitered", "mitred",
            "miter ", "mitre ",
            "neighbor", "neighbour",
            "galvanized", "galvanised",
            "meter", "metre");

    /** A message of the engine whose code is not public. */
    private enum Told implements MessageCode {
        CHEAPEST_DESIGN_SAVES;

        @Override
        public List<Slot> slots() {
            return List.of(Slot.money("saved"), Slot.area("area"), Slot.text("way"), Slot.text("design"));
        }
    }

    private static final Message SAVES = Told.CHEAPEST_DESIGN_SAVES.of(Money.parse("EUR 12.30"), 1.5, "less", "lärche");

    private static Message planters(int count) {
        return LayoutNote.LAYOUT_EQUAL_PLANTERS.of(count, 1200.0, "ends");
    }

    /** A sentence that changes in UK English changes here too: but for these words the two are the same. */
    @Test
    void usEnglishHoldsOnlyWhatDiffersInSpellingOrInAWordOfTheTrade() {
        Catalogue us = Catalogue.of("en-US");
        assertThat(us.keys()).isNotEmpty().allSatisfy(key -> {
            String british = us.pattern(key);
            for (Map.Entry<String, String> word : BRITISH.entrySet()) {
                british = british.replace(word.getKey(), word.getValue());
            }
            assertThat(us.pattern(key)).as(key).isNotEqualTo(british);
            assertThat(british).as(key).isEqualTo(Catalogue.english().pattern(key));
        });
    }

    @Test
    void usEnglishSpellsItsOwnWayAndFallsBackOnUkEnglish() {
        Language us = Language.of("en-US");
        assertThat(us.catalogue().pattern("treated-timber")).startsWith("Treated lumber");
        assertThat(us.in(UnitSystem.IMPERIAL).text(SAVES))
                .isEqualTo(Language.english().in(UnitSystem.IMPERIAL).text(SAVES));
        assertThat(us.catalogue().keys()).isEqualTo(Catalogue.english().keys());
    }

    @Test
    void aSecondLanguageHasItsOwnPluralsListsAndOrderOfWords() {
        Sentences german = Language.of("de").in(UnitSystem.METRIC);
        assertThat(german.text(planters(1))).isEqualTo("ein Kasten von 1200 mm");
        assertThat(german.text(planters(4))).isEqualTo("4 Kästen von je 1200 mm");
        assertThat(german.text(SAVES))
                .isEqualTo("Am günstigsten ist „lärche“; das spart EUR 12.30, bei 1.50 m2 weniger Platz zum Pflanzen.");
    }

    @Test
    void aLanguageWithoutMessageFilesIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Language.of("xx"))
                .withMessage("there are no message files for the language 'xx'");
    }
}
