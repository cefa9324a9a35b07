package borderwright.engine.garden.resolve;

import borderwright.engine.garden.WorkSpec;
import borderwright.engine.garden.WorkSpec.BenchPace;
import borderwright.engine.garden.WorkSpec.Pace;
import borderwright.engine.garden.WorkSpec.SitePace;
import borderwright.engine.garden.given.GivenDays;
import borderwright.engine.garden.given.GivenDays.GivenPace;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** When the work can be done, and how fast. */
public final class WorkResolver {
    /** Published rates differ by a factor of two. */
    private static final String AMATEURS = "careful amateurs: " + Ledger.PRACTICE;

    private static final GivenDays NOTHING = GivenDays.builder().build();
    private static final GivenPace NO_PACE = GivenPace.builder().build();

    private WorkResolver() {}

    static WorkSpec resolve(@Nullable GivenDays given, Ledger ledger) {
        Ledger in = ledger.in("days", given);
        GivenDays g = given == null ? NOTHING : given;
        List<DayOfWeek> weekend = List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
        return new WorkSpec(
                Optional.ofNullable(g.start()),
                in.or("work days", g.workDays().isEmpty() ? null : g.workDays(), weekend, Ledger.PRACTICE),
                g.away(),
                in.or("hours", g.hours(), 6.0, Ledger.PRACTICE),
                1 + in.or("helpers", g.helpers(), 0, "you alone"),
                in.or("delivery", g.delivery(), 5, Ledger.PRACTICE),
                pace(g.pace(), in));
    }

    private static Pace pace(@Nullable GivenPace given, Ledger days) {
        Ledger in = days.in("pace", given);
        GivenPace g = given == null ? NO_PACE : given;
        return new Pace(
                new BenchPace(
                        in.or("cut", g.cut(), 2.0, AMATEURS),
                        in.or("set up", g.setUp(), 6.0, AMATEURS),
                        in.or("screw", g.screw(), 0.5, AMATEURS),
                        in.or("place", g.place(), 3.0, AMATEURS)),
                new SitePace(
                        in.or("turf", g.turf(), 3.0, AMATEURS),
                        in.or("dig", g.dig(), 2.5, AMATEURS),
                        in.or("gravel", g.gravel(), 1.4, AMATEURS),
                        in.or("sheet", g.sheet(), 12.0, AMATEURS),
                        in.or("fill", g.fill(), 1.5, AMATEURS),
                        in.or("brush", g.brush(), 8.0, AMATEURS)));
    }
}
