package borderwright.engine;

import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.StrengthResolver;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.soil.Fill;
import java.util.List;

/** What boxes are checked for where a garden gives nothing of soil, ground and strength. */
public final class TestTerms {
    private TestTerms() {}

    public static StrengthTerms usual(List<SectionSpec> sections, UnitSystem units) {
        return StrengthTerms.of(StrengthResolver.usual(units), SoilResolver.usual(), GroundResolver.usual(), sections);
    }

    public static Fill fill() {
        return Fill.of(StrengthResolver.usual(UnitSystem.METRIC).load(), SoilResolver.usual());
    }
}
