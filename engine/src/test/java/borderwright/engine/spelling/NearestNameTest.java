package borderwright.engine.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.message.English;
import java.util.List;
import org.junit.jupiter.api.Test;

class NearestNameTest {
    private static final List<String> KEYS = List.of("name", "free over", "delivery", "minimum order", "goods");

    @Test
    void oneSlipIsNear() {
        assertThat(NearestName.of("delivrey", KEYS)).contains("delivery");
        assertThat(NearestName.of("nam", KEYS)).contains("name");
        assertThat(NearestName.of("good", KEYS)).contains("goods");
        assertThat(NearestName.of("minimum odrer", KEYS)).contains("minimum order");
    }

    @Test
    void otherSpellingsOfTheSameWordsAreNear() {
        assertThat(NearestName.of("freeOver", KEYS)).contains("free over");
        assertThat(NearestName.of("free_over", KEYS)).contains("free over");
        assertThat(NearestName.of("Free-Over", KEYS)).contains("free over");
    }

    @Test
    void anotherWordIsNotNear() {
        assertThat(NearestName.of("colour", KEYS)).isEmpty();
        assertThat(NearestName.of("", KEYS)).isEmpty();
        assertThat(NearestName.of("X", List.of("A", "B"))).isEmpty();
    }

    @Test
    void theNearestWinsAndThenTheFirst() {
        assertThat(NearestName.of("boars", List.of("boards", "boar", "bears"))).contains("boards");
        assertThat(NearestName.of("boards", List.of("boar", "boards"))).contains("boards");
    }

    @Test
    void veryLongTextsAreNotCompared() {
        assertThat(NearestName.of("a".repeat(1_000_000), KEYS)).isEmpty();
    }

    @Test
    void theSentenceIsEmptyWhenNothingIsNear() {
        assertThat(NearestName.perhaps("gods", KEYS))
                .hasValueSatisfying(
                        message -> assertThat(English.METRIC.text(message)).isEqualTo("Perhaps you meant `goods`."));
        assertThat(NearestName.perhaps("colour", KEYS)).isEmpty();
    }
}
