package borderwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A few thousand of the cases that {@link GardenFuzz} runs by the million. */
class GardenFuzzTest {
    private static final long SEED = 20260302;

    @Test
    void damagedGardensAreReadOrRefusedInSentences() throws IOException {
        GardenFuzz fuzz = new GardenFuzz(GardenFuzz.gardensIn(Path.of("../examples")), SEED);
        Map<String, Long> kinds = new TreeMap<>();
        for (int n = 0; n < 3000; n++) {
            assertThat(GardenFuzz.complaint(fuzz.damaged(n), kinds))
                    .as("case %d of seed %d", n, SEED)
                    .isEmpty();
        }
        // the damage is neither so slight that all are sound nor so great that none gets past the parser
        assertThat(kinds.get("(sound)")).isBetween(100L, 1500L);
        assertThat(kinds).hasSizeGreaterThan(20);
    }

    @Test
    void aCaseIsAlwaysTheSame() throws IOException {
        GardenFuzz fuzz = new GardenFuzz(GardenFuzz.gardensIn(Path.of("../examples")), SEED);
        assertThat(fuzz.damaged(7)).isEqualTo(fuzz.damaged(7)).isNotEqualTo(fuzz.damaged(8));
    }
}
