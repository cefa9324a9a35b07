package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** docs/garden-file.md: its tables are the generated ones, and what it shows can be read. */
class GardenGuideTest {
    private static final Path GUIDE = Documents.ROOT.resolve("docs/garden-file.md");
    private static final String MARK = "<!-- made by FieldTable; see GardenGuideTest -->\n";

    private static String byHand() throws IOException {
        String text = Files.readString(GUIDE);
        return text.substring(0, text.indexOf(MARK) + MARK.length());
    }

    @Test
    void theTablesAreTheGeneratedOnes() throws IOException {
        String whole = byHand() + "\n" + FieldTable.write();
        Renewal.renew(GUIDE, whole);
        assertThat(GUIDE).as(Renewal.HOW).hasContent(whole);
    }

    @Test
    void theSmallGardenIsSound() throws IOException {
        Matcher shown = Pattern.compile("(?s)```yaml\n(.*?)```").matcher(byHand());
        assertThat(shown.find()).isTrue();
        assertThat(Documents.faults(shown.group(1))).isEmpty();
    }
}
