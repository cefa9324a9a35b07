package borderwright.engine.strength.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.Planters;
import borderwright.engine.strength.loads.BoxLoads;
import borderwright.engine.strength.loads.LoadCase;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FrameSolverTest {
    /** Boxes of which some cases did not settle while the end of the last step had to be level to the last bit. */
    private static final int[] SEEDS = {5, 60, 79, 83, 98, 220, 335, 376, 816};

    /**
     * Where full steps cycle, the search along each step's line must settle by itself. In the imperial roof garden of {@code
     * start} it once did not: its contacts were right, and only the slope at the end of the last step was not nothing.
     */
    @Test
    void stepsThatAreCutBackFromTheFirstOnSettleOnTheSameAnswer() {
        int compared = 0;
        for (int seed : SEEDS) {
            BoxFrame box = BoxFrame.coarse(
                    Planters.random(new SplittableRandom(seed)),
                    Planters.MATERIALS,
                    Planters.FILL,
                    0,
                    FoundationSoil.CLAY);
            for (LoadCase one : BoxLoads.all(box, Planters.FILL, 1000)) {
                UnknownScales scales = box.forStrength(one.age());
                FrameAnswer usual = box.frame().solve(one.factored(1.35, 1.5), scales);
                FrameAnswer cutBack = new FrameSolver(box.frame(), scales, 0).solve(one.factored(1.35, 1.5));
                compared += agree(box.frame(), usual, cutBack, "seed " + seed);
            }
        }
        assertThat(compared).as("nodes compared").isGreaterThan(2000);
    }

    private static int agree(Frame frame, FrameAnswer usual, FrameAnswer other, String where) {
        double farthest = 1e-3;
        double off = 0;
        for (int node = 0; node < frame.places.size(); node++) {
            for (Freedom freedom : new Freedom[] {Freedom.UX, Freedom.UY}) {
                double moved = usual.displacement(node, freedom);
                farthest = Math.max(farthest, Math.abs(moved));
                off = Math.max(off, Math.abs(moved - other.displacement(node, freedom)));
            }
        }
        assertThat(off).as(where).isCloseTo(0, within(1e-6 * farthest));
        return frame.places.size();
    }
}
