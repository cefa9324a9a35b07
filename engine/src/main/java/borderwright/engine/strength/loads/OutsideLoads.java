package borderwright.engine.strength.loads;

import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.strength.box.Board;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.frame.Loads;
import borderwright.engine.strength.soil.EarthCoefficient;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.soil.PressureProfile;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.TimberAge;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Higher ground against a box that is empty: at rest, moist, pushing the walls in, with no fill behind them. */
public final class OutsideLoads {
    private OutsideLoads() {}

    /**
     * The case; nothing where no side stands against ground.
     *
     * @param fill whose friction and weight the ground is taken to have
     * @param leastMm ground above the bed that counts
     */
    public static Optional<LoadCase> of(BoxFrame frame, Fill fill, double leastMm) {
        FootprintPlan plan = frame.box().plan();
        PressureProfile ground = PressureProfile.drained(EarthCoefficient.atRest(fill.phi()), fill.moistKnPerM3(), 0);
        Loads loads = new Loads();
        boolean any = false;
        for (Board board : frame.walls()) {
            double levelMm = plan.sides().get(board.side()).groundMm();
            double top = Math.min(board.topMm(), levelMm);
            if (levelMm - plan.bedMm() <= leastMm || top <= board.bottomMm()) {
                continue;
            }
            any = true;
            double depthMm = levelMm - (top + board.bottomMm()) / 2;
            double perMm =
                    -ground.effective(depthMm / SoilLoads.MM_PER_M) * SoilLoads.N_PER_MM2 * (top - board.bottomMm());
            for (Board.Part part : board.parts()) {
                SoilLoads.add(part, board, perMm, loads);
            }
        }
        Set<Integer> empty = new TreeSet<>();
        for (int i = 0; i < frame.box().inside().size(); i++) {
            empty.add(i);
        }
        return any
                ? Optional.of(new LoadCase(
                        LoadEvent.GROUND_AGAINST_EMPTY_BOX,
                        -1,
                        LoadDuration.MEDIUM,
                        TimberAge.NEW,
                        loads,
                        new Loads(),
                        empty))
                : Optional.empty();
    }
}
