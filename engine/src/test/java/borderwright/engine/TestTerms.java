package borderwright.engine;

import borderwright.engine.garden.Origins;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.StrengthResolver;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.box.MemberMaterials;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.timber.Fastener;
import java.util.List;

/** What boxes are checked for where a garden gives nothing of soil, ground and strength. */
public final class TestTerms {
    private TestTerms() {}

    public static StrengthTerms usual(List<SectionSpec> sections, UnitSystem units) {
        return StrengthTerms.of(
                StrengthResolver.usual(units), SoilResolver.usual(), GroundResolver.usual(), sections, Origins.NONE);
    }

    /** Sections under a rule set, with screws of which nothing is declared. */
    public static MemberMaterials materials(RuleSet rules, List<SectionSpec> sections) {
        MemberMaterials usual = usual(sections, UnitSystem.METRIC).materials();
        return new MemberMaterials(rules, sections, usual.pull(), usual.axialStiffnessNPerMm());
    }

    /** A screw of which nothing is declared. */
    public static Fastener screw(double diameterMm, double lengthMm) {
        return Fastener.screw(
                diameterMm,
                lengthMm,
                usual(List.of(), UnitSystem.METRIC).materials().pull());
    }

    public static Fill fill() {
        return Fill.of(StrengthResolver.usual(UnitSystem.METRIC).load(), SoilResolver.usual());
    }
}
