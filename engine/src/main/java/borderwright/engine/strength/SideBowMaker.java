package borderwright.engine.strength;

import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.effort.Budget;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.box.BowLineFinder;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.FrameSolver;
import borderwright.engine.strength.frame.UnknownScales;
import borderwright.engine.strength.loads.LoadCase;
import java.util.ArrayList;
import java.util.List;

/** The bow of every side: for good with the stiffnesses after creep, and what passing loads add at first. */
final class SideBowMaker {
    private final List<BowLine> lines;

    /** By side: greatest difference of any course anywhere between a passing case and the fill alone. */
    private final double[] passingMm;

    private SideBowMaker(List<BowLine> lines, double[] passingMm) {
        this.lines = lines;
        this.passingMm = passingMm;
    }

    /** Of all courses for good. */
    List<BowLine> lines() {
        return lines;
    }

    /** For good only. */
    static List<BowLine> lasting(BoxFrame frame, LoadCase lasting) {
        return lasting(frame, lasting, Budget.ofSteps(Long.MAX_VALUE));
    }

    /** For good only; the work is taken from a budget, and done whatever is left of it. */
    static List<BowLine> lasting(BoxFrame frame, LoadCase lasting, Budget budget) {
        FrameSolver solver = new FrameSolver(frame.frame(), frame.crept());
        FrameAnswer answer = solver.solve(lasting.lasting());
        budget.spend(solver.multiplyAdds());
        return answer.isMechanism() ? List.of() : BowLineFinder.of(frame, answer);
    }

    /** All of it. */
    static SideBowMaker of(BoxFrame frame, List<LoadCase> cases) {
        double[] passing = new double[frame.box().plan().sides().size()];
        FrameSolver first = new FrameSolver(frame.frame(), UnknownScales.ONE);
        List<BowLine> before = BowLineFinder.of(frame, first.solve(cases.get(0).lasting()));
        for (LoadCase one : cases.subList(1, cases.size())) {
            if (!one.isFull()) {
                continue;
            }
            List<BowLine> after = BowLineFinder.of(frame, first.solve(one.factored(1, 1)));
            for (int i = 0; i < after.size(); i++) {
                int side = after.get(i).side();
                passing[side] = Math.max(passing[side], more(before.get(i), after.get(i)));
            }
        }
        return new SideBowMaker(lasting(frame, cases.get(0)), passing);
    }

    private static double more(BowLine before, BowLine after) {
        double most = 0;
        for (int i = 0; i < before.points().size(); i++) {
            most = Math.max(
                    most, after.points().get(i).outMm() - before.points().get(i).outMm());
        }
        return most;
    }

    List<SideBow> sides(double limitMm) {
        List<SideBow> sides = new ArrayList<>();
        for (int i = 0; i < passingMm.length; i++) {
            int side = i;
            BowLine worst = null;
            for (BowLine line : lines) {
                boolean further = line.side() == side
                        && (worst == null
                                || line.greatest().outMm() > worst.greatest().outMm());
                worst = further ? line : worst;
            }
            if (worst != null) {
                BowLine.At at = worst.greatest();
                boolean holds = at.outMm() <= limitMm;
                sides.add(new SideBow(
                        side,
                        PieceLabels.letter(side),
                        Math.max(0, at.outMm()),
                        worst.course(),
                        Math.max(0, at.alongMm()),
                        passingMm[side],
                        holds));
            }
        }
        return sides;
    }
}
