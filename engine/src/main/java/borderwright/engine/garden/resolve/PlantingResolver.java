package borderwright.engine.garden.resolve;

import borderwright.engine.garden.PlantingSpec;
import borderwright.engine.garden.PlantingSpec.SunSpec;
import borderwright.engine.garden.given.GivenPlanting;
import borderwright.engine.garden.vocabulary.GardenerPosture;
import borderwright.engine.measure.Angle;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is to grow, and where the sun comes from. */
public final class PlantingResolver {
    /** Any year: the sun's path is the same to a minute. */
    private static final int SEASON_YEAR = 2026;

    private static final int SEASON_MONTHS = 6;
    private static final GivenPlanting NOTHING = new GivenPlanting(List.of(), null, null, null, null, null);

    private PlantingResolver() {}

    static PlantingSpec resolve(@Nullable GivenPlanting given, Ledger ledger) {
        Ledger in = ledger.in("planting", given);
        GivenPlanting g = given == null ? NOTHING : given;
        return new PlantingSpec(
                g.crops(), in.or("gardener", g.gardener(), GardenerPosture.STANDING, Ledger.PRACTICE), sun(g, in));
    }

    private static Optional<SunSpec> sun(GivenPlanting g, Ledger in) {
        Double latitude = g.latitude();
        Angle facing = g.bearing();
        if (latitude == null || facing == null) {
            return Optional.empty();
        }
        LocalDate spring = LocalDate.of(SEASON_YEAR, latitude < 0 ? 10 : 4, 1);
        LocalDate from = in.or("season from", g.seasonFrom(), spring, "spring: " + Ledger.PRACTICE);
        LocalDate to = g.seasonTo() != null && g.seasonTo().isAfter(from) ? g.seasonTo() : null;
        LocalDate last = from.plusMonths(SEASON_MONTHS).minusDays(1);
        return Optional.of(
                new SunSpec(latitude, facing, from, in.or("season to", to, last, "six months: " + Ledger.PRACTICE)));
    }
}
