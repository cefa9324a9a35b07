package borderwright.engine.prices;

import borderwright.engine.garden.SectionNote;
import borderwright.engine.garden.Substitute;
import borderwright.engine.garden.SupplierNote;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

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
    public static PriceLists resolve(List<SupplierNote> suppliers, List<SectionNote> sections, CurrencyUnit currency) {
        Map<String, SectionNote> byName = new TreeMap<>();
        sections.forEach(s -> byName.put(s.name(), s));
        Resolver resolver = new Resolver(byName, currency.getDecimalPlaces());
        for (int k = 0; k < suppliers.size(); k++) {
            resolver.add(suppliers.get(k), "suppliers[" + k + "]");
        }
        return new PriceLists(resolver.boards, resolver.goods, resolver.terms, resolver.problems);
    }

    /**
     * The same with boards that stand in for others. Boards of which there are only so many, and prices that hold from a number
     * on, are left to their own section: they cannot be counted twice.
     *
     * @param substitutes which section stands in for which
     * @param currency of the worth of the difference
     */
    public PriceLists withSubstitutes(List<Substitute> substitutes, CurrencyUnit currency) {
        List<BoardOffer> all = new ArrayList<>(boards);
        for (Substitute substitute : substitutes) {
            BigDecimal perMetre = substitute.perMetre() == null ? BigDecimal.ZERO : substitute.perMetre();
            for (BoardOffer offer : boards) {
                if (offer.section().equals(substitute.section())
                        && offer.available() == Integer.MAX_VALUE
                        && !offer.hasBreak()) {
                    BigDecimal each = perMetre.movePointRight(currency.getDecimalPlaces())
                            .multiply(BigDecimal.valueOf(offer.lengthTicks()))
                            .divide(TICKS_PER_METRE, 0, RoundingMode.HALF_UP);
                    all.add(new BoardOffer(
                            offer.supplier(),
                            substitute.inPlaceOf(),
                            offer.lengthTicks(),
                            offer.packPrice(),
                            offer.pack(),
                            offer.available(),
                            1,
                            new BoardOffer.Instead(
                                    offer.section(), Math.multiplyExact(each.longValueExact(), offer.pack()))));
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
        private final Map<String, SectionNote> sections;
        private final int decimals;
        private final List<BoardOffer> boards = new ArrayList<>();
        private final List<GoodsOffer> goods = new ArrayList<>();
        private final List<SupplierTerms> terms = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();

        Resolver(Map<String, SectionNote> sections, int decimals) {
            this.sections = sections;
            this.decimals = decimals;
        }

        void add(SupplierNote note, String where) {
            boolean taxed = !note.isTaxIncluded() && note.taxPercent() != null;
            terms.add(new SupplierTerms(
                    note.name(),
                    taxed && note.taxPercent() != null ? note.taxPercent() : BigDecimal.ZERO,
                    minor(note.minimumOrder(), RoundingMode.CEILING, 0),
                    ways(note)));
            for (int b = 0; b < note.boards().size(); b++) {
                addBoards(note, note.boards().get(b), where + ".boards[" + b + "]");
            }
            for (SupplierNote.GoodsPrice price : note.goods()) {
                goods.add(new GoodsOffer(
                        note.name(),
                        price.item(),
                        minor(price.price(), RoundingMode.HALF_UP, 0),
                        price.contains() != null ? price.contains() : BigDecimal.ONE,
                        price.available() != null ? price.available() : Integer.MAX_VALUE,
                        price.from() != null ? price.from() : 1,
                        price.deliveredOnly() != null && price.deliveredOnly()));
            }
        }

        private List<DeliveryOption> ways(SupplierNote note) {
            List<DeliveryOption> ways = new ArrayList<>();
            long byLorry = ticks(note.longest());
            if (!note.isFetchedOnly() && note.deliveryBands().isEmpty()) {
                SupplierTerms.delivery(
                                minor(note.delivery(), RoundingMode.HALF_UP, 0),
                                minor(note.freeOver(), RoundingMode.CEILING, SupplierTerms.NEVER))
                        .forEach(w -> ways.add(new DeliveryOption(false, w.fromValue(), w.charge(), byLorry)));
            } else if (!note.isFetchedOnly()) {
                for (SupplierNote.DeliveryBand band : note.bandsHere()) {
                    ways.add(new DeliveryOption(
                            false,
                            minor(band.fromValue(), RoundingMode.CEILING, 0),
                            minor(band.charge(), RoundingMode.HALF_UP, 0),
                            byLorry));
                }
            }
            SupplierNote.Collection collection = note.collection();
            if (collection != null) {
                long longest = collection.longest() == null ? byLorry : ticks(collection.longest());
                ways.add(new DeliveryOption(true, 0, minor(collection.cost(), RoundingMode.HALF_UP, 0), longest));
            } else if (note.isFetchedOnly()) {
                ways.add(new DeliveryOption(true, 0, 0, byLorry));
            }
            return ways;
        }

        private static long ticks(@Nullable Length longest) {
            return longest == null ? DeliveryOption.ANY_LENGTH : longest.ticks();
        }

        private void addBoards(SupplierNote note, SupplierNote.BoardPrice price, String where) {
            List<Length> lengths = new ArrayList<>(price.lengths());
            if (price.length() != null && !lengths.contains(price.length())) {
                lengths.add(0, price.length());
            }
            int pack = price.pack() != null ? price.pack() : 1;
            for (Length length : lengths) {
                BigDecimal packPrice = packPrice(price, length, pack);
                if (packPrice == null) {
                    problems.add(new Problem(
                            "no-board-price",
                            where,
                            "The " + price.section() + " of " + note.name() + " has no price that can be used.",
                            "Give a price for a whole board, or one per metre, foot or board foot."));
                    return;
                }
                if (ways(note).stream().anyMatch(w -> length.ticks() <= w.longestTicks())) {
                    boards.add(new BoardOffer(
                            note.name(),
                            price.section(),
                            length.ticks(),
                            packPrice.longValueExact(),
                            pack,
                            price.available() != null ? price.available() : Integer.MAX_VALUE,
                            price.from() != null ? price.from() : 1,
                            BoardOffer.Instead.NOTHING));
                }
            }
        }

        /** Price of a pack in minor units; null when none is quoted. */
        private @Nullable BigDecimal packPrice(SupplierNote.BoardPrice price, Length length, int pack) {
            BigDecimal ticks = BigDecimal.valueOf(length.ticks());
            SectionNote section = sections.get(price.section());
            if (price.price() != null) {
                return price.price().movePointRight(decimals).setScale(0, RoundingMode.HALF_UP);
            } else if (price.perMetre() != null) {
                return rounded(price.perMetre().multiply(ticks), TICKS_PER_METRE, pack);
            } else if (price.perFoot() != null) {
                return rounded(price.perFoot().multiply(ticks), TICKS_PER_FOOT, pack);
            } else if (price.perBoardFoot() != null && section != null) {
                BigDecimal cubicTicks = ticks.multiply(
                                BigDecimal.valueOf(section.thickness().ticks()))
                        .multiply(BigDecimal.valueOf(section.width().ticks()));
                BigDecimal boardFoot = TICKS_PER_INCH.pow(3).multiply(BigDecimal.valueOf(144));
                return rounded(price.perBoardFoot().multiply(cubicTicks), boardFoot, pack);
            }
            return null;
        }

        /** The rounding rule: one board to the nearest minor unit, halves up, then times the boards in a pack. */
        private BigDecimal rounded(BigDecimal top, BigDecimal bottom, int pack) {
            return top.movePointRight(decimals)
                    .divide(bottom, 0, RoundingMode.HALF_UP)
                    .multiply(BigDecimal.valueOf(pack));
        }

        private long minor(@Nullable BigDecimal amount, RoundingMode rounding, long otherwise) {
            return amount == null
                    ? otherwise
                    : amount.movePointRight(decimals).setScale(0, rounding).longValueExact();
        }
    }
}
