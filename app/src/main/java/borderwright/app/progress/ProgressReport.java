package borderwright.app.progress;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.pack.language.Language;
import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Writes now and then what is being worked out. Hears of work from any thread. */
public final class ProgressReport implements WorkListener, AutoCloseable {
    private static final long EVERY_MS = 2000;

    private final Sentences sentences;
    private final PrintWriter err;
    private final @Nullable ScheduledExecutorService clock;
    private volatile @Nullable Message latest;
    private @Nullable Message written;

    private ProgressReport(UnitSystem units, PrintWriter err, @Nullable ScheduledExecutorService clock) {
        this.sentences = Language.english().in(units);
        this.err = err;
        this.clock = clock;
    }

    /** A report with a clock, that writes a line every two seconds at most. */
    static ProgressReport running(UnitSystem units, PrintWriter err) {
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "progress");
            // A report that nobody closed keeps no program alive.
            thread.setDaemon(true);
            return thread;
        });
        ProgressReport report = new ProgressReport(units, err, clock);
        ScheduledFuture<?> unused = clock.scheduleAtFixedRate(report::tick, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
        return report;
    }

    /** A report without a clock: it writes nothing by itself. */
    static ProgressReport withoutClock(UnitSystem units, PrintWriter err) {
        return new ProgressReport(units, err, null);
    }

    /** Whether lines are written by and by. */
    boolean hasClock() {
        return clock != null;
    }

    @Override
    public void begins(Message step) {
        latest = step;
    }

    /** Writes the latest step, unless the last line was of it. */
    synchronized void tick() {
        Message step = latest;
        if (step != null && !step.equals(written)) {
            written = step;
            err.println(sentences.text(ProgressMessage.STEP_LINE.of(step)));
        }
    }

    /** No line comes after this. */
    @Override
    public synchronized void close() {
        latest = null;
        if (clock != null) {
            clock.shutdownNow();
        }
    }
}
