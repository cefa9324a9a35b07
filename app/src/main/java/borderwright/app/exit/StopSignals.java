package borderwright.app.exit;

import borderwright.engine.measure.UnitSystem;
import borderwright.pack.language.Language;
import java.io.PrintWriter;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Ends the program when the shell asks it to stop: by Ctrl-C, or by the signal TERM.
 *
 * <p>What comes first counts. A stop that comes while something is worked out ends the program at once, with {@link
 * ExitCode#STOPPED}, and no file is touched. One that comes when files are being written is too late: they are finished, and the
 * program ends as it would have.
 */
public final class StopSignals {
    private enum First {
        NEITHER,
        FILES,
        STOP
    }

    /** Signals come to the whole program, so what came first is one for the whole program too. */
    private static final AtomicReference<First> FIRST = new AtomicReference<>(First.NEITHER);

    /** Files that are written take a second at most; a disk that hangs keeps nobody. */
    private static final long MOST_WRITING_S = 5;

    private final PrintWriter err;
    private final CompletableFuture<Integer> ended = new CompletableFuture<>();
    private final Thread hook = new Thread(this::stop, "stop");

    private StopSignals(PrintWriter err) {
        this.err = err;
    }

    /** Listens from now on. */
    public static StopSignals heard(PrintWriter err) {
        StopSignals signals = new StopSignals(err);
        Runtime.getRuntime().addShutdownHook(signals.hook);
        return signals;
    }

    /** To be called before a file is touched. Does not return where the program is being stopped. */
    public static void beforeFiles() {
        FIRST.compareAndSet(First.NEITHER, First.FILES);
        if (FIRST.get() == First.STOP) {
            // The stop ends the program, and this thread with it.
            new CompletableFuture<Void>().join();
        }
    }

    /** The work is over, with an exit code; nothing is listened to any longer. */
    public void over(int exitCode) {
        ended.complete(exitCode);
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException stopping) {
            // The stop came first and ends the program.
            return;
        }
    }

    private void stop() {
        if (FIRST.compareAndSet(First.NEITHER, First.STOP)) {
            err.println("borderwright: "
                    + Language.english().in(UnitSystem.METRIC).text(ExitMessage.STOPPED_BY_SIGNAL.of()));
            Runtime.getRuntime().halt(ExitCode.STOPPED);
        }
        Runtime.getRuntime().halt(codeOfTheRun());
    }

    private int codeOfTheRun() {
        try {
            return ended.get(MOST_WRITING_S, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException none) {
            return ExitCode.STOPPED;
        }
    }
}
