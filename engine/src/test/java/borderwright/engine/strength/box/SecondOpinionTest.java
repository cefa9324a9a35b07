package borderwright.engine.strength.box;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.Box;
import borderwright.engine.strength.frame.DenseFrame;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.Freedom;
import borderwright.engine.strength.frame.Scales;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The frame solver against a dense one that finds contacts by another method, on seeded boxes. */
class SecondOpinionTest {
    private static final int BOXES = 1000;
    private static final double ALIKE = 1e-6;

    @Test
    void bothAgreeOnAThousandBoxes() {
        int nodes = 0;
        for (int seed = 0; seed < BOXES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Box box = box(random);
            BoxFrame frame = BoxFrame.of(box, Planters.MATERIALS, Planters.FILL);
            List<LoadCase> cases = BoxLoads.all(frame, Planters.FILL, 1000);
            LoadCase one = cases.get(random.nextInt(cases.size()));
            Scales scales = frame.emptied(frame.forStrength(one.afterCreep()), one.empty());
            FrameAnswer answer = frame.frame().solve(one.factored(1.35, 1.5), scales);
            double[] second = DenseFrame.solve(frame.frame(), one.factored(1.35, 1.5), scales);
            nodes += agree(frame, answer, second, "seed " + seed + ", " + one.words());
        }
        assertThat(nodes).as("nodes compared").isGreaterThan(20 * BOXES);
    }

    /** Walls of one or two courses with or without ties, dividers and braces: few unknowns, many contacts. */
    private static Box box(SplittableRandom random) {
        double length = random.nextDouble(600, 2400);
        double height = random.nextInt(4) == 0 ? 300 : 150;
        double tie = random.nextInt(2) == 0 ? 0 : random.nextDouble(300, 900);
        double brace = random.nextInt(2) == 0 ? 1e5 : random.nextDouble(300, 900);
        double[] dividers = length > 1400 && random.nextBoolean()
                ? new double[] {length * random.nextDouble(0.4, 0.6)}
                : new double[0];
        return Planters.run(Planters.scheme(brace, tie, random.nextDouble(20, 120)), length, height, dividers);
    }

    private static int agree(BoxFrame frame, FrameAnswer answer, double[] second, String where) {
        Freedom[] freedoms = Freedom.values();
        double farthest = 1e-3;
        for (int i = 0; i < second.length; i += 6) {
            farthest = Math.max(farthest, Math.max(Math.abs(second[i]), Math.abs(second[i + 1])));
        }
        double worst = 0;
        for (int node = 0; node < frame.frame().nodeCount(); node++) {
            for (int f = 0; f < 2; f++) {
                worst = Math.max(worst, Math.abs(answer.displacement(node, freedoms[f]) - second[6 * node + f]));
            }
        }
        assertThat(worst).as(where).isLessThan(ALIKE * farthest);
        return frame.frame().nodeCount();
    }
}
