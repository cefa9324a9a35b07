package borderwright.engine.strength.frame;

import borderwright.engine.strength.frame.SpringLaw.State;
import java.util.Arrays;

/** How a structure stands under one load case: displacements, member forces, spring forces and its balance. */
public final class FrameAnswer {
    private final Frame frame;
    private final Loads loads;
    private final UnknownScales scales;
    private final State[] states;
    private final double[] full;
    private final boolean mechanism;
    private final int steps;

    private FrameAnswer(
            Frame frame,
            Loads loads,
            UnknownScales scales,
            State[] states,
            double[] full,
            boolean mechanism,
            int steps) {
        this.frame = frame;
        this.loads = loads;
        this.scales = scales;
        this.states = states.clone();
        this.full = full;
        this.mechanism = mechanism;
        this.steps = steps;
    }

    static FrameAnswer of(Frame frame, Loads loads, UnknownScales scales, State[] states, double[] u, int steps) {
        double[] full = frame.held.clone();
        for (int i = 0; i < full.length; i++) {
            if (frame.numbering.equation[i] >= 0) {
                full[i] = u[frame.numbering.equation[i]];
            }
        }
        return new FrameAnswer(frame, loads, scales, states, full, false, steps);
    }

    static FrameAnswer mechanism(Frame frame, Loads loads, UnknownScales scales, State[] states) {
        double[] full = new double[frame.held.length];
        Arrays.fill(full, Double.NaN);
        return new FrameAnswer(frame, loads, scales, states, full, true, 0);
    }

    /** Whether some part is held by nothing; then no figure of this answer means anything. */
    public boolean isMechanism() {
        return mechanism;
    }

    /** Newton steps taken to the consistent set of contacts. */
    public int steps() {
        return steps;
    }

    /** Displacement of a node, mm, or its rotation, radians. */
    public double displacement(int node, Freedom freedom) {
        return displacement(node, freedom.index());
    }

    double displacement(int node, int freedom) {
        return full[Freedom.COUNT * node + freedom];
    }

    /** What a member carries and how it bends. */
    public MemberAnswer member(int index) {
        Member member = frame.members.get(index);
        double[] displacements = new double[12];
        for (int block = 0; block < 4; block++) {
            Vector local = member.toLocal(triple(LoadVector.index(member, 3 * block)));
            displacements[3 * block] = local.x();
            displacements[3 * block + 1] = local.y();
            displacements[3 * block + 2] = local.z();
        }
        return new MemberAnswer(member, scales.ofMember(index), displacements, loads.of(index));
    }

    private Vector triple(int from) {
        return new Vector(full[from], full[from + 1], full[from + 2]);
    }

    public State state(int spring) {
        return states[spring];
    }

    /** Lengthening of a spring, mm, or its turn, radians. */
    public double stretch(int spring) {
        Spring s = frame.springs.get(spring);
        double[] row = Frame.stretchRow(s);
        double sum = 0;
        for (int f = 0; f < Freedom.COUNT; f++) {
            sum += s.first().node() < 0
                    ? 0
                    : row[f] * full[Freedom.COUNT * s.first().node() + f];
            sum += s.second().node() < 0
                    ? 0
                    : row[6 + f] * full[Freedom.COUNT * s.second().node() + f];
        }
        return sum;
    }

    /** Force in a spring, N, tension positive. */
    public double springForce(int spring) {
        Spring s = frame.springs.get(spring);
        return s.law().force(states[spring], stretch(spring), s.stiffness() * scales.ofSpring(spring));
    }

    /** Force or moment by which what holds a node's held freedom acts on the structure. */
    public double reaction(int node, Freedom freedom) {
        return -unbalanced()[Freedom.COUNT * node + freedom.index()];
    }

    /** Whole force and moment about the origin of all loads and all reactions: six numbers that should be nothing. */
    public Balance balance() {
        return Balance.of(frame, loads, this);
    }

    /** Load less what members and springs resist, at every freedom; zero but for rounding where free. */
    double[] unbalanced() {
        double[] rest = LoadVector.onNodes(frame, loads);
        for (int m = 0; m < frame.members.size(); m++) {
            Member member = frame.members.get(m);
            double[] k = member.globalStiffness();
            for (int i = 0; i < 12; i++) {
                for (int j = 0; j < 12; j++) {
                    rest[LoadVector.index(member, i)] -=
                            scales.ofMember(m) * k[12 * i + j] * full[LoadVector.index(member, j)];
                }
            }
        }
        for (int s = 0; s < frame.springs.size(); s++) {
            takeSpring(s, rest);
        }
        return rest;
    }

    private void takeSpring(int s, double[] rest) {
        Spring spring = frame.springs.get(s);
        double[] row = Frame.stretchRow(spring);
        double pull = springForce(s);
        for (int f = 0; f < Freedom.COUNT; f++) {
            if (spring.first().node() >= 0) {
                rest[Freedom.COUNT * spring.first().node() + f] -= pull * row[f];
            }
            if (spring.second().node() >= 0) {
                rest[Freedom.COUNT * spring.second().node() + f] -= pull * row[6 + f];
            }
        }
    }
}
