package borderwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** THIRD-PARTY.md lists the libraries of the build, and each library's licence text travels with the program. */
class ThirdPartyTest {
    private static final Path LIST = Pages.ROOT.resolve("THIRD-PARTY.md");
    private static final String MARK = "<!-- made by the build; see ThirdPartyTest -->\n";
    private static final Pattern LICENCE_TEXT = Pattern.compile("(META-INF/)?LICEN[CS]E[^/]*");

    /** Texts in licences/ for libraries whose jars hold none, by the start of the library's name. */
    private static final Map<String, String> OWN_TEXTS =
            Map.of("biweekly", "biweekly.txt", "icu4j", "icu4j.txt", "jgltf", "jgltf.txt", "jts", "jts.txt");

    private record Library(String name, String version, String licence) {}

    private static String table() throws IOException {
        try (var made = ThirdPartyTest.class.getResourceAsStream("/third-party.txt")) {
            assertThat(made).as("the list that the build makes").isNotNull();
            return new String(made.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<Library> libraries() throws IOException {
        return table().lines()
                .filter(line -> line.contains(":"))
                .map(line -> line.split("\\s*\\|\\s*"))
                .map(cells -> new Library(cells[1].substring(cells[1].indexOf(':') + 1), cells[2], cells[3]))
                .toList();
    }

    @Test
    void theListIsTheBuilds() throws IOException {
        String text = Files.readString(LIST);
        String whole = text.substring(0, text.indexOf(MARK) + MARK.length()) + "\n" + table();
        if ("yes".equals(System.getProperty("renew"))) {
            Files.writeString(LIST, whole);
        }
        assertThat(LIST)
                .as("to renew it: ./test app ThirdPartyTest -Drenew=yes")
                .hasContent(whole);
    }

    @Test
    void everyLibraryHasItsLicenceText() throws IOException {
        List<Library> libraries = libraries();
        assertThat(libraries).hasSizeGreaterThan(10);
        for (Library library : libraries) {
            assertThat(hasText(library)).as("a licence text for %s", library).isTrue();
        }
    }

    @Test
    void theTextsAreInTheProgramsJar() {
        for (String name : List.of("LICENSE", "NOTICE", "THIRD-PARTY.md", "licences/jts.txt")) {
            assertThat(ThirdPartyTest.class.getResource("/META-INF/" + name))
                    .as(name)
                    .isNotNull();
        }
    }

    private static boolean hasText(Library library) throws IOException {
        if (library.licence().equals("Apache-2.0")) {
            return true; // the text in LICENSE
        }
        for (Map.Entry<String, String> own : OWN_TEXTS.entrySet()) {
            if (library.name().startsWith(own.getKey())) {
                return Files.exists(Pages.ROOT.resolve("licences").resolve(own.getValue()));
            }
        }
        try (JarFile jar = new JarFile(jarOf(library))) {
            return jar.stream()
                    .anyMatch(entry -> LICENCE_TEXT.matcher(entry.getName()).matches());
        }
    }

    private static File jarOf(Library library) {
        String name = library.name() + "-" + library.version() + ".jar";
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(File::new)
                .filter(file -> file.getName().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " is not on the class path"));
    }
}
