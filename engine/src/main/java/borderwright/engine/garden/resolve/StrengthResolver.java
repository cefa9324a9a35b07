package borderwright.engine.garden.resolve;

import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.StrengthSpec;
import borderwright.engine.garden.given.GivenStrength;
import borderwright.engine.garden.vocabulary.TimberRules;
import borderwright.engine.garden.vocabulary.ground.DugSoil;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.garden.vocabulary.ground.SoilPush;
import borderwright.engine.garden.vocabulary.ground.SoilWater;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What the walls must stand. */
public final class StrengthResolver {
    private static final double N_PER_KN = 1000;
    private static final String CAREFUL = "careful default, no source";
    private static final GivenStrength NOTHING = GivenStrength.builder().build();

    private StrengthResolver() {}

    /** Where nothing is given. */
    public static StrengthSpec usual(UnitSystem units) {
        return resolve(null, GroundResolver.usual(), units, Ledger.empty());
    }

    static StrengthSpec resolve(@Nullable GivenStrength given, GroundSpec ground, UnitSystem units, Ledger ledger) {
        Ledger in = ledger.in("strength", given);
        GivenStrength g = given == null ? NOTHING : given;
        TimberRules usual = units == UnitSystem.IMPERIAL ? TimberRules.NDS : TimberRules.EUROCODE;
        return new StrengthSpec(
                in.or("bulge limit", g.bulgeLimit(), Length.ofMm(10), Ledger.PRACTICE)
                        .mm(),
                in.or("rules", g.rules(), usual, "by the garden's units"),
                load(g, in),
                N_PER_KN * in.or("person", g.person(), 1.0, Ledger.PRACTICE),
                foundation(g.ground(), ground, in),
                declared(g.bedFriction(), 1),
                new StrengthSpec.Fasteners(
                        in.or("withdrawal", g.withdrawal(), 8.0, CAREFUL),
                        in.or("pull through", g.pullThrough(), 8.0, CAREFUL),
                        declared(g.screwStiffness(), 1),
                        declared(g.strap(), N_PER_KN)));
    }

    private static StrengthSpec.SoilLoad load(GivenStrength g, Ledger in) {
        return new StrengthSpec.SoilLoad(
                in.or("friction", g.friction(), Angle.ofDegrees(30), "loose topsoil: " + Ledger.PRACTICE)
                        .radians(),
                in.or("push", g.push(), SoilPush.AT_REST, "walls that hardly give way"),
                in.or("water", g.water(), SoilWater.SOAKED, "rain soaks it, joints let it out"),
                in.or("heaped", g.heaped(), Length.ZERO, "level soil").mm(),
                in.or("treading", g.treading(), 2.0, "one person on a shoe's breadth either way: " + Ledger.PRACTICE),
                in.or("arching", g.arching(), false, "never the default")
                        ? StrengthSpec.SoilSupport.WALLS
                        : StrengthSpec.SoilSupport.BED);
    }

    /** What is dug lies under the gravel too; earth may be anything down to clay. Paving is dug nowhere. */
    private static Optional<FoundationSoil> foundation(@Nullable FoundationSoil given, GroundSpec ground, Ledger in) {
        if (given != null) {
            return Optional.of(in.given("ground", given, ""));
        }
        if (ground.surface().isHard()) {
            return Optional.empty();
        }
        FoundationSoil dug = ground.kind() == DugSoil.SAND ? FoundationSoil.SAND : FoundationSoil.CLAY;
        return Optional.of(in.byDefault("ground", dug, "by `ground.kind`; earth counts as clay, the weakest"));
    }

    private static OptionalDouble declared(@Nullable Double given, double times) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(times * given);
    }
}
