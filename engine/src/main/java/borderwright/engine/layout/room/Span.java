package borderwright.engine.layout.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of stations.
 *
 * @param fromMm its start, mm
 * @param toMm its end, mm, not before its start
 */
public record Span(double fromMm, double toMm) {
    public double lengthMm() {
        return toMm - fromMm;
    }

    /** The longest part of this span that none of {@code taken} covers, the first of equals; empty length when none. */
    public Span longestWithout(List<Span> taken) {
        List<Span> sorted = new ArrayList<>(taken);
        sorted.sort(Comparator.comparingDouble(Span::fromMm).thenComparingDouble(Span::toMm));
        Span best = new Span(fromMm, fromMm);
        double free = fromMm;
        for (Span span : sorted) {
            double end = Math.min(span.fromMm, toMm);
            if (end - free > best.lengthMm()) {
                best = new Span(free, end);
            }
            free = Math.max(free, span.toMm);
        }
        return toMm - free > best.lengthMm() ? new Span(free, toMm) : best;
    }
}
