package borderwright.engine.prices;

import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.Substitute;
import borderwright.engine.garden.SupplierSpec;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/**
 * Price lists as quoted, turned into offers in whole minor units.
 *
 * <p>A price per metre, foot or board foot becomes the price of one board, rounded to the nearest minor unit, halves up;
 * a pack is then that price times the boards in it. A board longer than the supplier's longest is left out.
 *
 * @param boards boards that can be bought and brought home
 * @param goods everything else
 * @param terms terms of each supplier
 * @param problems prices that cannot be used, each with its place in the garden document
 */
public record PriceLists(
        List<BoardOffer> boards, List<GoodsOffer> goods, List<SupplierTerms> terms, List<Problem> problems) {
    private static final BigDecimal TICKS_PER_METRE = BigDecimal.valueOf(1000 * Length.TICKS_PER_MM);
    private static final BigDecimal TICKS_PER_FOOT = BigDecimal.valueOf(12 * Length.TICKS_PER_INCH);
    private static final BigDecimal TICKS_PER_INCH = BigDecimal.valueOf(Length.TICKS_PER_INCH);

    /** A board foot is 144 cubic inches. */
    private static final BigDecimal BOARD_FOOT = TICKS_PER_INCH.pow(3).multiply(BigDecimal.valueOf(144));

    public PriceLists {
        boards = List.copyOf(boards);
        goods = List.copyOf(goods);
        terms = List.copyOf(terms);
        problems = List.copyOf(problems);
    }

    /**
     * Resolves price lists.
     *
     * @param suppliers as quoted
     * @param sections for the measures that a price per board foot needs
     * @param currency of all prices
     */
    public static PriceLists resolve(List<SupplierSpec> suppliers, List<SectionSpec> sections, CurrencyUnit currency) {
        Map<String, SectionSpec> byName = new TreeMap<>();
        sections.forEach(s -> byName.put(s.name(), s));
        Resolver resolver = new Resolver(byName, currency.getDecimalPlaces());
        for (int k = 0; k < suppliers.size(); k++) {
            resolver.add(suppliers.get(k), "suppliers[" + k + "]");
        }
        return new PriceLists(resolver.boards, resolver.goods, resolver.terms, resolver.problems);
    }

    /**
     * The same with boards that stand in for others. Boards in limited number, and quantity prices, are left to their own
     * section: they must not be counted twice.
     *
     * @param substitutes which section stands in for which
     * @param currency of the worth of the difference
     */
    public PriceLists withSubstitutes(List<Substitute> substitutes, CurrencyUnit currency) {
        List<BoardOffer> all = new ArrayList<>(boards);
        for (Substitute substitute : substitutes) {
            BigDecimal perMetre = substitute.perMetre();
            for (BoardOffer offer : boards) {
                if (offer.section().equals(substitute.section())
                        && offer.available() == Integer.MAX_VALUE
                        && !offer.hasBreak()) {
                    BigDecimal each = perMetre.movePointRight(currency.getDecimalPlaces())
                            .multiply(BigDecimal.valueOf(offer.lengthTicks()))
                            .divide(TICKS_PER_METRE, 0, RoundingMode.HALF_UP);
                    all.add(offer.inPlaceOf(
                            substitute.inPlaceOf(), Math.multiplyExact(each.longValueExact(), offer.pack())));
                }
            }
        }
        return new PriceLists(all, goods, terms, problems);
    }

    /** What a price comes to with the tax that its supplier adds: prices of two suppliers compare only so. */
    public double withTax(String supplier, double price) {
        double percent = terms.stream()
                .filter(t -> t.name().equals(supplier))
                .mapToDouble(t -> t.taxPercent().doubleValue())
                .findFirst()
                .orElse(0);
        return price * (1 + percent / 100);
    }

    private static final class Resolver {
        private final Map<String, SectionSpec> sections;
        private final int decimals;
        private final List<BoardOffer> boards = new ArrayList<>();
        private final List<GoodsOffer> goods = new ArrayList<>();
        private final List<SupplierTerms> terms = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();

        Resolver(Map<String, SectionSpec> sections, int decimals) {
            this.sections = sections;
            this.decimals = decimals;
        }

        void add(SupplierSpec supplier, String where) {
            terms.add(new SupplierTerms(
                    supplier.name(),
                    supplier.taxToAdd().orElse(BigDecimal.ZERO),
                    minor(supplier.minimumOrder(), RoundingMode.CEILING),
                    ways(supplier)));
            for (int b = 0; b < supplier.boards().size(); b++) {
                addBoards(supplier, supplier.boards().get(b), where + ".boards[" + b + "]");
            }
            for (SupplierSpec.GoodsPrice price : supplier.goods()) {
                goods.add(new GoodsOffer(
                        supplier.name(),
                        price.item(),
                        minor(price.price(), RoundingMode.HALF_UP),
                        price.contains(),
                        price.available().orElse(Integer.MAX_VALUE),
                        price.priceFromCount(),
                        price.deliveredOnly()));
            }
        }

        private List<DeliveryOption> ways(SupplierSpec supplier) {
            SupplierSpec.DeliverySpec delivery = supplier.delivery();
            List<DeliveryOption> ways = new ArrayList<>();
            long byLorry = ticks(delivery.longest(), DeliveryOption.ANY_LENGTH);
            if (!delivery.fetchedOnly() && delivery.bands().isEmpty()) {
                SupplierTerms.delivery(
                                minor(delivery.charge(), RoundingMode.HALF_UP),
                                delivery.freeOver()
                                        .map(value -> minor(value, RoundingMode.CEILING))
                                        .orElse(SupplierTerms.NEVER))
                        .forEach(w -> ways.add(DeliveryOption.delivered(w.fromValue(), w.charge())
                                .upTo(byLorry)));
            } else if (!delivery.fetchedOnly()) {
                for (SupplierSpec.DeliveryBand band : delivery.bands().orElse(List.of())) {
                    ways.add(DeliveryOption.delivered(
                                    minor(band.orderValueFrom(), RoundingMode.CEILING),
                                    minor(band.charge(), RoundingMode.HALF_UP))
                            .upTo(byLorry));
                }
            }
            if (delivery.collection().isPresent()) {
                SupplierSpec.Collection collection = delivery.collection().get();
                ways.add(DeliveryOption.fetched(minor(collection.cost(), RoundingMode.HALF_UP))
                        .upTo(ticks(collection.longest(), byLorry)));
            } else if (delivery.fetchedOnly()) {
                ways.add(DeliveryOption.fetched(0).upTo(byLorry));
            }
            return ways;
        }

        private static long ticks(Optional<Length> longest, long otherwise) {
            return longest.map(Length::ticks).orElse(otherwise);
        }

        private void addBoards(SupplierSpec supplier, SupplierSpec.BoardPrice price, String where) {
            int pack = price.pack();
            for (Length length : price.lengths()) {
                Optional<BigDecimal> packPrice = packPrice(price, length, pack);
                if (packPrice.isEmpty()) {
                    problems.add(new Problem(where, PriceMessage.NO_BOARD_PRICE.of(price.section(), supplier.name())));
                    return;
                }
                if (ways(supplier).stream().anyMatch(w -> length.ticks() <= w.longestTicks())) {
                    boards.add(new BoardOffer(
                                    supplier.name(),
                                    price.section(),
                                    length.ticks(),
                                    packPrice.get().longValueExact(),
                                    pack,
                                    price.available().orElse(Integer.MAX_VALUE))
                            .soldFrom(price.priceFromCount()));
                }
            }
        }

        /** Price of a pack in minor units; nothing when none that can be used is quoted. */
        private Optional<BigDecimal> packPrice(SupplierSpec.BoardPrice price, Length length, int pack) {
            if (price.quote().isEmpty()) {
                return Optional.empty();
            }
            BigDecimal amount = price.quote().get().amount();
            BigDecimal ticks = BigDecimal.valueOf(length.ticks());
            return switch (price.quote().get().unit()) {
                case BOARD -> Optional.of(amount.movePointRight(decimals).setScale(0, RoundingMode.HALF_UP));
                case METRE -> Optional.of(rounded(amount.multiply(ticks), TICKS_PER_METRE, pack));
                case FOOT -> Optional.of(rounded(amount.multiply(ticks), TICKS_PER_FOOT, pack));
                case BOARD_FOOT ->
                    Optional.ofNullable(sections.get(price.section()))
                            .map(section -> rounded(amount.multiply(cubicTicks(ticks, section)), BOARD_FOOT, pack));
            };
        }

        private static BigDecimal cubicTicks(BigDecimal ticks, SectionSpec section) {
            return ticks.multiply(BigDecimal.valueOf(section.thickness().ticks()))
                    .multiply(BigDecimal.valueOf(section.width().ticks()));
        }

        /** The rounding rule: one board to the nearest minor unit, halves up, then times the boards in a pack. */
        private BigDecimal rounded(BigDecimal top, BigDecimal bottom, int pack) {
            return top.movePointRight(decimals)
                    .divide(bottom, 0, RoundingMode.HALF_UP)
                    .multiply(BigDecimal.valueOf(pack));
        }

        private long minor(BigDecimal amount, RoundingMode rounding) {
            return amount.movePointRight(decimals).setScale(0, rounding).longValueExact();
        }
    }
}
