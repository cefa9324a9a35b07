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

    /** A list that boards must give, nothing else said. */
    public static Builder builder(List<Demand> demands) {
        return new Builder(demands);
    }

    /** What is there besides the lengths, set one by one; what is left out is none, nought, or lengths alone. */
    public static final class Builder {
        private final List<Demand> demands;
        private List<BoardOffer> boards = List.of();
        private List<SupplierTerms> terms = List.of();
        private List<OwnedStock> owned = List.of();
        private List<GoodsNeed> needs = List.of();
        private List<GoodsOffer> goods = List.of();
        private long kerfTicks;
        private long trimTicks;
        private OffcutWorth offcuts = OffcutWorth.NONE;
        private BoardRule rule = BoardRule.LENGTHS_ALONE;

        private Builder(List<Demand> demands) {
            this.demands = demands;
        }

        public Builder boards(List<BoardOffer> set) {
            boards = set;
            return this;
        }

        public Builder terms(List<SupplierTerms> set) {
            terms = set;
            return this;
        }

        public Builder owned(List<OwnedStock> set) {
            owned = set;
            return this;
        }

        public Builder needs(List<GoodsNeed> set) {
            needs = set;
            return this;
        }

        public Builder goods(List<GoodsOffer> set) {
            goods = set;
            return this;
        }

        public Builder kerfTicks(long set) {
            kerfTicks = set;
            return this;
        }

        public Builder trimTicks(long set) {
            trimTicks = set;
            return this;
        }

        public Builder offcuts(OffcutWorth set) {
            offcuts = set;
            return this;
        }

        public Builder rule(BoardRule set) {
            rule = set;
            return this;
        }

        public ShoppingProblem build() {
            return new ShoppingProblem(
                    demands, boards, terms, owned, needs, goods, kerfTicks, trimTicks, offcuts, rule);
        }
    }
}
