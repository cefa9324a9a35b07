package borderwright.engine.strength;

import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.StrengthSpec;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.box.MemberMaterials;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.soil.GroundKind;
import java.util.List;

/**
 * What a box is checked for.
 *
 * @param materials timber and screws under one rule set
 * @param fill what it is filled with
 * @param kneelingN weight of a person on the edge of a wall, N; 0 for none
 * @param bowLimitMm greatest final bow of a side, mm
 * @param bedFriction coefficient of friction under the bottom course that may be counted on; 0 for none
 * @param ground what lies under the gravel bed
 * @param gravelMm depth of the gravel bed, mm
 * @param strapN what one corner strap is declared to carry, N, for good; 0 where nothing is declared
 * @param units in which the report's sentences are written; its numbers are N and mm
 */
public record StrengthTerms(
        MemberMaterials materials,
        Fill fill,
        double kneelingN,
        double bowLimitMm,
        double bedFriction,
        GroundKind ground,
        double gravelMm,
        double strapN,
        UnitSystem units) {
    public StrengthTerms {
        if (!(bowLimitMm > 0 && kneelingN >= 0 && bedFriction >= 0 && gravelMm >= 0 && strapN >= 0)) {
            throw new IllegalArgumentException("a bow limit above 0 and no load below 0 wanted, got " + bowLimitMm
                    + " mm, " + kneelingN + " N, " + bedFriction + ", " + gravelMm + " mm, " + strapN + " N");
        }
    }

    /** The terms of a garden, all sections under its rules. */
    public static StrengthTerms of(
            StrengthSpec strength, SoilSpec soil, GroundSpec ground, List<SectionSpec> sections, UnitSystem units) {
        StrengthSpec.Declared declared = strength.fasteners();
        return new StrengthTerms(
                new MemberMaterials(
                        RuleSet.of(strength.rules()),
                        sections,
                        declared.withdrawalNPerMm2().orElse(0),
                        declared.pullThroughNPerMm2().orElse(0),
                        declared.screwStiffnessNPerMm().orElse(0)),
                Fill.of(strength.load(), soil),
                strength.kneelingN(),
                strength.bulgeLimitMm(),
                strength.bedFriction().orElse(0),
                strength.foundation().map(GroundKind::of).orElse(GroundKind.PAVED),
                ground.isHard() ? 0 : ground.gravelMm(0),
                declared.strapN().orElse(0),
                units);
    }

    RuleSet rules() {
        return materials.rules();
    }
}
