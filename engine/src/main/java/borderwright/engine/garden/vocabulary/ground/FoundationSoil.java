package borderwright.engine.garden.vocabulary.ground;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What lies under the gravel, with presumptive values of IBC 2012 table 1806.2 (psf turned into kN/m2). */
public enum FoundationSoil implements MessageCode {
    @Described("bedrock")
    ROCK(12000, 0.70, 1200),
    @Described("gravel or sandy gravel")
    GRAVEL(3000, 0.35, 200),
    @Described("sand, silty sand, clayey gravel")
    SAND(2000, 0.25, 150),
    /** The code gives clay a cohesion of 130 psf instead of friction; friction is left at nothing here. */
    @Described("clay, sandy clay, silt")
    CLAY(1500, 0, 100),
    /** Made ground and topsoil: the table gives none without an investigation. */
    @Described("made ground, topsoil, or nobody knows")
    UNKNOWN(0, 0, 0);

    private static final double KN_PER_M2_PER_PSF = 0.04788025898;

    private static final String CODE = "foundation-soil-";

    private final double psf;
    private final double sliding;
    private final double lateralPcf;

    FoundationSoil(double psf, double sliding, double lateralPcf) {
        this.psf = psf;
        this.sliding = sliding;
        this.lateralPcf = lateralPcf;
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
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
