package borderwright.engine.strength.frame;

import borderwright.engine.strength.frame.SpringLaw.State;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Finds the displacements at which every contact and slip is in the state that its own stretch calls for.
 *
 * <p>The energy is a sum of convex pieces of parabola, so a consistent set of states is its minimum. Full Newton steps are taken
 * while they settle; after {@link #PLAIN_STEPS} of them each is cut back to the lowest point along its line, which cannot cycle.
 *
 * <p>One solver serves many load cases on one set of stiffnesses: it starts from the states of the last case and works
 * out again only the fronts of the factor that a changed state touches. The answer does not depend on the start, since the minimum is one. One thread at a time.
 */
public final class FrameSolver {
    private static final int PLAIN_STEPS = 12;
    private static final int MOST_STEPS = 200;
    private static final double ROUNDING = 1e-8;
    private static final double MOST_DAMPING = 1e7;

    private final Frame frame;
    private final UnknownScales scales;
    private final int plainSteps;
    private final FrontalFactor factor;
    private final State[] states;

    /** By spring: whether it works in the factor as it stands. */
    private final boolean[] factored;

    private final double[][] rows;
    private final int[][] equations;
    private double[] force = {};
    private double damping;
    private double factoredDamping;

    public FrameSolver(Frame frame, UnknownScales scales) {
        this(frame, scales, PLAIN_STEPS);
    }

    /** Multiplications so far, each with an addition; the same on every computer. */
    public long multiplyAdds() {
        return factor.multiplyAdds();
    }

    /** @param plainSteps after how many full steps each is cut back to the lowest point along its line */
    FrameSolver(Frame frame, UnknownScales scales, int plainSteps) {
        this.frame = frame;
        this.plainSteps = plainSteps;
        this.scales = scales;
        factor = new FrontalFactor(frame.fronts);
        int count = frame.springs.size();
        states = new State[count];
        Arrays.fill(states, State.WORKING);
        factored = new boolean[count];
        Arrays.fill(factored, true);
        rows = new double[count][];
        equations = new int[count][];
        for (int s = 0; s < count; s++) {
            if (frame.springs.get(s).law().kind() != SpringLaw.Kind.ELASTIC) {
                rows[s] = Frame.stretchRow(frame.springs.get(s));
                equations[s] = frame.springEquations(frame.springs.get(s));
            }
        }
    }

    /** Starts the next case from the states of an earlier answer on the same frame, where it is likely to be near. */
    public void startFrom(FrameAnswer near) {
        for (int s = 0; s < states.length; s++) {
            states[s] = near.state(s);
        }
    }

    /** How the frame stands under a load case. */
    public FrameAnswer solve(Loads loads) {
        force = LoadVector.of(frame, loads, scales);
        double[] u = new double[force.length];
        damping = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] target = newton(u);
            if (target.length != force.length) {
                return FrameAnswer.mechanism(frame, loads, scales, states);
            }
            State[] called = statesAt(target);
            // The minimum, however its slope rounds: no search along the last bit of the way to it.
            if (damping == 0 && Arrays.equals(called, states)) {
                return FrameAnswer.of(frame, loads, scales, states, target, step + 1);
            }
            double along = step < plainSteps ? 1 : lowest(u, target);
            if (along == 1) {
                // Not by way of the last displacements: the answer then depends on the states alone, to the last bit.
                u = target;
            } else {
                for (int i = 0; i < u.length; i++) {
                    u[i] += along * (target[i] - u[i]);
                }
                called = statesAt(u);
            }
            System.arraycopy(called, 0, states, 0, states.length);
            damp(step, along);
        }
        double farthest = 0;
        for (double value : u) {
            farthest = Math.max(farthest, Math.abs(value));
        }
        throw new IllegalStateException("no consistent set of contacts after " + MOST_STEPS
                + " steps; the greatest displacement is " + farthest + " mm or radians");
    }

    /**
     * Steps that overshoot are drawn back towards where they start from, by a multiple of the loose stiffness; steps that
     * do not set it free again.
     */
    private void damp(int step, double along) {
        if (step < plainSteps || frame.isTight()) {
            return;
        }
        if (along < 0.5) {
            damping = Math.min(MOST_DAMPING, Math.max(1, damping) * 10);
        } else {
            damping = damping <= 10 ? 0 : damping / 10;
        }
    }

    /** The displacements if the states stayed as they are; empty where parts are held by nothing. */
    private double[] newton(double[] u) {
        double[] load = force.clone();
        for (int i = 0; damping > 0 && i < load.length; i++) {
            load[i] += damping * frame.loose[i] * u[i];
        }
        for (int s = 0; s < states.length; s++) {
            if (states[s] != State.WORKING) {
                addForce(load, s, -frame.springs.get(s).law().force(states[s], 0, 0));
            }
        }
        markChanges();
        return factor.decompose(this::addStiffness) ? factor.solve(load) : new double[0];
    }

    /** Only whether a spring works changes the stiffness: slipping either way has none. */
    private void markChanges() {
        if (damping != factoredDamping) {
            factor.markAll();
            factoredDamping = damping;
        }
        for (int s = 0; s < states.length; s++) {
            boolean works = states[s] == State.WORKING;
            boolean turned = works != factored[s];
            factored[s] = works;
            if (turned && frame.springParts.get(s).front() >= 0) {
                factor.mark(frame.springParts.get(s).front());
            }
        }
    }

    private void addStiffness(int front, double[] values) {
        for (int m : frame.membersOf[front]) {
            frame.memberParts.get(m).addTo(values, scales.ofMember(m));
        }
        for (int s : frame.springsOf[front]) {
            if (states[s] == State.WORKING) {
                frame.springParts.get(s).addTo(values, scales.ofSpring(s));
            }
        }
        Fronts.Front own = frame.fronts.get(front);
        for (int j = 0; j < own.pivots; j++) {
            values[j * own.size() + j] += (1 + damping) * frame.loose[own.equations[j]];
        }
    }

    private void addForce(double[] load, int s, double pull) {
        for (int i = 0; pull != 0 && i < 12; i++) {
            if (equations[s][i] >= 0) {
                load[equations[s][i]] += pull * rows[s][i];
            }
        }
    }

    private double stretch(int s, double[] u) {
        double sum = 0;
        for (int i = 0; i < 12; i++) {
            if (equations[s][i] >= 0) {
                sum += rows[s][i] * u[equations[s][i]];
            }
        }
        return sum;
    }

    private double stiffness(int s) {
        return frame.springs.get(s).stiffness() * scales.ofSpring(s);
    }

    /** The state that the displacements call for, by spring. */
    private State[] statesAt(double[] u) {
        State[] called = states.clone();
        double farthest = 0;
        for (double value : u) {
            farthest = Math.max(farthest, Math.abs(value));
        }
        for (int s = 0; s < states.length; s++) {
            if (rows[s] != null) {
                called[s] = frame.springs.get(s).law().stateAt(stretch(s, u), stiffness(s), states[s], farthest);
            }
        }
        return called;
    }

    /** The fraction of the way to {@code target} at which the energy is lowest. */
    private double lowest(double[] u, double[] target) {
        double[] step = new double[u.length];
        for (int i = 0; i < u.length; i++) {
            step[i] = target[i] - u[i];
        }
        if (isNothing(step, target)) {
            return 1;
        }
        Slope slope = new Slope(u, step);
        // The slope at its target, where only springs that turned on the way are not at rest.
        if (slope.at(1) <= 1e-12 * Math.abs(slope.at(0))) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (slope.at(middle) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** Whether a step is no more than rounding. */
    private static boolean isNothing(double[] step, double[] target) {
        double greatest = 0;
        double farthest = 0;
        for (int i = 0; i < step.length; i++) {
            greatest = Math.max(greatest, Math.abs(step[i]));
            farthest = Math.max(farthest, Math.abs(target[i]));
        }
        return greatest <= ROUNDING * farthest;
    }

    /** Slope of the energy along a step: a straight line but for the springs that turn on the way. */
    private final class Slope {
        private final double atStart;
        private final double growth;
        private final int[] turning;
        private final double[] stretches;
        private final double[] steps;

        Slope(double[] u, double[] step) {
            double[] pull = pull(u);
            double[] pullOfStep = pull(step);
            double start = 0;
            double more = 0;
            for (int i = 0; i < u.length; i++) {
                start += (pull[i] - force[i]) * step[i];
                more += pullOfStep[i] * step[i];
            }
            atStart = start;
            growth = more;
            turning = IntStream.range(0, states.length)
                    .filter(s -> rows[s] != null)
                    .toArray();
            stretches = Arrays.stream(turning).mapToDouble(s -> stretch(s, u)).toArray();
            steps = Arrays.stream(turning).mapToDouble(s -> stretch(s, step)).toArray();
        }

        /** What members, elastic springs and the loose stiffness resist. */
        private double[] pull(double[] u) {
            double[] pull = new double[u.length];
            for (int m = 0; m < frame.memberParts.size(); m++) {
                frame.memberParts.get(m).multiply(scales.ofMember(m), u, pull);
            }
            for (int s = 0; s < states.length; s++) {
                if (rows[s] == null) {
                    frame.springParts.get(s).multiply(scales.ofSpring(s), u, pull);
                }
            }
            for (int i = 0; i < u.length; i++) {
                pull[i] += frame.loose[i] * u[i];
            }
            return pull;
        }

        double at(double t) {
            double slope = atStart + t * growth;
            for (int k = 0; k < turning.length; k++) {
                SpringLaw law = frame.springs.get(turning[k]).law();
                double stiffness = stiffness(turning[k]);
                double stretch = stretches[k] + t * steps[k];
                slope += law.force(law.stateAt(stretch, stiffness), stretch, stiffness) * steps[k];
            }
            return slope;
        }
    }
}
