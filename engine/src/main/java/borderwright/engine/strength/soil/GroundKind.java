package borderwright.engine.strength.soil;

import borderwright.engine.measure.UnitFactors;

/** Ground under a planter, with presumptive values of IBC 2012 table 1806.2 (psf turned into kN/m2). */
public enum GroundKind {
    BEDROCK("bedrock", 12000, 0.70, 1200),
    GRAVEL("gravel or sandy gravel", 3000, 0.35, 200),
    SAND("sand, silty sand, clayey gravel", 2000, 0.25, 150),
    /** The code gives clay a cohesion of 130 psf instead of friction; friction is left at nothing here. */
    CLAY("clay, sandy clay, silt", 1500, 0, 100),
    /** Not ground at all: it is taken to bear a box, and a roof's load limit is a check of its own. */
    PAVED("paving, concrete or a roof", 0, 0, 0),
    /** Made ground and topsoil: the table gives none without an investigation. */
    UNKNOWN("unknown ground, fill or topsoil", 0, 0, 0);

    private static final double KN_PER_M2_PER_PSF = 0.04788025898;

    private final String words;
    private final double psf;
    private final double sliding;
    private final double lateralPcf;

    GroundKind(String words, double psf, double sliding, double lateralPcf) {
        this.words = words;
        this.psf = psf;
        this.sliding = sliding;
        this.lateralPcf = lateralPcf;
    }

    public String words() {
        return words;
    }

    /** Presumptive bearing pressure, kN/m2; 0 where the table gives none. */
    public double bearingKnPerM2() {
        return psf * KN_PER_M2_PER_PSF;
    }

    /** Coefficient of sliding friction. */
    public double sliding() {
        return sliding;
    }

    /** Presumptive lateral bearing for each metre below the ground, kN/m3; 0 where the table gives none. */
    public double lateralKnPerM3() {
        return lateralPcf * KN_PER_M2_PER_PSF / UnitFactors.M_PER_FOOT;
    }
}
