package borderwright.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import borderwright.pack.language.Language;
import borderwright.words.Catalogue;
import com.ibm.icu.text.MessagePattern;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every code of every module has its sentence, every sentence its code, every slot is used and written with its unit. It
 * stands in the last module that has codes, since that sees them all.
 */
class CatalogueTest {
    private static final Set<String> OF_THE_LANGUAGE =
            Set.of("list-and", "list-comma", "less-than-a-sixteenth", "far-too-much");

    private static final List<MessageCode> CODES = Codes.all();

    static Stream<MessageCode> all() {
        return CODES.stream();
    }

    @Test
    void keysAreUniqueOverAllRooms() {
        assertThat(CODES).isNotEmpty();
        Map<String, MessageCode> byKey = new LinkedHashMap<>();
        CODES.forEach(code -> assertThat(byKey.put(code.key(), code))
                .as("'%s' is a code of %s too", code.key(), code.getClass())
                .isNull());
    }

    @Test
    void noSentenceIsWithoutItsCode() {
        Set<String> known = new TreeSet<>(OF_THE_LANGUAGE);
        CODES.forEach(code -> {
            known.add(code.key());
            known.add(code.key() + ".right");
        });
        assertThat(Catalogue.english().keys()).isSubsetOf(known);
    }

    @ParameterizedTest
    @MethodSource("all")
    void aSentenceUsesEverySlotAndNoOther(MessageCode code) {
        Set<String> declared = new TreeSet<>();
        code.slots()
                .forEach(slot -> assertThat(declared.add(slot.name()))
                        .as("the slot '%s' stands twice", slot.name())
                        .isTrue());
        Set<String> used = slots(Catalogue.english().pattern(code.key()));
        if (Catalogue.english().has(code.key() + ".right")) {
            used.addAll(slots(Catalogue.english().pattern(code.key() + ".right")));
        }
        assertThat(used).as(code.key()).isEqualTo(declared);
    }

    @ParameterizedTest
    @MethodSource("all")
    void aSentenceIsWrittenInBothUnitSystems(MessageCode code) {
        for (UnitSystem units : UnitSystem.values()) {
            for (long count : new long[] {0, 1, 2, 12}) {
                Message message = code.of(
                        code.slots().stream().map(s -> example(s, count)).toArray());
                String text = Language.english().in(units).text(message)
                        + Language.english().in(units).right(message);
                assertThat(text)
                        .as("%s with %d", code.key(), count)
                        .isNotBlank()
                        .doesNotContain("{", "}", "null", "  ");
            }
        }
    }

    private static Object example(Slot slot, long count) {
        return switch (slot.kind()) {
            case TEXT -> "F3";
            case MESSAGE, FAULT -> Inner.INNER.of();
            case FURTHER -> Optional.of(Inner.INNER.of());
            case CHOICE -> UnitSystem.METRIC;
            case LIST, COMMAS, SEMICOLONS ->
                List.of("F1", "F2", "F3").subList(0, (int) Math.max(1, Math.min(3, count)));
            case COUNT -> count;
            case MONEY -> Money.parse("GBP 12.30");
            case DECIMAL -> new BigDecimal("1.5");
            default -> 0.1234 + count;
        };
    }

    private static Set<String> slots(String pattern) {
        MessagePattern parsed = new MessagePattern(pattern);
        Set<String> names = new TreeSet<>();
        for (int i = 0; i < parsed.countParts(); i++) {
            if (parsed.getPart(i).getType() == MessagePattern.Part.Type.ARG_NAME) {
                names.add(parsed.getSubstring(parsed.getPart(i)));
            }
        }
        return names;
    }

    /** A message for the inside of others: the list's own words. */
    private enum Inner implements MessageCode {
        INNER;

        @Override
        public String key() {
            return "less-than-a-sixteenth";
        }

        @Override
        public List<Slot> slots() {
            return List.of();
        }
    }
}
