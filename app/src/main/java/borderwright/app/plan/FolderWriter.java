package borderwright.app.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;

/** Writes a set of files into a folder, all or none. */
public final class FolderWriter {
    private FolderWriter() {}

    /**
     * Writes files by name into a folder, which is made when missing; files of the same names there are replaced.
     *
     * @throws IOException when the folder cannot be written; no file there is changed then
     */
    public static void write(Path folder, Map<String, byte[]> files) throws IOException {
        Files.createDirectories(folder);
        Path scratch = Files.createTempDirectory(folder, ".writing");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(scratch.resolve(file.getKey()), file.getValue());
            }
            for (String name : files.keySet()) {
                Files.move(scratch.resolve(name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            remove(scratch);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> left = Files.walk(folder)) {
            for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
