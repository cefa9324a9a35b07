package borderwright.engine.strength.worked;

import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where a calculation writes its steps; each method hands back the value that it was given. Messages are made only on a sheet that
 * is written.
 */
public final class Working {
    /** Writes nothing and costs nothing. */
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

    /**
     * A figure that was given or looked up, or that words describe better than a formula.
     *
     * @param what it is; a code without slots
     * @param source clause, table or equation; empty for none
     */
    public double step(String symbol, MessageCode what, double value, String unit, String source) {
        return written ? line(symbol, what.of(), value, unit, StepMessage.REFERENCE.of(source)) : value;
    }

    /**
     * The same with a source that is no clause.
     *
     * @param what it is; a code without slots
     * @param source a code without slots
     */
    public double step(String symbol, MessageCode what, double value, String unit, MessageCode source) {
        return written ? line(symbol, what.of(), value, unit, source.of()) : value;
    }

    /**
     * A figure that follows from earlier ones.
     *
     * @param formula in symbols of earlier lines; empty where the symbol shows it
     * @param source clause, table or equation; empty for none
     */
    public double step(String symbol, String formula, double value, String unit, String source) {
        return written
                ? line(symbol, StepMessage.FORMULA.of(formula), value, unit, StepMessage.REFERENCE.of(source))
                : value;
    }

    /** The same with a source that is no clause, as a code without slots. */
    public double step(String symbol, String formula, double value, String unit, MessageCode source) {
        return written ? line(symbol, StepMessage.FORMULA.of(formula), value, unit, source.of()) : value;
    }

    /** The same with a description that has values of its own. */
    public double step(String symbol, Supplier<Message> how, double value, String unit, String source) {
        return written ? line(symbol, how.get(), value, unit, StepMessage.REFERENCE.of(source)) : value;
    }

    /** Why a resistance is not counted on. */
    public void remark(String source, MessageCode why, Object... values) {
        if (written) {
            lines.add(new SheetLine("", why.of(values), Optional.empty(), "", StepMessage.REFERENCE.of(source)));
        }
    }

    private double line(String symbol, Message formula, double value, String unit, Message source) {
        Optional<Double> shown = Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        lines.add(new SheetLine(symbol, formula, shown, unit, source));
        return value;
    }

    public List<SheetLine> lines() {
        return List.copyOf(lines);
    }
}
