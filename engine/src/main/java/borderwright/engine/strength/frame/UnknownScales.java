package borderwright.engine.strength.frame;

import java.util.Arrays;

/**
 * Factors on the stiffnesses of a frame, for creep and for design values.
 *
 * <p>Made once for a frame; {@link #ONE} leaves all as it is.
 */
public final class UnknownScales {
    public static final UnknownScales ONE = new UnknownScales(new double[0], new double[0]);

    private final double[] members;
    private final double[] springs;

    private UnknownScales(double[] members, double[] springs) {
        this.members = members;
        this.springs = springs;
    }

    /** All factors 1, to be changed one by one through {@link #member} and {@link #spring}. */
    public static UnknownScales of(Frame frame) {
        double[] members = new double[frame.memberCount()];
        double[] springs = new double[frame.springCount()];
        Arrays.fill(members, 1);
        Arrays.fill(springs, 1);
        return new UnknownScales(members, springs);
    }

    public UnknownScales member(int index, double factor) {
        members[index] = positive(factor);
        return this;
    }

    public UnknownScales spring(int index, double factor) {
        springs[index] = positive(factor);
        return this;
    }

    double ofMember(int index) {
        return index < members.length ? members[index] : 1;
    }

    double ofSpring(int index) {
        return index < springs.length ? springs[index] : 1;
    }

    private static double positive(double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("a stiffness factor is above 0, got " + factor);
        }
        return factor;
    }
}
