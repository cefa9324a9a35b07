package borderwright.engine.strength.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** The frontal factor against a general dense solver, on seeded frames of no planter's shape. */
class FrontalFactorTest {
    private static final int FRAMES = 300;

    @Test
    void theDisplacementsOfADenseSolver() {
        for (int seed = 0; seed < FRAMES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Frame frame = frame(random);
            boolean[] working = toss(new boolean[frame.springCount()], random, 0.7);
            FrontalFactor factor = new FrontalFactor(frame.fronts);
            assertThat(factor.decompose((front, values) -> add(frame, working, front, values)))
                    .isTrue();
            double[] load = load(frame, random);
            double[] found = factor.solve(load);
            SimpleMatrix dense = dense(frame, working).solve(new SimpleMatrix(load.length, 1, true, load));
            double farthest = dense.elementMaxAbs();
            for (int i = 0; i < load.length; i++) {
                assertThat(found[i]).as("seed %d, %d", seed, i).isCloseTo(dense.get(i), within(1e-8 * farthest));
            }
        }
    }

    @Test
    void workedOutAgainInPartItIsTheSameToTheLastBitAsMadeAfresh() {
        int kept = 0;
        for (int seed = 0; seed < FRAMES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Frame frame = frame(random);
            boolean[] working = toss(new boolean[frame.springCount()], random, 0.7);
            FrontalFactor reused = new FrontalFactor(frame.fronts);
            for (int round = 0; round < 5; round++) {
                boolean[] before = working.clone();
                toss(working, random, 0.05);
                for (int s = 0; s < working.length; s++) {
                    if (before[s] != working[s] && frame.springParts.get(s).front() >= 0) {
                        reused.mark(frame.springParts.get(s).front());
                    }
                }
                int[] redone = {0};
                reused.decompose((front, values) -> {
                    redone[0]++;
                    add(frame, working, front, values);
                });
                kept += frame.fronts.count() - redone[0];
                FrontalFactor afresh = new FrontalFactor(frame.fronts);
                afresh.decompose((front, values) -> add(frame, working, front, values));
                double[] load = load(frame, random);
                assertThat(reused.solve(load)).as("seed %d", seed).isEqualTo(afresh.solve(load));
            }
        }
        assertThat(kept).as("fronts not worked out again").isGreaterThan(FRAMES);
    }

    @Test
    void afterAFailureEverythingIsWorkedOutAgain() {
        Frame frame = frame(new SplittableRandom(1));
        boolean[] working = new boolean[frame.springCount()];
        Arrays.fill(working, true);
        FrontalFactor factor = new FrontalFactor(frame.fronts);
        int last = frame.fronts.count() - 1;
        assertThat(factor.decompose((front, values) -> {
                    if (front < last) {
                        add(frame, working, front, values);
                    } else {
                        values[0] = -1e12;
                    }
                }))
                .isFalse();
        FrontalFactor afresh = new FrontalFactor(frame.fronts);
        assertThat(afresh.decompose((front, values) -> add(frame, working, front, values)))
                .isTrue();
        assertThat(factor.decompose((front, values) -> add(frame, working, front, values)))
                .isTrue();
        double[] load = load(frame, new SplittableRandom(2));
        assertThat(factor.solve(load)).isEqualTo(afresh.solve(load));
    }

    @Test
    void anAnswerDoesNotDependOnTheCaseSolvedBefore() {
        int different = 0;
        for (int seed = 0; seed < FRAMES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Frame frame = frame(random);
            Loads first = loads(frame, random);
            Loads second = loads(frame, random);
            FrameSolver used = new FrameSolver(frame, UnknownScales.ONE);
            FrameAnswer before = used.solve(first);
            FrameAnswer after = used.solve(second);
            FrameAnswer fresh = frame.solve(second);
            different += before.displacement(0, 0) != after.displacement(0, 0) ? 1 : 0;
            for (int node = 0; node < frame.places.size(); node++) {
                for (int f = 0; f < Freedom.COUNT; f++) {
                    assertThat(after.displacement(node, f)).as("seed %d", seed).isEqualTo(fresh.displacement(node, f));
                }
            }
        }
        assertThat(different).as("frames that the two cases move differently").isGreaterThan(FRAMES / 2);
    }

