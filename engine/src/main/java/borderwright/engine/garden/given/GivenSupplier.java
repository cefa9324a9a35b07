package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A supplier's prices and terms, as quoted. */
@Described("a supplier's prices and terms, as quoted")
public record GivenSupplier(
        @Described(value = "name", example = "Supplier one") String name,

        @Described(value = "whether its prices include tax", otherwise = "yes") @Nullable
        Boolean taxIncluded,

        @Described(
                value = "rate of tax to add when they do not, in percent",
                example = "20",
                otherwise = "0",
                atLeast = 0,
                atMost = 100)
        @Nullable
        BigDecimal taxPercent,

        @Described(value = "delivery charge, tax in or out as the prices are", otherwise = "0", atLeast = 0) @Nullable
        BigDecimal delivery,

        @Described(value = "value of goods, as priced, from which delivery is free", otherwise = "never", atLeast = 0)
        @Nullable
        BigDecimal freeOver,

        @Described(
                value =
                        "charges for delivery in bands, by value of goods or by distance, in place of `delivery` and `free over`",
                otherwise = "one charge")
        List<GivenDeliveryBand> deliveryBands,

        @Described(
                value = "how far away the supplier is, in the unit of the bands' `within`",
                example = "12",
                otherwise = "bands hold at any distance",
                atLeast = 0)
        @Nullable
        BigDecimal distance,

        @Described(value = "smallest order, as priced", otherwise = "none", atLeast = 0) @Nullable
        BigDecimal minimumOrder,

        @Described(
                value = "longest board that can be brought home, by its lorry or in your own car",
                otherwise = "no limit",
                atLeast = 100)
        @Nullable
        Length longestBoard,

        @Described(value = "whether it can only be fetched: no delivery, no charge for it", otherwise = "no") @Nullable
        Boolean collectionOnly,

        @Described(
                value = "fetching it yourself, where that may be chosen",
                otherwise = "delivered, unless `collection only` says yes")
        @Nullable
        GivenCollection collection,

        @Described(value = "date of the quote", example = "2026-03-02") @Nullable
        LocalDate quoted,

        @Described("boards") List<GivenBoardPrice> boards,

        @Described("everything else, by the piece, box, roll, bag or load")
        List<GivenGoodsPrice> goods) {
    public GivenSupplier {
        deliveryBands = List.copyOf(deliveryBands);
        boards = List.copyOf(boards);
        goods = List.copyOf(goods);
    }

    /** A charge for delivery, and where it holds. */
    @Described("a charge for delivery, and where it holds")
    public record GivenDeliveryBand(
            @Described(
                    value =
                            "greatest distance, in kilometres or miles as `distance` is; of the bands that reach the garden the"
                                    + " nearest hold",
                    example = "10",
                    otherwise = "any distance",
                    atLeast = 0)
            @Nullable
            BigDecimal within,

            @Described(value = "least value of goods, as priced", example = "100", otherwise = "0", atLeast = 0)
            @Nullable
            BigDecimal orderValueFrom,

            @Described(value = "charge, tax in or out as the prices are", example = "35", atLeast = 0)
            BigDecimal charge) {}

    /** Fetching an order yourself. */
    @Described("fetching an order yourself")
    public record GivenCollection(
            @Described(
                    value = "what the journey costs you: fuel, a hired van",
                    example = "4.50",
                    otherwise = "0",
                    atLeast = 0)
            @Nullable
            BigDecimal cost,

            @Described(
                    value = "longest board that travels",
                    example = "2.4 m",
                    otherwise = "as the supplier's `longest board`",
                    atLeast = 100)
            @Nullable
            Length longestBoard) {}

    /** The price of one board, or of a metre, foot or board foot of it, in the lengths in which it is sold. */
    @Described("the price of one board, or of a metre, foot or board foot of it, in the lengths in which it is sold")
    public record GivenBoardPrice(
            @Described(value = "section, by its name", example = "larch 25 x 150")
            String section,

            @Described(value = "length, when the price is for one whole board", example = "3.6 m", atLeast = 50)
            @Nullable
            Length length,

            @Described(value = "lengths in which it is sold, when the price is by length", example = "[3.0 m, 3.6 m]")
            List<Length> lengths,

            @Described(
                    value = "price of one whole board, or of a pack when a pack is given",
                    example = "9.60",
                    atLeast = 0)
            @Nullable
            BigDecimal price,

            @Described(value = "price per metre", example = "2.05", atLeast = 0) @Nullable
            BigDecimal perMetre,

            @Described(value = "price per foot", example = "1.20", atLeast = 0) @Nullable
            BigDecimal perFoot,

            @Described(value = "price per board foot (144 cubic inches)", example = "1.05", atLeast = 0) @Nullable
            BigDecimal perBoardFoot,

            @Described(value = "boards in a pack, bought whole", otherwise = "1", atLeast = 1, atMost = 10000) @Nullable
            Integer pack,

            @Described(value = "boards to be had", otherwise = "as many as needed", atLeast = 0, atMost = 1000000)
            @Nullable
            Integer available,

            @Described(
                    value =
                            "boards from which the price holds, for all of them; give the usual price a line of its own",
                    example = "10",
                    otherwise = "any number",
                    atLeast = 1,
                    atMost = 1000000)
            @Nullable
            Integer priceFromCount) {
        public GivenBoardPrice {
            lengths = List.copyOf(lengths);
        }
    }

    /** The price of anything that is not a board. */
    @Described("the price of anything that is not a board")
    public record GivenGoodsPrice(
            @Described(value = "what it is, by the name on the shopping list", example = "screw 5 x 70")
            String item,

            @Described(value = "price of one box, roll, bag, tin or load", example = "12.50", atLeast = 0)
            BigDecimal price,

            @Described(
                    value =
                            "how much is in it, in the shopping list's unit: pieces, litres (US quarts with imperial units), or m3 of soil, gravel and other loose goods (cubic yards with imperial units)",
                    example = "200",
                    otherwise = "1",
                    atLeast = 0.001)
            @Nullable
            BigDecimal contains,

            @Described(value = "how many are to be had", otherwise = "as many as needed", atLeast = 0) @Nullable
            Integer available,

            @Described(
                    value =
                            "how many from which the price holds, for all of them; give the usual price a line of its own",
                    example = "5",
                    otherwise = "any number",
                    atLeast = 1,
                    atMost = 1000000)
            @Nullable
            Integer priceFromCount,

            @Described(
                    value = "whether it comes by the supplier's lorry only, as a load of soil does",
                    otherwise = "no")
            @Nullable
            Boolean deliveredOnly) {}
}
