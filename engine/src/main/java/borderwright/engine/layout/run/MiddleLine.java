package borderwright.engine.layout.run;

import borderwright.engine.layout.room.Span;
import java.util.ArrayList;
import java.util.List;

/** The line along the middle of a row of planters, round its bends, and where a square cut may stand on it. */
final class MiddleLine {
    private final List<Piece> pieces = new ArrayList<>();
    private double lengthMm;

    /**
     * The part on one leg.
     *
     * @param leg its index
     * @param startMm how far along the middle line it begins
     * @param fromMm station where it begins
     * @param toMm station where it ends
     * @param firstCutMm first station for a cut
     * @param lastCutMm last station for a cut; before the first where there is no room for one
     */
    private record Piece(int leg, double startMm, double fromMm, double toMm, double firstCutMm, double lastCutMm) {}

    /**
     * The middle line of the legs from {@code first} to {@code last}.
     *
     * @param clearMm what a cut keeps from a bend, mm
     */
    MiddleLine(RunChain chain, int first, int last, double clearMm) {
        for (int i = first; i <= last; i++) {
            Span free = chain.freeOn(i);
            boolean bendBefore = i > first;
            boolean bendAfter = i < last;
            double from = bendBefore ? free.fromMm() - chain.joint(i - 1).spareMm() : free.fromMm();
            double to = bendAfter ? free.toMm() + chain.joint(i).spareMm() : free.toMm();
            pieces.add(new Piece(
                    i,
                    lengthMm,
                    from,
                    to,
                    free.fromMm() + (bendBefore ? clearMm : 0),
                    free.toMm() - (bendAfter ? clearMm : 0)));
            lengthMm += to - from;
        }
    }

    double lengthMm() {
        return lengthMm;
    }

    /** How far along the middle line a cut stands, mm. */
    double alongMm(SquareCut cut) {
        for (Piece piece : pieces) {
            if (piece.leg == cut.leg()) {
                return piece.startMm + cut.stationMm() - piece.fromMm;
            }
        }
        throw new IllegalArgumentException("leg " + cut.leg() + " is not of this row");
    }

    /** The cut nearest to a place along the middle line. */
    SquareCut cutAt(double alongMm) {
        SquareCut best = new SquareCut(-1, 0);
        double bestOff = Double.POSITIVE_INFINITY;
        for (Piece piece : pieces) {
            double first = piece.firstCutMm;
            double last = piece.lastCutMm;
            if (last < first) {
                continue;
            }
            double wanted = piece.fromMm + alongMm - piece.startMm;
            double station = Math.max(first, Math.min(last, wanted));
            double off = Math.abs(station - wanted);
            if (off < bestOff - 1e-9) {
                best = new SquareCut(piece.leg, station);
                bestOff = off;
            }
        }
        if (best.leg() < 0) {
            throw new IllegalStateException("the first leg of a row has room for a divider, or the row does not bend");
        }
        return best;
    }
}
