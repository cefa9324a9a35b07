package borderwright.pack.bench;

import borderwright.engine.assembly.Span;
import borderwright.pack.figures.PrintedFigures;

/**
 * What is read off a tape that is hooked once. No tape reads less than nothing: what lies left of the hook is told by how far
 * it overhangs, which a rule measures.
 *
 * @param f how figures are written
 * @param on what the tape hooks on
 */
record HookedTape(PrintedFigures f, On on) {
    private static final String MM = " mm";

    /** What a tape hooks on: the end of a board, or an inner corner that it is pushed into. */
    enum On {
        BOARD,
        CORNER
    }

    /** A place along the tape, mm. */
    String at(double mm) {
        String read = f.length(StrictMath.abs(mm));
        return isLeft(mm) ? f.text(BenchMessage.LEFT_OF_HOOK.of(read, on)) : read;
    }

    /** From one place to another; millimetres are named once. */
    String range(Span span) {
        String from = f.length(StrictMath.abs(span.fromMm()));
        String to = f.length(StrictMath.abs(span.toMm()));
        if (!isLeft(span.fromMm())) {
            return joined(from, to);
        }
        return isLeft(span.toMm())
                ? f.text(BenchMessage.LEFT_OF_HOOK.of(joined(from, to), on))
                : f.text(BenchMessage.OVERHANGS_HOOK.of(from, to, on));
    }

    /** Whether it is written as left of the hook: not where the figure is 0. */
    private boolean isLeft(double mm) {
        return mm < 0 && !f.length(-mm).equals(f.length(0));
    }

    /** Two figures of which the second names the unit, where that is mm. */
    String joined(String from, String to) {
        boolean both = from.endsWith(MM) && to.endsWith(MM);
        String first = both ? from.substring(0, from.length() - MM.length()) : from;
        return f.text(BenchMessage.BENCH_RANGE.of(first, to));
    }
}
