package borderwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few thousand of the cases that {@link CsvFuzz} runs by the million. */
class CsvFuzzTest {
    private static final long SEED = 20260304;

    @TempDir
    Path folder = Path.of("");

    @Test
    void damagedListsAreCutOrRefusedInSentences() throws IOException {
        CsvFuzz fuzz = new CsvFuzz(folder, SEED);
        Map<String, Long> kinds = new TreeMap<>();
        for (int n = 0; n < 3000; n++) {
            assertThat(CsvFuzz.complaint(fuzz.damaged(n), kinds))
                    .as("case %d of seed %d", n, SEED)
                    .isEmpty();
        }
        // the damage is neither so slight that all are cut nor so great that none is
        assertThat(kinds.get("exit 0")).isBetween(300L, 2700L);
        assertThat(kinds.get("exit 2")).isBetween(300L, 2700L);
        assertThat(kinds).containsKey("exit 1");
    }
}
