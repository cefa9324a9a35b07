package borderwright.engine.garden.resolve;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.measure.Length;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Runs of planters. */
public final class RunResolver {
    /** A wheelchair and a barrow pass. */
    private static final Length PATH = Length.ofMm(1200);

    private RunResolver() {}

    /** A run alone. */
    public static RunSpec run(GivenRun given) {
        return run(given, Ledger.empty());
    }

    static RunSpec run(GivenRun g, Ledger in) {
        return new RunSpec(
                g.name(),
                g.along(),
                new RunSpec.BaySpec(
                        number(g.planters()),
                        Optional.ofNullable(g.length()),
                        in.or("join", g.join(), PlanterJoin.JOINED, "saves walls")),
                new RunSpec.SizeSpec(
                        g.frontToBack(),
                        g.height(),
                        in.or("false floor", g.falseFloor(), Length.ZERO, "none"),
                        in.or("capping", g.capping(), false, "none") ? RunSpec.Rim.CAPPED : RunSpec.Rim.BARE),
                new RunSpec.GapSpec(
                        in.or("between", g.between(), Length.ofMm(20), Ledger.PRACTICE),
                        Optional.ofNullable(g.startGap()),
                        Optional.ofNullable(g.endGap()),
                        Optional.ofNullable(g.backGap())),
                new RunSpec.TurnSpec(
                        in.or("turn", g.turn(), CornerTurn.MITRED, "no wedge is lost"),
                        g.otherTurns().stream()
                                .map(other -> new RunSpec.CornerSpec(other.corner(), other.turn()))
                                .toList(),
                        in.or("off the curve", g.offTheCurve(), Length.ofMm(40), Ledger.PRACTICE)),
                new RunSpec.StandSpec(
                        in.or("slope", g.slope(), SlopeForm.LEVEL, "one level for the whole run"),
                        in.or("reach", g.reach(), Length.ofMm(600), Ledger.PRACTICE),
                        Optional.ofNullable(g.rows()).map(rows -> rows(rows, in.in("rows", rows)))));
    }

    private static RunSpec.Rows rows(GivenRun.GivenRows g, Ledger in) {
        return new RunSpec.Rows(
                g.startsAt(),
                in.or("count", g.count(), 1, "one row"),
                in.or("paths", g.paths(), PATH, "a wheelchair and a barrow pass: " + Ledger.PRACTICE));
    }

    private static OptionalInt number(@Nullable Integer given) {
        return given == null ? OptionalInt.empty() : OptionalInt.of(given);
    }
}
