package borderwright.pack.bench;

import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.Span;
import borderwright.engine.assembly.WallBench;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a long wall that is drawn by itself, so that its figures have room; distances still run from the hook.
 *
 * @param wall what of the wall lies in it
 * @param reach from where to where along the wall, mm
 * @param number from 1, left to right
 * @param of how many there are
 */
record Stretch(WallBench wall, Span reach, int number, int of) {
    /** A cut of the drawing keeps this clear of what it shows. */
    private static final double LEAST_CLEAR_MM = 60;

    /** Of which the whole wall is one. */
    static Stretch whole(WallBench wall, Span reach) {
        return new Stretch(wall, reach, 1, 1);
    }

    /** Equal parts of a wall, none of which ends in an upright, a tie or a divider. */
    static List<Stretch> of(WallBench wall, Span reach, int count) {
        List<Stretch> stretches = new ArrayList<>();
        double from = reach.fromMm();
        for (int i = 1; i <= count; i++) {
            double to = i == count ? reach.toMm() : clear(wall, reach.fromMm() + reach.lengthMm() * i / count);
            stretches.add(new Stretch(clipped(wall, from, to), new Span(from, to), i, count));
            from = to;
        }
        return stretches;
    }

    boolean isFirst() {
        return number == 1;
    }

    boolean isLast() {
        return number == of;
    }

    /** A place near the one asked for, in the middle between two uprights. */
    private static double clear(WallBench wall, double near) {
        List<Span> taken = new ArrayList<>();
        wall.parts().uprights().forEach(u -> taken.add(u.face().with(u.back())));
        wall.parts().crosspieces().forEach(c -> taken.add(c.inner()));
        taken.sort((a, b) -> Double.compare(a.middleMm(), b.middleMm()));
        double best = near;
        double distance = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < taken.size(); i++) {
            double left = taken.get(i).toMm();
            double right = taken.get(i + 1).fromMm();
            double middle = (left + right) / 2;
            if (right - left > LEAST_CLEAR_MM && StrictMath.abs(middle - near) < distance) {
                best = middle;
                distance = StrictMath.abs(middle - near);
            }
        }
        return best;
    }

    private static WallBench clipped(WallBench wall, double from, double to) {
        WallBench.Parts parts = wall.parts();
        return new WallBench(
                wall.box(),
                wall.kind(),
                wall.index(),
                wall.face(),
                wall.hook(),
                new WallBench.Parts(
                        parts.thicknessMm(),
                        parts.boards().stream()
                                .filter(board -> overlaps(board.face(), from, to))
                                .map(board -> board.withFace(cut(board.face(), from, to)))
                                .toList(),
                        parts.uprights().stream()
                                .filter(u -> inside(u.face(), from, to))
                                .toList(),
                        parts.crosspieces().stream()
                                .filter(c -> inside(c.inner(), from, to))
                                .toList(),
                        parts.caps().stream()
                                .filter(cap -> overlaps(cap.outer(), from, to))
                                .map(cap -> cap.withOuter(cut(cap.outer(), from, to)))
                                .toList()),
                fixings(wall, from, to));
    }

    private static List<FixingLine> fixings(WallBench wall, double from, double to) {
        List<FixingLine> fixings = new ArrayList<>();
        for (FixingLine line : wall.fixings()) {
            List<FixingLine.Mark> marks = line.marks().stream()
                    .filter(m -> m.xMm() >= from && m.xMm() <= to)
                    .toList();
            if (!marks.isEmpty()) {
                fixings.add(line.withMarks(marks));
            }
        }
        return fixings;
    }

    private static boolean inside(Span span, double from, double to) {
        return span.middleMm() >= from && span.middleMm() < to;
    }

    private static boolean overlaps(Span span, double from, double to) {
        return span.toMm() > from && span.fromMm() < to;
    }

    private static Span cut(Span span, double from, double to) {
        return new Span(StrictMath.max(span.fromMm(), from), StrictMath.min(span.toMm(), to));
    }
}
