package borderwright.engine.strength;

import borderwright.engine.garden.SectionNote;
import borderwright.engine.garden.StrengthWish;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.box.MemberMaterials;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.soil.GroundKind;
import borderwright.engine.strength.timber.RuleSet;
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
    /** Moist and soaked topsoil with compost: common practice, no source. */
    private static final double MOIST_KN_PER_M3 = 16;

    private static final double SATURATED_KN_PER_M3 = 19;

    /** Loose topsoil: common practice, no source. */
    private static final double FRICTION_DEG = 30;

    /** One person's weight on a shoe's breadth either way: common practice, no source. */
    private static final double TREADING_KN_PER_M2 = 2;

    private static final double BELOW_RIM_MM = 30;
    private static final double KNEELING_N = 1000;
    private static final double GRAVEL_MM = 50;

    public StrengthTerms {
        if (!(bowLimitMm > 0 && kneelingN >= 0 && bedFriction >= 0 && gravelMm >= 0 && strapN >= 0)) {
            throw new IllegalArgumentException("a bow limit above 0 and no load below 0 wanted, got " + bowLimitMm
                    + " mm, " + kneelingN + " N, " + bedFriction + ", " + gravelMm + " mm, " + strapN + " N");
        }
    }

    /** The rules for timber and screws that gardens in these units follow unless they say others. */
    public static RuleSet habitRules(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? RuleSet.NDS : RuleSet.EUROCODE;
    }

    /** What is taken when nothing is said: see the guide, docs/strength.md. */
    public static StrengthTerms habit(RuleSet rules, List<SectionNote> sections, UnitSystem units) {
        return new StrengthTerms(
                MemberMaterials.of(rules, sections),
                habitFill(),
                KNEELING_N,
                StrengthWish.HABIT.bowMm(),
                0,
                GroundKind.CLAY,
                GRAVEL_MM,
                0,
                units);
    }

    /** Topsoil at rest, soaked now and then. */
    public static Fill habitFill() {
        return new Fill(
                MOIST_KN_PER_M3,
                SATURATED_KN_PER_M3,
                StrictMath.toRadians(FRICTION_DEG),
                Fill.Push.AT_REST,
                Fill.Water.SATURATED,
                0,
                TREADING_KN_PER_M2,
                BELOW_RIM_MM,
                false);
    }

    RuleSet rules() {
        return materials.rules();
    }
}
