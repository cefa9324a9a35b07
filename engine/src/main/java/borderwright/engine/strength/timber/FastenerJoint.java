package borderwright.engine.strength.timber;

import borderwright.engine.strength.worked.Working;

/** Fasteners of one kind between two timbers under one rule set. */
public interface FastenerJoint {
    /** Slip modulus of one fastener in shear at the serviceability limit, N/mm. */
    double slipModulus();

    /** Final slip over first slip under a lasting load. */
    double creepFactor();

    /** Design stiffness over service stiffness for strength checks. */
    double ultimateShare();

    /** Whether it counts at all against being pulled apart. */
    boolean holdsPull();

    /**
     * How much is used of {@code count} fasteners.
     *
     * @param lateralN force across the fasteners, all together
     * @param pullN force along them, all together; 0 where they are pressed
     * @param count how many share it
     * @param duration of the load
     * @param working that takes down the steps
     */
    double utilisation(double lateralN, double pullN, int count, LoadDuration duration, Working working);
}
