package borderwright.engine.problem;

import java.util.List;

/**
 * A result of ours that fails its own check: a fault of this program, never of what was given to it. Such a result must not
 * be shown, printed or written.
 */
public final class FailedCheckException extends IllegalStateException {
    private static final long serialVersionUID = 1;

    private FailedCheckException(String message) {
        super(message);
    }

    /**
     * Refuses a result that has faults.
     *
     * @param result what was checked, for the message
     * @param faults what is wrong with it; none where it is right
     * @throws FailedCheckException when there is a fault
     */
    public static void refuse(String result, List<String> faults) {
        if (!faults.isEmpty()) {
            throw new FailedCheckException(
                    result + " failed its own check, please report it: " + String.join("; ", faults));
        }
    }
}
