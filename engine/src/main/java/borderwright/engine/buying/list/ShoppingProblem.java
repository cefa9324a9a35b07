package borderwright.engine.buying.list;

import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.OffcutWorth;
import java.util.List;
import java.util.stream.LongStream;

/**
 * All that a basket must serve, and all that it may be made of. Money in whole minor units.
 *
 * @param demands lengths that boards must give
 * @param boards boards to be bought
 * @param terms terms of suppliers; a supplier without terms adds nothing
 * @param owned boards already there
 * @param needs everything else on the shopping list
 * @param goods what everything else can be bought as
 * @param kerfTicks width of a cut, ticks, at least 0
 * @param trimTicks waste at each end of a bought board, ticks, kerf included, at least 0
 * @param offcuts what an offcut that is kept counts against prices
 * @param rule what may lie on one board together, beyond what lengths say
 */
public record ShoppingProblem(
        List<Demand> demands,
        List<BoardOffer> boards,
        List<SupplierTerms> terms,
        List<OwnedStock> owned,
        List<GoodsNeed> needs,
        List<GoodsOffer> goods,
        long kerfTicks,
        long trimTicks,
        OffcutWorth offcuts,
        BoardRule rule) {
    public ShoppingProblem {
        demands = List.copyOf(demands);
        boards = List.copyOf(boards);
        terms = List.copyOf(terms);
        owned = List.copyOf(owned);
        needs = List.copyOf(needs);
        goods = List.copyOf(goods);
        if (kerfTicks < 0 || trimTicks < 0) {
            throw new IllegalArgumentException("kerf and trim must not be negative: " + kerfTicks + ", " + trimTicks);
        }
    }

    /** Offcuts count nothing, and lengths say all of what fits. */
    public ShoppingProblem(
            List<Demand> demands,
            List<BoardOffer> boards,
            List<SupplierTerms> terms,
            List<OwnedStock> owned,
            List<GoodsNeed> needs,
            List<GoodsOffer> goods,
            long kerfTicks,
            long trimTicks) {
        this(
                demands,
                boards,
                terms,
                owned,
                needs,
                goods,
                kerfTicks,
                trimTicks,
                OffcutWorth.NONE,
                BoardRule.LENGTHS_ALONE);
    }

    /** The same where offcuts are worth something to who keeps them. */
    public ShoppingProblem keeping(OffcutWorth worth) {
        return new ShoppingProblem(demands, boards, terms, owned, needs, goods, kerfTicks, trimTicks, worth, rule);
    }

    /** The same where not all that fits by its length can be cut from one board. */
    public ShoppingProblem under(BoardRule newRule) {
        return new ShoppingProblem(demands, boards, terms, owned, needs, goods, kerfTicks, trimTicks, offcuts, newRule);
    }

    /** The same list from other boards and goods. */
    public ShoppingProblem withOffers(List<BoardOffer> otherBoards, List<GoodsOffer> otherGoods) {
        return new ShoppingProblem(
                demands, otherBoards, terms, owned, needs, otherGoods, kerfTicks, trimTicks, offcuts, rule);
    }

    /** Another list from the same boards and goods. */
    public ShoppingProblem withDemands(List<Demand> others) {
        return new ShoppingProblem(others, boards, terms, owned, needs, goods, kerfTicks, trimTicks, offcuts, rule);
    }

    /** What boards of a section that are there or to be had can give, between their trims, ticks. */
    public LongStream usableLengths(String section) {
        return LongStream.concat(
                boards.stream()
                        .filter(b -> b.section().equals(section) && b.available() >= b.pack())
                        .mapToLong(b -> b.lengthTicks() - 2 * trimTicks),
                owned.stream()
                        .filter(o -> o.section().equals(section))
                        .mapToLong(o -> o.lengthTicks() - 2 * o.trimTicks()));
    }
}
