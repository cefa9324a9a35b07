package borderwright.engine.garden.resolve;

import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.OwnedBoard;
import borderwright.engine.garden.Receipt;
import borderwright.engine.garden.Substitute;
import borderwright.engine.garden.given.GivenFirstPlanter;
import borderwright.engine.garden.given.GivenOwnedBoard;
import borderwright.engine.garden.given.GivenReceipt;
import borderwright.engine.garden.given.GivenSubstitute;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Boards in the shed, what has arrived, what may stand in for what, and what the first planter showed. */
public final class SupplyResolver {
    private SupplyResolver() {}

    static OwnedBoard owned(GivenOwnedBoard g, Ledger in) {
        return new OwnedBoard(
                g.section(), g.length(), in.or("count", g.count(), 1, "one"), Optional.ofNullable(g.label()));
    }

    static Substitute substitute(GivenSubstitute g, Ledger in) {
        return new Substitute(
                g.section(), g.inPlaceOf(), in.or("per metre", g.perMetre(), BigDecimal.ZERO, "as good as the other"));
    }

    /** What has arrived, alone. */
    public static Receipt receipt(GivenReceipt given) {
        return receipt(given, Ledger.empty());
    }

    static Receipt receipt(GivenReceipt g, Ledger ledger) {
        Ledger in = ledger.in("received", g);
        return new Receipt(
                GardenResolver.each("boards", g.boards(), SupplyResolver::board, in),
                g.goods().stream()
                        .map(goods -> new Receipt.ReceivedGoods(goods.item(), goods.quantity()))
                        .toList(),
                in.or("all goods", g.allGoods(), false, "not yet")
                        ? Receipt.GoodsScope.EVERYTHING
                        : Receipt.GoodsScope.LISTED);
    }

    /** Boards that have arrived: one where no count is given, all of them usable where none is called unusable. */
    private static Receipt.ReceivedBoard board(GivenReceipt.GivenReceivedBoard g, Ledger in) {
        int count = in.or("count", g.count(), 1, "one");
        int unusable = in.or("unusable", g.unusable(), 0, "all of them are sound");
        return new Receipt.ReceivedBoard(
                g.section(),
                g.length(),
                Math.max(0, count - unusable),
                Optional.ofNullable(g.sentBy()),
                g.cut(),
                Optional.ofNullable(g.left()));
    }

    /** What the first planter showed. */
    public static FirstPlanter firstPlanter(GivenFirstPlanter g) {
        Integer boards = g.boards();
        return new FirstPlanter(
                hours(g.cutting()),
                hours(g.building()),
                Optional.ofNullable(g.kerf()),
                Optional.ofNullable(g.saw()),
                boards == null
                        ? Optional.empty()
                        : Optional.of(new FirstPlanter.LookedOver(boards, g.unusable() == null ? 0 : g.unusable())),
                Optional.ofNullable(g.bulge()));
    }

    private static OptionalDouble hours(@Nullable Double given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given);
    }
}
