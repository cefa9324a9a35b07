package borderwright.pack.bench;

import borderwright.engine.assembly.BenchCap;
import borderwright.engine.assembly.BenchCrosspiece;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.Span;
import borderwright.engine.assembly.WallBench;
import java.util.ArrayList;
import java.util.List;

/** How far a wall reaches with all that is on it, mm. */
final class WallExtent {
    /** Longer than this many times its height, a wall takes the whole width. */
    private static final double MOST_NARROW = 2.6;

    private WallExtent() {}

    /** Whether a wall is drawn in half the width of a page. */
    static boolean isNarrow(WallBench wall) {
        return along(wall).lengthMm() < MOST_NARROW * up(wall).lengthMm();
    }

    static Span along(WallBench wall) {
        double from = wall.faceSpan().fromMm();
        double to = wall.faceSpan().toMm();
        for (BenchCap cap : wall.parts().caps()) {
            from = StrictMath.min(from, cap.outer().fromMm());
            to = StrictMath.max(to, cap.outer().toMm());
        }
        for (BenchUpright upright : wall.parts().uprights()) {
            from = StrictMath.min(from, upright.face().fromMm());
            to = StrictMath.max(to, upright.face().toMm());
        }
        return new Span(from, to);
    }

    static Span up(WallBench wall) {
        double low = 0;
        double high = wall.heightMm();
        for (BenchUpright upright : wall.parts().uprights()) {
            low = StrictMath.min(low, upright.height().fromMm());
            high = StrictMath.max(high, upright.height().toMm());
        }
        for (BenchCap cap : wall.parts().caps()) {
            high = StrictMath.max(high, cap.height().toMm());
        }
        return new Span(low, high);
    }

    /** Where boards are joined and ties and dividers meet the wall, and its right end where there is any of these, mm. */
    static List<Double> others(WallBench wall) {
        List<Double> all = new ArrayList<>(wall.parts().joints());
        for (BenchCrosspiece cross : wall.parts().crosspieces()) {
            all.add(cross.inner().fromMm());
            all.add(cross.inner().toMm());
        }
        if (!all.isEmpty()) {
            all.add(wall.faceSpan().toMm());
        }
        return all;
    }
}
