package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A supplier's prices and terms, as quoted.
 *
 * @param name of the supplier
 * @param taxToAdd to its prices, in percent; nothing where they include tax
 * @param delivery how an order gets to the garden
 * @param minimumOrder smallest order, as priced; 0 for none
 * @param quoted date of the quote, if it is given
 * @param boards with their prices
 * @param goods everything else, with prices
 */
public record SupplierSpec(
        String name,
        Optional<BigDecimal> taxToAdd,
        DeliverySpec delivery,
        BigDecimal minimumOrder,
        Optional<LocalDate> quoted,
        List<BoardPrice> boards,
        List<GoodsPrice> goods) {
    public SupplierSpec {
        boards = List.copyOf(boards);
        goods = List.copyOf(goods);
    }

    public boolean isTaxIncluded() {
        return taxToAdd.isEmpty();
    }

    /** How something may get to the garden. */
    public enum Way {
        EITHER,
        DELIVERED_ONLY,
        FETCHED_ONLY
    }

    /**
     * How an order gets to the garden.
     *
     * @param way whether it is delivered
     * @param charge for delivery where there are no bands
     * @param freeOver value of goods from which delivery is free; nothing for never
     * @param bands the bands of charges, if there are any
     * @param longest board that can be brought home; nothing for any
     * @param collection fetching an order, where that may be chosen
     */
    public record DeliverySpec(
            Way way,
            BigDecimal charge,
            Optional<BigDecimal> freeOver,
            Optional<List<DeliveryBand>> bands,
            Optional<Length> longest,
            Optional<Collection> collection) {
        /** Whether it must be fetched. */
        public boolean fetchedOnly() {
            return way == Way.FETCHED_ONLY;
        }
    }

    /** A charge for delivery from a value of goods on; of the bands that reach the garden the nearest hold. */
    public record DeliveryBand(BigDecimal orderValueFrom, BigDecimal charge) {}

    /** Fetching an order: what the journey costs, and the longest board that travels where that differs. */
    public record Collection(BigDecimal cost, Optional<Length> longest) {}

    /** What a price is for. */
    public enum PriceUnit {
        BOARD,
        METRE,
        FOOT,
        BOARD_FOOT
    }

    /** A price, and what it is for. */
    public record Quote(BigDecimal amount, PriceUnit unit) {}

    /**
     * The price of a board.
     *
     * @param section by its name
     * @param lengths in which it is sold
     * @param quote its price; nothing where none that can be used is quoted
     * @param pack boards in a pack, bought whole; the price for a board is then that of a pack
     * @param available boards to be had; nothing for as many as are needed
     * @param priceFromCount boards from which the price holds, for all of them
     */
    public record BoardPrice(
            String section,
            List<Length> lengths,
            Optional<Quote> quote,
            int pack,
            OptionalInt available,
            int priceFromCount) {
        public BoardPrice {
            lengths = List.copyOf(lengths);
        }
    }

    /**
     * The price of anything that is not a board.
     *
     * @param item by the name on the shopping list
     * @param price of one box, roll, bag, tin or load
     * @param contains how much is in it, in the shopping list's unit
     * @param available how many are to be had; nothing for as many as are needed
     * @param priceFromCount how many from which the price holds, for all of them
     * @param way whether it comes by the supplier's lorry only
     */
    public record GoodsPrice(
            String item, BigDecimal price, BigDecimal contains, OptionalInt available, int priceFromCount, Way way) {
        /** Whether it comes by the supplier's lorry only. */
        public boolean deliveredOnly() {
            return way == Way.DELIVERED_ONLY;
        }
    }
}
