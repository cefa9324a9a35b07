package borderwright.app.folder;

import borderwright.app.exit.StopSignals;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Writes a set of files into a folder, all or none.
 *
 * <p>New files are staged in a folder of their own. Then the old ones are moved aside and the new ones moved in; where a move fails, all
 * go back. A run that is killed in between leaves the old ones aside, and the next one moves them back before it begins. One run at
 * a time writes into a folder.
 */
public final class ResultFolder {
    private static final String LOCK = ".borderwright-lock";
    private static final String STAGED = ".borderwright-new";
    private static final String ASIDE = ".borderwright-old";
    private static final String DONE_WITH = ".borderwright-done";

    private final Path folder;
    private final Set<String> ours;

    /**
     * A folder for results.
     *
     * @param folder made when it is missing
     * @param ours names that may lie there from an earlier run and go with it, besides those that are written
     */
    public ResultFolder(Path folder, Set<String> ours) {
        this.folder = folder;
        this.ours = Set.copyOf(ours);
    }

    /**
     * Whether files of these names could be written, before any work is done for them.
     *
     * @throws IOException when they could not; nothing was changed then
     */
    public void check(Set<String> names) throws IOException {
        Path there = folder.toAbsolutePath().normalize();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (there == null || !Files.isDirectory(there)) {
            throw new NotDirectoryException(folder.toString());
        }
        if (!Files.isWritable(there)) {
            throw new AccessDeniedException(folder.toString());
        }
        for (String name : all(names)) {
            if (Files.isDirectory(folder.resolve(name))) {
                throw new FileSystemException(folder.resolve(name).toString(), null, "Is a directory");
            }
        }
    }

    /**
     * Writes files by name; files of these names, and of our other names, that lie there are replaced.
     *
     * @throws IOException when they cannot be written; what lay there lies there as before
     */
    public void write(Map<String, byte[]> files) throws IOException {
        check(files.keySet());
        StopSignals.beforeFiles();
        Files.createDirectories(folder);
        Path lock = folder.resolve(LOCK);
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            lock(channel);
            putRight();
            try {
                stage(files);
                exchange(files.keySet());
            } finally {
                remove(folder.resolve(STAGED));
            }
            Files.deleteIfExists(lock);
        }
    }

    /** Held until the channel is closed. */
    private void lock(FileChannel channel) throws IOException {
        try {
            if (channel.tryLock() == null) {
                throw inUse();
            }
        } catch (OverlappingFileLockException heldByThisProgram) {
            throw inUse();
        }
    }

    private FileSystemException inUse() {
        return new FileSystemException(folder.toString(), null, "being used by another run");
    }

    private void stage(Map<String, byte[]> files) throws IOException {
        Path staged = Files.createDirectories(folder.resolve(STAGED));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(staged.resolve(file.getKey()), file.getValue());
        }
    }

    private void exchange(Set<String> names) throws IOException {
        Path aside = Files.createDirectories(folder.resolve(ASIDE));
        List<String> movedIn = new ArrayList<>();
        try {
            for (String name : all(names)) {
                if (Files.exists(folder.resolve(name))) {
                    Files.move(folder.resolve(name), aside.resolve(name));
                }
            }
            for (String name : names) {
                Files.move(folder.resolve(STAGED).resolve(name), folder.resolve(name));
                movedIn.add(name);
            }
        } catch (IOException failed) {
            for (String name : movedIn) {
                Files.deleteIfExists(folder.resolve(name));
            }
            putRight();
            throw failed;
        }
        // One move says that the new files count: whoever comes after a kill from here on only has to tidy up.
        Files.move(aside, folder.resolve(DONE_WITH));
        remove(folder.resolve(DONE_WITH));
    }

    /** Moves back what a killed run moved aside, and removes what it left behind. */
    private void putRight() throws IOException {
        Path aside = folder.resolve(ASIDE);
        if (Files.isDirectory(aside)) {
            try (Stream<Path> old = Files.list(aside)) {
                for (Path file : old.toList()) {
                    Files.move(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
                }
            }
            remove(aside);
        }
        remove(folder.resolve(DONE_WITH));
        remove(folder.resolve(STAGED));
    }

    private Set<String> all(Set<String> names) {
        Set<String> all = new TreeSet<>(names);
        all.addAll(ours);
        return all;
    }

    private static void remove(Path path) throws IOException {
        if (Files.exists(path)) {
            try (Stream<Path> left = Files.walk(path)) {
                for (Path one : left.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(one);
                }
            }
        }
    }
}
