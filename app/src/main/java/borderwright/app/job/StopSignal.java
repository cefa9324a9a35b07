package borderwright.app.job;

/** Asks a job to stop. May be raised from any thread, and stays raised. */
public final class StopSignal {
    private volatile boolean raised;

    public void raise() {
        raised = true;
    }

    public boolean isRaised() {
        return raised;
    }
}
