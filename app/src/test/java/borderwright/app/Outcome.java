package borderwright.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a command line gave back.
 *
 * @param code its exit code
 * @param out what it printed
 * @param err what it printed as faults
 */
public record Outcome(int code, String out, String err) {
    /** Runs a command line in this Java machine. */
    public static Outcome of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Borderwright.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Outcome(code, out.toString(), err.toString());
    }
}
