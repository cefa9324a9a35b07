package borderwright.app.exit;

/** What the shell sees, by the contract in docs/using.md. */
public final class ExitCode {
    /** Done. */
    public static final int DONE = 0;

    /** The plan is made or the input sound, but something does not hold or cannot be met. */
    public static final int NOT_MET = 1;

    /** Bad input or wrong use; nothing was written. */
    public static final int BAD_INPUT = 2;

    /** A fault of ours. */
    public static final int OUR_FAULT = 3;

    /** Stopped before there was an answer. */
    public static final int STOPPED = 4;

    /** The computer gave up: a full disk, a folder without permission; what was there is whole. */
    public static final int COMPUTER = 5;

    private ExitCode() {}
}
