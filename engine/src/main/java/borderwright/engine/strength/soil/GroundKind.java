package borderwright.engine.strength.soil;

import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Ground under a planter, with presumptive values of IBC 2012 table 1806.2 (psf turned into kN/m2). */
public enum GroundKind implements MessageCode {
    BEDROCK(12000, 0.70, 1200),
    GRAVEL(3000, 0.35, 200),
    SAND(2000, 0.25, 150),
    /** The code gives clay a cohesion of 130 psf instead of friction; friction is left at nothing here. */
    CLAY(1500, 0, 100),
    /** Not ground at all: it is taken to bear a box, and a roof's load limit is a check of its own. */
    PAVED(0, 0, 0),
    /** Made ground and topsoil: the table gives none without an investigation. */
    UNKNOWN(0, 0, 0);

    private static final double KN_PER_M2_PER_PSF = 0.04788025898;

    private static final String CODE = "ground-kind-";

    private final double psf;
    private final double sliding;
    private final double lateralPcf;

    GroundKind(double psf, double sliding, double lateralPcf) {
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

    /** The row of the table for a soil as it is given. */
    public static GroundKind of(FoundationSoil soil) {
        return switch (soil) {
            case ROCK -> BEDROCK;
            case GRAVEL -> GRAVEL;
            case SAND -> SAND;
            case CLAY -> CLAY;
            case UNKNOWN -> UNKNOWN;
        };
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
