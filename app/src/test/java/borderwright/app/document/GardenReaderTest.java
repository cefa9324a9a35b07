package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GardenReaderTest {
    @Test
    void everyExampleIsSound() throws Exception {
        for (var example : Documents.examples()) {
            assertThat(Documents.faults(java.nio.file.Files.readAllBytes(example)))
                    .as("%s", example)
                    .isEmpty();
        }
    }

    @Test
    void everyKey() {
        assertThat(Documents.faults(Documents.everyKey())).isEmpty();
    }
}
