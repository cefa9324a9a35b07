package borderwright.engine.strength.frame;

import borderwright.engine.strength.frame.SpringLaw.State;
import java.util.Arrays;

/**
 * Finds the displacements at which every contact and slip is in the state that its own stretch calls for.
 *
 * <p>The energy is a sum of convex pieces of parabola, so a consistent set of states is its minimum. Full Newton steps
 * are taken while they settle; after {@link #PLAIN_STEPS} of them each is cut back to the lowest point along its line,
 * which cannot cycle.
 *
 * <p>One solver serves many load cases on one set of stiffnesses: it starts from the states of the last case and keeps the
 * factor while they stay. The answer does not depend on the start, since the minimum is one. One thread at a time.
 */
public final class FrameSolver {
    private static final int PLAIN_STEPS = 12;
    private static final int MOST_STEPS = 200;
    private static final double ROUNDING = 1e-8;
    private static final double MOST_DAMPING = 1e7;

    private final Frame frame;
    private final UnknownScales scales;
    private final StiffnessFactor factor;
    private final State[] states;
    private final State[] factored;
    private final double[][] rows;
    private final int[][] equations;
    private double[] force = {};
    private boolean isFactored;
    private double damping;
    private double factoredDamping;

    public FrameSolver(Frame frame, UnknownScales scales) {
        this.frame = frame;
        this.scales = scales;
        factor = new StiffnessFactor(frame.pattern);
        int count = frame.springs.size();
        states = new State[count];
        Arrays.fill(states, State.WORKING);
        factored = states.clone();
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
            double along = step < PLAIN_STEPS ? 1 : lowest(u, target);
            for (int i = 0; i < u.length; i++) {
                u[i] += along * (target[i] - u[i]);
            }
            boolean settled = !updateStates(u) && along == 1 && damping == 0;
            damp(step, along);
            if (settled) {
                return FrameAnswer.of(frame, loads, scales, states, u, step + 1);
            }
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
        if (step < PLAIN_STEPS || frame.isTight()) {
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
        if (!isFactored || damping != factoredDamping || !Arrays.equals(states, factored)) {
            factoredDamping = damping;
            System.arraycopy(states, 0, factored, 0, states.length);
            isFactored = refactor();
        }
        return isFactored ? factor.solve(load) : new double[0];
    }

    private boolean refactor() {
        double[] values = factor.clearedValues();
        for (int m = 0; m < frame.memberParts.size(); m++) {
            frame.memberParts.get(m).addTo(values, scales.ofMember(m));
        }
        for (int s = 0; s < states.length; s++) {
            if (states[s] == State.WORKING) {
                frame.springParts.get(s).addTo(values, scales.ofSpring(s));
            }
        }
        factor.addToDiagonal(frame.loose, 1 + damping);
        return factor.decompose();
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

    private boolean updateStates(double[] u) {
        boolean changed = false;
        double farthest = 0;
        for (double value : u) {
            farthest = Math.max(farthest, Math.abs(value));
        }
        for (int s = 0; s < states.length; s++) {
            if (rows[s] != null) {
                State state = frame.springs.get(s).law().stateAt(stretch(s, u), stiffness(s), states[s], farthest);
                changed |= state != states[s];
                states[s] = state;
            }
        }
        return changed;
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
        double steepness = slopeAt(u, step, 0);
        double atEnd = slopeAt(target, step, 0);
        if (atEnd <= 1e-12 * Math.abs(steepness)) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (slopeAt(u, step, middle) > 0) {
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

    /** Slope of the energy along {@code step} at {@code u + t step}. */
    private double slopeAt(double[] u, double[] step, double t) {
        double[] at = new double[u.length];
        for (int i = 0; i < u.length; i++) {
            at[i] = u[i] + t * step[i];
        }
        double[] pull = new double[u.length];
        for (int m = 0; m < frame.memberParts.size(); m++) {
            frame.memberParts.get(m).multiply(scales.ofMember(m), at, pull);
        }
        double slope = 0;
        for (int s = 0; s < states.length; s++) {
            if (rows[s] == null) {
                frame.springParts.get(s).multiply(scales.ofSpring(s), at, pull);
            } else {
                double stretch = stretch(s, at);
                SpringLaw law = frame.springs.get(s).law();
                slope += law.force(law.stateAt(stretch, stiffness(s)), stretch, stiffness(s)) * stretch(s, step);
            }
        }
        for (int i = 0; i < u.length; i++) {
            slope += (pull[i] + frame.loose[i] * at[i] - force[i]) * step[i];
        }
        return slope;
    }
}
