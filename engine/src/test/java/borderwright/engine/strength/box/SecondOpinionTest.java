package borderwright.engine.strength.box;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.message.English;
import borderwright.engine.strength.frame.DenseFrame;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.Freedom;
import borderwright.engine.strength.frame.UnknownScales;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.loads.BoxLoads;
import borderwright.engine.strength.loads.LoadCase;
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
            BoxFrame frame = BoxFrame.coarse(box, Planters.MATERIALS, Planters.FILL, 0, FoundationSoil.CLAY);
            List<LoadCase> cases = BoxLoads.all(frame, Planters.FILL, 1000);
            LoadCase one = cases.get(random.nextInt(cases.size()));
            UnknownScales scales = frame.emptied(frame.forStrength(one.age()), one.empty());
            FrameAnswer answer = frame.frame().solve(one.factored(1.35, 1.5), scales);
            double[] second = DenseFrame.solve(frame.frame(), one.factored(1.35, 1.5), scales);
            nodes += agree(frame, answer, second, "seed " + seed + ", " + English.METRIC.text(one.name()));
        }
        assertThat(nodes).as("nodes compared").isGreaterThan(20 * BOXES);
    }

    /** Walls of one or two courses, a few of three, with or without ties, dividers and braces: few unknowns, many contacts. */
    private static Box box(SplittableRandom random) {
        double length = random.nextDouble(600, 2400);
        double height = random.nextInt(100) == 0 ? 450 : random.nextInt(4) == 0 ? 300 : 150;
        double tie = random.nextInt(2) == 0 ? 0 : random.nextDouble(300, 900);
        double brace = random.nextInt(2) == 0 ? 1e5 : random.nextDouble(300, 900);
        double[] dividers = length > 1400 && random.nextBoolean()
                ? new double[] {length * random.nextDouble(0.4, 0.6)}
                : new double[0];
        return Planters.run(Planters.scheme(brace, tie, random.nextDouble(20, 120)), length, height, dividers);
    }

    private static int agree(BoxFrame frame, FrameAnswer answer, double[] second, String where) {
        double farthest = 1e-3;
        for (int i = 0; i < second.length; i += 6) {
            farthest = Math.max(farthest, Math.max(Math.abs(second[i]), Math.abs(second[i + 1])));
        }
        double worst = 0;
        double[][] off = difference(frame, answer, second);
        for (double[] at : off) {
            worst = Math.max(worst, Math.max(Math.abs(at[2]), Math.abs(at[3])));
        }
        assertThat(worst).as(where).isLessThan(ALIKE * farthest);
        return DenseFrame.nodes(frame.frame());
    }

    /** Place of each node and by how much the two differ there, less what the box moves and turns as one: it rests on nothing real. */
    private static double[][] difference(BoxFrame frame, FrameAnswer answer, double[] second) {
        int count = DenseFrame.nodes(frame.frame());
        double[][] at = new double[count][];
        double[] mean = new double[4];
        for (int node = 0; node < count; node++) {
            Vector place = DenseFrame.place(frame.frame(), node);
            at[node] = new double[] {
                place.x(),
                place.y(),
                answer.displacement(node, Freedom.UX) - second[6 * node],
                answer.displacement(node, Freedom.UY) - second[6 * node + 1]
            };
            for (int i = 0; i < 4; i++) {
                mean[i] += at[node][i] / count;
            }
        }
        double turning = 0;
        double spread = 0;
        for (double[] one : at) {
            for (int i = 0; i < 4; i++) {
                one[i] -= mean[i];
            }
            turning += one[0] * one[3] - one[1] * one[2];
            spread += one[0] * one[0] + one[1] * one[1];
        }
        for (double[] one : at) {
            one[2] += turning / spread * one[1];
            one[3] -= turning / spread * one[0];
        }
        return at;
    }
}
