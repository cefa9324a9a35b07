package borderwright.app.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultFolderTest {
    private static final Set<String> OURS = Set.of("build.ics");

    @TempDir
    private Path folder = Path.of("");

    private static Map<String, byte[]> files(String... namesAndTexts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    /** All that lies in the folder, with what it holds. */
    private Map<String, String> there() throws IOException {
        Map<String, String> there = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path path : all.toList()) {
                there.put(path.getFileName().toString(), Files.isDirectory(path) ? "/" : Files.readString(path));
            }
        }
        return there;
    }

    @Test
    void anotherGardensCalendarDoesNotStayAndAStrangersFileDoes() throws IOException {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        new ResultFolder(folder, OURS).write(files("plan.json", "one", "build.ics", "one", "pack.pdf", "one"));
        new ResultFolder(folder, OURS).write(files("plan.json", "two", "pack.pdf", "two"));
        assertThat(there()).isEqualTo(Map.of("mine.txt", "mine", "plan.json", "two", "pack.pdf", "two"));
    }

    @Test
    void aFileThatCannotBeReplacedLeavesTheOldSetWhole() throws IOException {
        new ResultFolder(folder, OURS).write(files("a.txt", "old", "b.txt", "old"));
        Files.delete(folder.resolve("b.txt"));
        Files.createDirectories(folder.resolve("b.txt").resolve("something"));
        assertThatThrownBy(() -> new ResultFolder(folder, OURS).write(files("a.txt", "new", "b.txt", "new")))
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining("b.txt");
        assertThat(there()).isEqualTo(Map.of("a.txt", "old", "b.txt", "/"));
    }

    /** Killed after the old files were moved aside and one new one had come in. */
    @Test
    void whatAKilledRunMovedAsideComesBack() throws IOException {
        Path aside = Files.createDirectories(folder.resolve(".borderwright-old"));
        Files.writeString(aside.resolve("a.txt"), "old");
        Files.writeString(aside.resolve("b.txt"), "old");
        Files.writeString(folder.resolve("a.txt"), "half of the new ones");
        Files.createDirectories(folder.resolve(".borderwright-new"));
        Files.writeString(folder.resolve(".borderwright-lock"), "");
        new ResultFolder(folder, OURS).write(files("c.txt", "next"));
        assertThat(there()).isEqualTo(Map.of("a.txt", "old", "b.txt", "old", "c.txt", "next"));
    }

    /** Killed when the new files were all in. */
    @Test
    void whatAKilledRunWasDoneWithGoes() throws IOException {
        Path done = Files.createDirectories(folder.resolve(".borderwright-done"));
        Files.writeString(done.resolve("a.txt"), "old");
        Files.writeString(folder.resolve("a.txt"), "new");
        new ResultFolder(folder, OURS).write(files("c.txt", "next"));
        assertThat(there()).isEqualTo(Map.of("a.txt", "new", "c.txt", "next"));
    }

    @Test
    void oneRunAtATimeWritesIntoAFolder() throws IOException {
        try (FileChannel channel = FileChannel.open(
                        folder.resolve(".borderwright-lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            assertThat(held.isValid()).isTrue();
            assertThatThrownBy(() -> new ResultFolder(folder, OURS).write(files("a.txt", "new")))
                    .isInstanceOf(FileSystemException.class)
                    .hasMessageContaining("another run");
        }
        assertThat(there()).doesNotContainKey("a.txt");
    }
}
