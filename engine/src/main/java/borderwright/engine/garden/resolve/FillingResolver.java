package borderwright.engine.garden.resolve;

import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.FillingSpec.CoarseLayer;
import borderwright.engine.garden.FillingSpec.FinishSpec;
import borderwright.engine.garden.FillingSpec.LinerSpec;
import borderwright.engine.garden.FillingSpec.MixPart;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.measure.Length;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What goes into the planters. */
public final class FillingResolver {
    private static final GivenFilling NOTHING = GivenFilling.builder().build();

    private FillingResolver() {}

    static FillingSpec resolve(@Nullable GivenFilling given, Ledger ledger) {
        Ledger in = ledger.in("filling", given);
        GivenFilling g = given == null ? NOTHING : given;
        List<MixPart> mix = g.mix().stream()
                .map(part -> new MixPart(part.item(), part.parts()))
                .toList();
        return new FillingSpec(
                in.or("mix", mix.isEmpty() ? null : mix, List.of(new MixPart("soil", 1)), "soil alone"),
                Optional.ofNullable(g.coarseLayer()).map(layer -> coarseLayer(layer, in)),
                in.or("drainage", g.drainage(), Length.ZERO, "none").mm(),
                in.or("reuse percent", g.reusePercent(), 0.0, "none") / 100,
                Optional.ofNullable(g.narrowestWayIn()),
                Optional.ofNullable(g.liner()).map(liner -> liner(liner, in)),
                Optional.ofNullable(g.finish()).map(finish -> finish(finish, in)));
    }

    private static CoarseLayer coarseLayer(GivenFilling.GivenCoarseLayer g, Ledger filling) {
        Ledger in = filling.in("coarse layer", g);
        return new CoarseLayer(
                g.item(),
                g.depth(),
                in.or("at hand", g.atHand(), false, "bought")
                        ? FillingSpec.LayerSource.AT_HAND
                        : FillingSpec.LayerSource.BOUGHT);
    }

    private static LinerSpec liner(GivenFilling.GivenLiner g, Ledger filling) {
        Ledger in = filling.in("liner", g);
        return new LinerSpec(
                in.or("width", g.width(), Length.ofMm(1000), Ledger.PRACTICE).mm(),
                in.or("length", g.length(), Length.ofMm(20_000), Ledger.PRACTICE)
                        .mm(),
                in.or("staples", g.staples(), Length.ofMm(125), "100 to 150 mm: " + Ledger.PRACTICE)
                        .mm());
    }

    private static FinishSpec finish(GivenFilling.GivenFinish g, Ledger filling) {
        Ledger in = filling.in("finish", g);
        Double coverage = g.coverage();
        if (coverage == null) {
            in.byDefault("coverage", "5 rough, 9 planed", "4 to 6 rough, 8 to 10 smooth: " + Ledger.PRACTICE);
        } else {
            in.given("coverage", coverage, "");
        }
        return new FinishSpec(
                in.or("coats", g.coats(), 2, Ledger.PRACTICE),
                coverage == null ? 5 : coverage,
                coverage == null ? 9 : coverage);
    }
}
