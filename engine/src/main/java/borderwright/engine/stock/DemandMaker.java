package borderwright.engine.stock;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.CuttingSpec;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** From pieces of wood to the lengths that boards must give. */
public final class DemandMaker {
    private DemandMaker() {}

    /** One demand for each piece, in the order given. */
    public static List<Demand> of(List<Piece> pieces, CuttingSpec rules, Length kerf) {
        List<Demand> demands = new ArrayList<>(pieces.size());
        for (Piece piece : pieces) {
            demands.add(new Demand(piece.section(), boughtTicks(piece, rules, kerf), 1, piece.label()));
        }
        return demands;
    }

    /**
     * Length that a board must give for a piece, ticks: its own, the allowance while it waits, and what a bevelled end
     * takes beyond one square kerf.
     */
    public static long boughtTicks(Piece piece, CuttingSpec rules, Length kerf) {
        long ticks = piece.length().ticks() + extraKerfTicks(piece, kerf);
        return piece.waits() ? ticks + waitAllowance(rules).ticks() : ticks;
    }

    public static Length waitAllowance(CuttingSpec rules) {
        return rules.extraForFitting();
    }

    /** Kerf / cos(tilt) of the steeper end less one kerf, rounded up to a tick; 0 for square ends. */
    public static long extraKerfTicks(Piece piece, Length kerf) {
        double steepest = Math.max(slant(piece.left()), slant(piece.right()));
        return (long) Math.ceil(kerf.ticks() * (steepest - 1) - 1e-9);
    }

    private static double slant(EndCut end) {
        double tilt = StrictMath.cos(StrictMath.toRadians(Math.min(end.tiltDeg(), 89)));
        double fence = StrictMath.cos(StrictMath.toRadians(Math.min(end.fenceDeg(), 89)));
        return 1 / (tilt * fence);
    }
}
