package borderwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every package of the engine has a page that says what it settles and in which units, and where to start reading. */
class PackagePagesTest {
    private static final Path SOURCES = Path.of("src/main/java/borderwright/engine");

    static List<Path> packages() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(f -> f.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageHasItsPage(Path folder) throws IOException {
        Path page = folder.resolve("package-info.java");
        assertThat(page).exists();
        assertThat(Files.readString(page))
                .contains("@NullMarked", "<b>Settles</b>", "<b>Units.</b>", "<b>Start reading</b>")
                .containsPattern("<b>(Takes|Demands)</b>")
                .containsPattern("<b>([Gg]ives|Promises)</b>");
    }
}