    /** Nodes anywhere, some held in part, bars and one-way springs between any two, all of it loosely held. */
    private static Frame frame(SplittableRandom random) {
        FrameBuilder b = new FrameBuilder();
        int nodes = random.nextInt(2, 25);
        for (int n = 0; n < nodes; n++) {
            Freedom[] free = Arrays.stream(Freedom.values())
                    .filter(f -> random.nextInt(8) > 0)
                    .toArray(Freedom[]::new);
            b.node(anywhere(random), n == 1 ? new Freedom[0] : free);
        }
        for (int m = 0; m < 2 * nodes; m++) {
            int start = random.nextInt(nodes);
            int end = random.nextInt(nodes);
            if (start != end) {
                b.member(start, end, new JointRigidity(1e5, 1e7, 2e7, 5e6), anywhere(random));
            }
        }
        for (int s = 0; s < 3 * nodes; s++) {
            int one = random.nextInt(nodes);
            int other = (one + random.nextInt(1, nodes)) % nodes;
            SpringLaw law = random.nextBoolean() ? SpringLaw.CONTACT : SpringLaw.slipping(3);
            if (random.nextInt(4) == 0) {
                b.toGround(one, b.places.get(one), anywhere(random), 100, law);
            } else {
                b.spring(one, other, b.places.get(one), anywhere(random), 100, law);
            }
        }
        return b.build(1e-3);
    }

    private static Vector anywhere(SplittableRandom random) {
        return new Vector(random.nextDouble(-500, 500), random.nextDouble(-500, 500), random.nextDouble(-500, 500));
    }

    private static boolean[] toss(boolean[] working, SplittableRandom random, double share) {
        for (int s = 0; s < working.length; s++) {
            working[s] ^= random.nextDouble() < share;
        }
        return working;
    }

    private static double[] load(Frame frame, SplittableRandom random) {
        return random.doubles(frame.numbering.count, -10, 10).toArray();
    }

    private static Loads loads(Frame frame, SplittableRandom random) {
        Loads loads = new Loads();
        for (int n = 0; n < frame.places.size(); n++) {
            for (Freedom f : Freedom.values()) {
                if (frame.numbering.equation[Freedom.COUNT * n + f.index()] >= 0) {
                    loads.onNode(n, f, random.nextDouble(-10, 10));
                }
            }
        }
        return loads;
    }

    private static void add(Frame frame, boolean[] working, int front, double[] values) {
        for (int m : frame.membersOf[front]) {
            frame.memberParts.get(m).addTo(values, 1);
        }
        for (int s : frame.springsOf[front]) {
            if (working[s]) {
                frame.springParts.get(s).addTo(values, 1);
            }
        }
        Fronts.Front own = frame.fronts.get(front);
        for (int j = 0; j < own.pivots; j++) {
            values[j * own.size() + j] += frame.loose[own.equations[j]];
        }
    }

    /** The whole matrix, column by column, by what the parts resist to a unit displacement. */
    private static SimpleMatrix dense(Frame frame, boolean[] working) {
        int count = frame.numbering.count;
        SimpleMatrix matrix = new SimpleMatrix(count, count);
        for (int j = 0; j < count; j++) {
            double[] unit = new double[count];
            double[] out = new double[count];
            unit[j] = 1;
            frame.memberParts.forEach(part -> part.multiply(1, unit, out));
            for (int s = 0; s < working.length; s++) {
                if (working[s]) {
                    frame.springParts.get(s).multiply(1, unit, out);
                }
            }
            out[j] += frame.loose[j];
            for (int i = 0; i < count; i++) {
                matrix.set(i, j, out[i]);
            }
        }
        return matrix;
    }
}
