package borderwright.app.usage;

import borderwright.app.exit.ExitCode;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Sentences;
import borderwright.pack.language.Language;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Files that cannot be read or written: whose trouble it is, in a sentence. */
public final class FileTrouble {
    private static final Sentences SENTENCES = Language.english().in(UnitSystem.METRIC);

    private FileTrouble() {}

    /** Why a file system refuses. */
    enum Why {
        NO_PERMISSION,
        DISK_FULL,
        READ_ONLY,
        NAME_TOO_LONG,
        UNDER_A_FILE,
        GONE,
        IN_USE,
        IS_A_FOLDER
    }

    /** A fault of the file system that has been said already, with the exit code that follows. */
    public record Said(String sentence, int exitCode) {}

    /** The sentence for a fault, and whether the person or the computer has to change something. */
    public static Said of(IOException fault) {
        String path = fault instanceof FileSystemException file ? String.valueOf(file.getFile()) : "";
        Optional<Why> why = why(fault);
        if (why.isEmpty()) {
            String reason = String.valueOf(fault.getMessage());
            return new Said(
                    SENTENCES.text(UsageMessage.FILE_TROUBLE_OF_ANOTHER_KIND.of(path, reason)), ExitCode.COMPUTER);
        }
        return new Said(
                SENTENCES.text(UsageMessage.FILE_TROUBLE.of(path, why.get())),
                isThePersons(why.get()) ? ExitCode.BAD_INPUT : ExitCode.COMPUTER);
    }

    private static boolean isThePersons(Why why) {
        return why == Why.NAME_TOO_LONG || why == Why.UNDER_A_FILE || why == Why.GONE || why == Why.IS_A_FOLDER;
    }

    private static Optional<Why> why(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return Optional.of(Why.NO_PERMISSION);
        }
        if (fault instanceof NoSuchFileException) {
            return Optional.of(Why.GONE);
        }
        if (fault instanceof NotDirectoryException) {
            return Optional.of(Why.UNDER_A_FILE);
        }
        String reason = reason(fault).toLowerCase(Locale.ROOT);
        if (reason.contains("no space") || reason.contains("quota") || reason.contains("not enough space")) {
            return Optional.of(Why.DISK_FULL);
        }
        if (reason.contains("read-only")) {
            return Optional.of(Why.READ_ONLY);
        }
        if (reason.contains("too long")) {
            return Optional.of(Why.NAME_TOO_LONG);
        }
        if (reason.contains("not a directory")) {
            return Optional.of(Why.UNDER_A_FILE);
        }
        if (reason.contains("is a directory")) {
            return Optional.of(Why.IS_A_FOLDER);
        }
        return reason.contains("being used") || reason.contains("not empty")
                ? Optional.of(Why.IN_USE)
                : Optional.empty();
    }

    private static String reason(IOException fault) {
        @Nullable String reason = fault instanceof FileSystemException file ? file.getReason() : fault.getMessage();
        return (reason == null ? "" : reason) + " "
                + fault.getClass().getSimpleName().replace("DirectoryNotEmpty", "not empty");
    }
}
