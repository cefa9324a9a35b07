package borderwright.engine.strength.loads;

import borderwright.engine.geometry.Ring;
import borderwright.engine.strength.box.Board;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.Buried;
import borderwright.engine.strength.frame.Loads;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.soil.PressureProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The push of the fill on walls and dividers, as even loads on the bars: the pressure at the middle of what is buried of
 * a course, times its height.
 */
final class SoilLoads {
    static final double MM_PER_M = 1000;

    /** N/mm2 in a kN/m2. */
    static final double N_PER_MM2 = 1e-3;

    private final BoxFrame frame;
    private final Fill fill;
    private final List<Double> widthsMm = new ArrayList<>();

    SoilLoads(BoxFrame frame, Fill fill) {
        this.frame = frame;
        this.fill = fill;
        frame.box().inside().forEach(ring -> widthsMm.add(widthMm(ring)));
    }

    /** Twice its area over its half-girth: the distance between long sides, somewhat less in a short planter. */
    private static double widthMm(Ring ring) {
        double girth = 0;
        for (int i = 0; i < ring.size(); i++) {
            girth += ring.sideMm(i);
        }
        return 4 * ring.areaMm2() / girth;
    }

    /** Adds a pressure in the planters named. */
    Loads push(PressureProfile pressure, IntPredicate filled) {
        Loads loads = new Loads();
        frame.walls().forEach(board -> wall(board, pressure, filled, loads));
        frame.dividers().forEach(board -> divider(board, pressure, filled, loads));
        return loads;
    }

    /** N/mm on a board from one planter's fill. */
    double onBoard(Board board, PressureProfile pressure, int planter) {
        Buried buried = Buried.of(frame.box(), fill, board.bottomMm(), board.topMm());
        if (buried.heightMm() == 0) {
            return 0;
        }
        double depthMm = buried.depthMm();
        double grains = pressure.effective(depthMm / MM_PER_M) * fill.relief(depthMm, widthsMm.get(planter));
        return (grains + pressure.water(depthMm / MM_PER_M)) * N_PER_MM2 * buried.heightMm();
    }

    private void wall(Board board, PressureProfile pressure, IntPredicate filled, Loads loads) {
        for (Board.Part part : board.parts()) {
            if (filled.test(part.rightPlanter())) {
                add(part, board, onBoard(board, pressure, part.rightPlanter()), loads);
            }
        }
    }

    private void divider(Board board, PressureProfile pressure, IntPredicate filled, Loads loads) {
        for (Board.Part part : board.parts()) {
            double fromRight = filled.test(part.rightPlanter()) ? onBoard(board, pressure, part.rightPlanter()) : 0;
            double fromLeft = filled.test(part.leftPlanter()) ? onBoard(board, pressure, part.leftPlanter()) : 0;
            add(part, board, fromRight - fromLeft, loads);
        }
    }

    /** An even push outwards on one bar, N/mm; below 0 inwards. */
    static void add(Board.Part part, Board board, double perMm, Loads loads) {
        if (perMm != 0) {
            loads.line(part.member(), board.outward(), 0, part.lengthMm(), perMm, perMm);
        }
    }
}
