package borderwright.engine.strength.timber;

import borderwright.engine.message.Message;
import borderwright.engine.strength.worked.Working;

/** One quality of timber under one rule set: stiffness, creep and checks, each check a utilisation (at most 1 holds). */
public interface Timber {
    /** Which grade was taken, and why where none was stamped. */
    Message basis();

    /** Mean modulus along the grain, wet-service factors in, N/mm2. */
    double e0Mean();

    /** Mean modulus across the grain, N/mm2. */
    double e90Mean();

    /** Mean shear modulus, N/mm2. */
    double gMean();

    /** Final deformation over first deformation under a lasting load. */
    double creepFactor();

    /** Bending both ways with axial force. */
    double bending(TimberSection section, Effects effects, LoadDuration duration, Working working);

    /** Shear force on a rectangle, in either direction. */
    double shear(TimberSection section, double shearN, LoadDuration duration, Working working);

    /** Force pressed across the grain on an area. */
    double bearing(double areaMm2, double forceN, LoadDuration duration, Working working);

    /** Force along a post with pinned ends. */
    double post(TimberSection section, double lengthMm, double forceN, LoadDuration duration, Working working);
}
