package borderwright.engine.strength.timber;

/**
 * A screw or nail.
 *
 * @param kind what it is
 * @param diameterMm outer thread diameter of a screw, shank of a nail
 * @param rootMm thread root of a screw; the shank of a nail
 * @param lengthMm whole length
 * @param threadMm length of the thread from the point; of a ringed nail, of its rings
 * @param headMm diameter of the head
 * @param fuNPerMm2 tensile strength of its wire
 * @param predrilled whether holes are drilled
 * @param withdrawalNPerMm2 declared withdrawal parameter fax,k at {@code declaredRhoKgPerM3}; 0 where none is declared
 * @param pullThroughNPerMm2 declared head pull-through parameter fhead,k at the same density; 0 where none is declared
 * @param declaredRhoKgPerM3 density for which these hold
 */
public record Fastener(
        Kind kind,
        double diameterMm,
        double rootMm,
        double lengthMm,
        double threadMm,
        double headMm,
        double fuNPerMm2,
        boolean predrilled,
        double withdrawalNPerMm2,
        double pullThroughNPerMm2,
        double declaredRhoKgPerM3) {
    /** Taken where none is declared and no formula covers the diameter (careful default, no source). */
    public static final double CAREFUL_WITHDRAWAL = 8;

    /** Taken where none is declared (careful default, no source). */
    public static final double CAREFUL_PULL_THROUGH = 8;

    public Fastener {
        if (!(diameterMm > 0 && rootMm > 0 && rootMm <= diameterMm && lengthMm > 0)) {
            throw new IllegalArgumentException("a fastener's diameter, root and length are above 0, got " + diameterMm
                    + ", " + rootMm + ", " + lengthMm + " mm");
        }
    }

    /** What a fastener is. */
    public enum Kind {
        SCREW,
        SMOOTH_NAIL,
        RINGED_NAIL
    }

    /**
     * A countersunk wood screw of which only diameter and length are known: root 0.64 d, head 2 d, thread on 0.6 of its
     * length, 600 N/mm2, predrilled (careful defaults, common practice, no source).
     */
    public static Fastener screw(double diameterMm, double lengthMm) {
        return new Fastener(
                Kind.SCREW,
                diameterMm,
                0.64 * diameterMm,
                lengthMm,
                0.6 * lengthMm,
                2 * diameterMm,
                600,
                true,
                0,
                0,
                350);
    }

    /** A smooth round wire nail, head 2 d, 600 N/mm2, not predrilled. */
    public static Fastener smoothNail(double diameterMm, double lengthMm) {
        return new Fastener(
                Kind.SMOOTH_NAIL, diameterMm, diameterMm, lengthMm, 0, 2 * diameterMm, 600, false, 0, 0, 350);
    }

    public boolean isScrew() {
        return kind == Kind.SCREW;
    }

    /** Diameter for the yield formulas: 1.1 root of a screw with its thread in the joint (8.7.1(3)), else the shank. */
    public double effectiveMm() {
        return isScrew() ? Math.min(diameterMm, 1.1 * rootMm) : diameterMm;
    }

    /** How far it stands in the second timber when driven flush through the first. */
    public double penetrationMm(double fixedMm) {
        return Math.max(0, lengthMm - fixedMm);
    }
}
