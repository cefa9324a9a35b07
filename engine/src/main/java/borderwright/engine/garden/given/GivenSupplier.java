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

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(String name) {
        return new Builder(name);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final String name;
        private @Nullable Boolean taxIncluded;
        private @Nullable BigDecimal taxPercent;
        private @Nullable BigDecimal delivery;
        private @Nullable BigDecimal freeOver;
        private List<GivenDeliveryBand> deliveryBands = List.of();
        private @Nullable BigDecimal distance;
        private @Nullable BigDecimal minimumOrder;
        private @Nullable Length longestBoard;
        private @Nullable Boolean collectionOnly;
        private @Nullable GivenCollection collection;
        private @Nullable LocalDate quoted;
        private List<GivenBoardPrice> boards = List.of();
        private List<GivenGoodsPrice> goods = List.of();

        private Builder(String name) {
            this.name = name;
        }

        public Builder taxIncluded(@Nullable Boolean given) {
            taxIncluded = given;
            return this;
        }

        public Builder taxPercent(@Nullable BigDecimal given) {
            taxPercent = given;
            return this;
        }

        public Builder delivery(@Nullable BigDecimal given) {
            delivery = given;
            return this;
        }

        public Builder freeOver(@Nullable BigDecimal given) {
            freeOver = given;
            return this;
        }

        public Builder deliveryBands(List<GivenDeliveryBand> given) {
            deliveryBands = given;
            return this;
        }

        public Builder distance(@Nullable BigDecimal given) {
            distance = given;
            return this;
        }

        public Builder minimumOrder(@Nullable BigDecimal given) {
            minimumOrder = given;
            return this;
        }

        public Builder longestBoard(@Nullable Length given) {
            longestBoard = given;
            return this;
        }

        public Builder collectionOnly(@Nullable Boolean given) {
            collectionOnly = given;
            return this;
        }

        public Builder collection(@Nullable GivenCollection given) {
            collection = given;
            return this;
        }

        public Builder quoted(@Nullable LocalDate given) {
            quoted = given;
            return this;
        }

        public Builder boards(List<GivenBoardPrice> given) {
            boards = given;
            return this;
        }

        public Builder goods(List<GivenGoodsPrice> given) {
            goods = given;
            return this;
        }

        public GivenSupplier build() {
            return new GivenSupplier(
                    name,
                    taxIncluded,
                    taxPercent,
                    delivery,
                    freeOver,
                    deliveryBands,
                    distance,
                    minimumOrder,
                    longestBoard,
                    collectionOnly,
                    collection,
                    quoted,
                    boards,
                    goods);
        }
    }
}
