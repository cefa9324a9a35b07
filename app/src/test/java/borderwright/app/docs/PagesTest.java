package borderwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every page can be found from an index, and every link leads somewhere. */
class PagesTest {
    private static final Path DOCS = Pages.ROOT.resolve("docs");
    private static final Path DECISIONS = DOCS.resolve("decisions");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern CLASS = Pattern.compile("`([A-Z][a-z0-9]+[A-Z]\\w*)`");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");

    private static List<String> links(Path page) {
        return LINK.matcher(Pages.text(page))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void theIndexListsEveryPage() {
        List<String> pages = Pages.within(DOCS, 1).stream()
                .map(page -> page.getFileName().toString())
                .filter(name -> !name.equals("index.md"))
                .toList();
        assertThat(pages).hasSizeGreaterThan(10);
        assertThat(links(DOCS.resolve("index.md"))).containsAll(pages);
    }

    @Test
    void theReadmeLeadsToTheIndex() {
        assertThat(links(Pages.ROOT.resolve("README.md"))).contains("docs/index.md");
    }

    @Test
    void theDecisionsAreListedUnderTheirOwnTitles() {
        String index = Pages.text(DECISIONS.resolve("README.md"));
        List<Path> records = Pages.within(DECISIONS, 1).stream()
                .filter(page -> !page.endsWith("README.md"))
                .toList();
        assertThat(records).hasSizeGreaterThan(30);
        for (Path record : records) {
            String number = record.getFileName().toString().substring(0, 4);
            String title = Pages.text(record).lines().findFirst().orElse("");
            assertThat(title).as("title of %s", record.getFileName()).startsWith("# " + number + " ");
            assertThat(index).contains("[" + title.substring(2) + "](" + record.getFileName() + ")");
        }
    }

    @Test
    void decisionsHaveOneForm() {
        for (Path record : Pages.within(DECISIONS, 1)) {
            if (!record.endsWith("README.md")) {
                assertThat(Pages.text(record))
                        .as("%s", record.getFileName())
                        .containsSubsequence(
                                "\n**Asked.** ", "\n**Chosen.** ", "\n**Rejected.** ", "\n**Reopens it.** ");
            }
        }
    }

    @Test
    void everyLinkLeadsSomewhere() {
        List<String> broken = new ArrayList<>();
        for (Path page : Pages.all()) {
            for (String link : links(page)) {
                if (!link.contains("://") && !leadsSomewhere(page, link)) {
                    broken.add(Pages.ROOT.relativize(page) + " -> " + link);
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void everyClassNamedExists() throws IOException {
        Set<String> classes = new HashSet<>();
        try (Stream<Path> files = Files.walk(Pages.ROOT)) {
            files.filter(file ->
                            file.toString().contains("src") && file.toString().endsWith(".java"))
                    .forEach(file -> classes.add(file.getFileName().toString().replace(".java", "")));
        }
        List<String> unknown = new ArrayList<>();
        for (Path page : Pages.all()) {
            // Decisions keep the names of their day.
            if (!page.startsWith(DECISIONS)) {
                CLASS.matcher(Pages.text(page))
                        .results()
                        .map(found -> found.group(1))
                        .filter(name -> !classes.contains(name) && !name.startsWith("Illegal"))
                        .forEach(name -> unknown.add(Pages.ROOT.relativize(page) + ": " + name));
            }
        }
        assertThat(unknown).isEmpty();
    }

    private static boolean leadsSomewhere(Path page, String link) {
        int hash = link.indexOf('#');
        String file = hash < 0 ? link : link.substring(0, hash);
        Path target = file.isEmpty() ? page : page.resolveSibling(file).normalize();
        if (!Files.exists(target)) {
            return false;
        }
        return hash < 0 || anchors(target).contains(link.substring(hash + 1));
    }

    private static List<String> anchors(Path page) {
        Matcher headings = HEADING.matcher(Pages.text(page));
        return headings.results()
                .map(found -> found.group(1).toLowerCase(Locale.ROOT))
                .map(heading -> heading.replaceAll("[^a-z0-9 _-]", "").replace(' ', '-'))
                .collect(Collectors.toList());
    }
}
