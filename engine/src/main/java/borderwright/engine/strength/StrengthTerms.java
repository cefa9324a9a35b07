package borderwright.engine.strength;

import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.StrengthSpec;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.strength.box.MemberMaterials;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.timber.ScrewPull;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a box is checked for.
 *
 * @param materials timber and screws under one rule set
 * @param fill what it is filled with
 * @param kneelingN weight of a person on the edge of a wall, N; 0 for none
 * @param bowLimitMm greatest final bow of a side, mm
 * @param bedFriction coefficient of friction under the bottom course that may be counted on; 0 for none
 * @param ground what lies under the gravel bed; nothing on paving or a roof
 * @param gravelMm depth of the gravel bed, mm
 * @param strapN what one corner strap is declared to carry, N, for good; 0 where nothing is declared
 */
public record StrengthTerms(
        MemberMaterials materials,
        Fill fill,
        double kneelingN,
        double bowLimitMm,
        double bedFriction,
        Optional<FoundationSoil> ground,
        double gravelMm,
        double strapN) {
    public StrengthTerms {
        if (!(bowLimitMm > 0 && kneelingN >= 0 && bedFriction >= 0 && gravelMm >= 0 && strapN >= 0)) {
            throw new IllegalArgumentException("a bow limit above 0 and no load below 0 wanted, got " + bowLimitMm
                    + " mm, " + kneelingN + " N, " + bedFriction + ", " + gravelMm + " mm, " + strapN + " N");
        }
    }

    /** The terms of a garden, all sections under its rules; {@code origins} tell what is declared of its screws. */
    public static StrengthTerms of(
            StrengthSpec strength, SoilSpec soil, GroundSpec ground, List<SectionSpec> sections, Origins origins) {
        StrengthSpec.Fasteners fasteners = strength.fasteners();
        return StrengthTerms.builder()
                .materials(new MemberMaterials(
                        RuleSet.of(strength.rules()),
                        sections,
                        new ScrewPull(
                                figure(fasteners.withdrawalNPerMm2(), origins.isGiven("strength.withdrawal")),
                                figure(fasteners.pullThroughNPerMm2(), origins.isGiven("strength.pull through"))),
                        fasteners.screwStiffnessNPerMm().orElse(0)))
                .fill(Fill.of(strength.load(), soil))
                .kneelingN(strength.kneelingN())
                .bowLimitMm(strength.bulgeLimitMm())
                .bedFriction(strength.bedFriction().orElse(0))
                .ground(strength.foundation())
                .gravelMm(ground.isHard() ? 0 : ground.gravelMm(0))
                .strapN(fasteners.strapN().orElse(0))
                .build();
    }

    private static ScrewPull.Figure figure(double nPerMm2, boolean isGiven) {
        return isGiven ? ScrewPull.Figure.declared(nPerMm2) : ScrewPull.Figure.careful(nPerMm2);
    }

    /** What posts stand in that are let into it. */
    public FoundationSoil postGround() {
        return ground.orElse(FoundationSoil.UNKNOWN);
    }

    /** Presumptive bearing pressure of the ground, kN/m2; 0 where there is none, as on paving. */
    double bearingKnPerM2() {
        return ground.map(FoundationSoil::bearingKnPerM2).orElse(0.0);
    }

    RuleSet rules() {
        return materials.rules();
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable MemberMaterials materials;
        private @Nullable Fill fill;
        private double kneelingN = 0;
        private @Nullable Double bowLimitMm;
        private double bedFriction = 0;
        private Optional<FoundationSoil> ground = Optional.of(FoundationSoil.UNKNOWN);
        private double gravelMm = 0;
        private double strapN = 0;

        private Builder() {}

        public Builder materials(MemberMaterials set) {
            materials = set;
            return this;
        }

        public Builder fill(Fill set) {
            fill = set;
            return this;
        }

        public Builder kneelingN(double set) {
            kneelingN = set;
            return this;
        }

        public Builder bowLimitMm(double set) {
            bowLimitMm = set;
            return this;
        }

        public Builder bedFriction(double set) {
            bedFriction = set;
            return this;
        }

        public Builder ground(Optional<FoundationSoil> set) {
            ground = set;
            return this;
        }

        public Builder gravelMm(double set) {
            gravelMm = set;
            return this;
        }

        public Builder strapN(double set) {
            strapN = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public StrengthTerms build() {
            return new StrengthTerms(
                    Objects.requireNonNull(materials, "materials"),
                    Objects.requireNonNull(fill, "fill"),
                    kneelingN,
                    Objects.requireNonNull(bowLimitMm, "bowLimitMm"),
                    bedFriction,
                    ground,
                    gravelMm,
                    strapN);
        }
    }
}
