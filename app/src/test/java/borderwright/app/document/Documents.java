package borderwright.app.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Gardens for tests: one that uses every key, and the repository's examples. */
final class Documents {
    static final Path ROOT = root();

    private Documents() {}

    static String everyKey() {
        return resource("every-key.yaml");
    }

    static String resource(String name) {
        try (InputStream in = Documents.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> examples() {
        try (Stream<Path> files = Files.list(ROOT.resolve("examples"))) {
            return files.filter(f -> f.toString().matches(".*\\.(yaml|json)"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static DocumentAnswer read(String text) {
        return GardenReader.read(text.getBytes(StandardCharsets.UTF_8));
    }

    static List<String> faults(String text) {
        return faults(text.getBytes(StandardCharsets.UTF_8));
    }

    static List<String> faults(byte[] bytes) {
        return GardenReader.read(bytes) instanceof DocumentAnswer.Faulty faulty
                ? faulty.faults().stream().map(f -> f.print("garden.yaml")).toList()
                : List.of();
    }

    private static Path root() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("examples"))) {
            at = at.getParent();
        }
        return at;
    }
}
