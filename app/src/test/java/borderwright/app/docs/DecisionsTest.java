package borderwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The code names the decisions that it follows, and names none that is not there. */
class DecisionsTest {
    private static final Path DECISIONS = Pages.ROOT.resolve("docs").resolve("decisions");
    private static final Pattern CITATION = Pattern.compile("docs/decisions/(\\d{4})");

    /** The records, but for those that say that another took their place. */
    private static Set<String> inForce() {
        return Pages.within(DECISIONS, 1).stream()
                .filter(page -> !page.endsWith("README.md"))
                .filter(page -> !Pages.text(page).contains("\n**Superseded by**"))
                .map(page -> page.getFileName().toString().substring(0, 4))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> cited() throws IOException {
        Set<String> cited = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Pages.ROOT)) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> file.toString().replace('\\', '/').contains("/src/main/java/"))
                    .forEach(file -> CITATION.matcher(Pages.text(file))
                            .results()
                            .map((MatchResult found) -> found.group(1))
                            .forEach(cited::add));
        }
        return cited;
    }

    @Test
    void everyDecisionInForceIsCitedFromTheCodeThatFollowsIt() throws IOException {
        assertThat(inForce()).hasSizeGreaterThan(30);
        assertThat(cited()).as("decisions cited in main code").isEqualTo(inForce());
    }
}
