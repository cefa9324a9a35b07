package borderwright.engine.strength.soil;

/** Ground under a planter, with presumptive values of IBC 2012 table 1806.2 (psf turned into kN/m2). */
public enum GroundKind {
    BEDROCK("bedrock", 12000, 0.70),
    GRAVEL("gravel or sandy gravel", 3000, 0.35),
    SAND("sand, silty sand, clayey gravel", 2000, 0.25),
    /** The code gives clay a cohesion of 130 psf instead of friction; friction is left at nothing here. */
    CLAY("clay, sandy clay, silt", 1500, 0),
    /** Made ground and topsoil: the table gives none without an investigation. */
    UNKNOWN("unknown ground, fill or topsoil", 0, 0);

    private static final double KN_PER_M2_PER_PSF = 0.04788025898;

    private final String words;
    private final double psf;
    private final double sliding;

    GroundKind(String words, double psf, double sliding) {
        this.words = words;
        this.psf = psf;
        this.sliding = sliding;
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
}
