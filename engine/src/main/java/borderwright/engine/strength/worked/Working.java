package borderwright.engine.strength.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a calculation says its steps; each method hands back the value that it was given. */
public final class Working {
    /** Says nothing and costs nothing. */
    public static final Working SILENT = new Working(false);

    private final boolean written;
    private final List<SheetLine> lines = new ArrayList<>(0);

    private Working(boolean written) {
        this.written = written;
    }

    /** A fresh sheet that keeps every line. */
    public static Working sheet() {
        return new Working(true);
    }

    public boolean isWritten() {
        return written;
    }

    /** A figure that was given or looked up. */
    public double given(String symbol, String what, double value, String unit, String source) {
        return step(symbol, what, value, unit, source);
    }

    /** A figure that follows from earlier ones. */
    public double step(String symbol, String formula, double value, String unit, String source) {
        if (written) {
            lines.add(new SheetLine(symbol, formula, Optional.of(value), unit, source));
        }
        return value;
    }

    public void remark(String words, String source) {
        if (written) {
            lines.add(new SheetLine("", words, Optional.empty(), "", source));
        }
    }

    public List<SheetLine> lines() {
        return List.copyOf(lines);
    }
}
