package borderwright.engine.garden.resolve;

import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.GroundSpec.DigSpec;
import borderwright.engine.garden.GroundSpec.FeetSpec;
import borderwright.engine.garden.GroundSpec.GravelSpec;
import borderwright.engine.garden.GroundSpec.MembraneSpec;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.vocabulary.ground.DugSoil;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.measure.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What the planters stand on. */
public final class GroundResolver {
    /** Compacted depth under low and under tall walls, and where tall begins. */
    private static final double LOW_GRAVEL_MM = 50;

    private static final double TALL_GRAVEL_MM = 100;
    private static final double TALL_MM = 450;

    private static final GivenGround NOTHING = GivenGround.builder().build();

    private GroundResolver() {}

    /** Where nothing is given. */
    public static GroundSpec usual() {
        return resolve(null);
    }

    /** The ground alone. */
    public static GroundSpec resolve(@Nullable GivenGround given) {
        return resolve(given, Ledger.empty());
    }

    static GroundSpec resolve(@Nullable GivenGround given, Ledger ledger) {
        Ledger in = ledger.in("ground", given);
        GivenGround g = given == null ? NOTHING : given;
        GroundSurface surface = in.or("surface", g.surface(), GroundSurface.BARE_EARTH, "not given");
        double turfMm =
                in.or("turf", g.turf(), Length.ofMm(50), Ledger.PRACTICE).mm();
        return new GroundSpec(
                surface,
                new DigSpec(
                        in.or("kind", g.kind(), DugSoil.EARTH, "common earth or loam"),
                        surface == GroundSurface.LAWN ? turfMm : 0,
                        in.or("barrow", g.barrow(), 65.0, Ledger.PRACTICE),
                        g.skip() == null ? OptionalDouble.empty() : OptionalDouble.of(g.skip())),
                gravel(g, in),
                membrane(g.membrane(), in),
                feet(g.feet(), in),
                g.loadLimit() == null ? OptionalDouble.empty() : OptionalDouble.of(g.loadLimit()),
                GardenResolver.each("keep clear of", g.keepClearOf(), NearbyResolver::thing, in));
    }

    private static GravelSpec gravel(GivenGround g, Ledger in) {
        Length given = g.gravel();
        if (given == null) {
            in.byDefault("gravel", "50 mm, 100 mm under walls higher than 450 mm", Ledger.PRACTICE);
        } else {
            in.given("gravel", given, "");
        }
        return new GravelSpec(
                in.or("bed", g.bed(), GravelBed.WHOLE, "drains and levels all of the box"),
                given == null ? LOW_GRAVEL_MM : given.mm(),
                given == null ? TALL_GRAVEL_MM : given.mm(),
                TALL_MM,
                in.or("gravel beyond walls", g.gravelBeyondWalls(), Length.ofMm(100), Ledger.PRACTICE)
                        .mm(),
                1 + in.or("loose gravel percent", g.looseGravelPercent(), 30.0, Ledger.PRACTICE) / 100);
    }

    /** The sheet in the dug bed alone; none where none is given. */
    public static Optional<MembraneSpec> membrane(GivenGround.@Nullable GivenMembrane given) {
        return membrane(given, Ledger.empty());
    }

    private static Optional<MembraneSpec> membrane(GivenGround.@Nullable GivenMembrane g, Ledger ground) {
        if (g == null) {
            return Optional.empty();
        }
        Ledger in = ground.in("membrane", g);
        return Optional.of(new MembraneSpec(
                in.or("width", g.width(), Length.ofMm(1000), Ledger.PRACTICE).mm(),
                in.or("length", g.length(), Length.ofMm(15_000), Ledger.PRACTICE)
                        .mm(),
                in.or("overlap", g.overlap(), Length.ofMm(150), "150 mm or 6 in: " + Ledger.PRACTICE)
                        .mm(),
                in.or("pins", g.pins(), Length.ofMm(400), "300 to 450 mm: " + Ledger.PRACTICE)
                        .mm()));
    }

    private static FeetSpec feet(GivenGround.@Nullable GivenFeet given, Ledger ground) {
        Ledger in = ground.in("feet", given);
        return new FeetSpec(
                in.or("lowest", given == null ? null : given.lowest(), Length.ofMm(10), Ledger.PRACTICE)
                        .mm(),
                in.or("spacing", given == null ? null : given.spacing(), Length.ofMm(600), Ledger.PRACTICE)
                        .mm());
    }
}
