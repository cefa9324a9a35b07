package borderwright.pack.sheets;

import borderwright.engine.buying.why.Basket;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.engine.shopping.BagChoice;
import borderwright.engine.shopping.Bulk;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.pack.figures.PrintedFigures;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to buy, from whom.
 *
 * @param plan the plan
 */
public record ShoppingSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Shopping list";
    }

    @Override
    public Part part() {
        return Part.SHOP;
    }

    /** A supplier's terms in a sentence. */
    public String terms(Basket.Order order, PrintedFigures f) {
        return plan.garden().suppliers().stream()
                .filter(s -> s.name().equals(order.supplier()))
                .map(s -> f.text((s.isTaxIncluded() ? SheetMessage.TERMS_TAX_INCLUDED : SheetMessage.TERMS_TAX_ADDED)
                                .of())
                        + s.quoted()
                                .map(day -> " " + f.text(SheetMessage.TERMS_QUOTED.of(day.toString())))
                                .orElse(""))
                .findFirst()
                .orElse("");
    }

    /** What wood to ask for, after a comma; empty of what is no board. */
    public String wood(Basket.Line line, PrintedFigures f) {
        Optional<SectionSpec> section =
                line.length().ticks() > 0 ? plan.garden().section(line.item()) : Optional.empty();
        return section.map(of -> ", "
                        + Stream.of(
                                        of.wood().species(),
                                        of.grade(),
                                        Optional.of(f.text(SheetMessage.WOOD_TREATMENT.of(
                                                of.isTreated() ? "treated" : "untreated"))))
                                .flatMap(Optional::stream)
                                .collect(Collectors.joining(", ")))
                .orElse("");
    }

    /** How many are bought, and of goods what is in one. */
    public String howMany(Basket.Line line, PrintedFigures f) {
        if (line.length().ticks() > 0) {
            return f.text(
                    line.pack() > 1
                            ? SheetMessage.BUY_PACKS.of(line.packs(), Integer.toString(line.pack()))
                            : SheetMessage.BUY_BOARDS.of(line.count()));
        }
        String unit = plan.shopping().stream()
                .filter(item -> item.item().equals(line.item()))
                .map(ShoppingItem::unit)
                .findFirst()
                .orElse("");
        boolean single = line.contains().compareTo(BigDecimal.ONE) == 0;
        String contains = line.contains().stripTrailingZeros().toPlainString();
        return switch (unit) {
            case "pieces" ->
                f.text(
                        single
                                ? SheetMessage.GOODS_PIECES.of(line.count())
                                : SheetMessage.BUY_PACKS.of(line.count(), contains));
            case "rolls" ->
                f.text(
                        single
                                ? SheetMessage.GOODS_ROLLS.of(line.count())
                                : SheetMessage.BUY_PACKS.of(line.count(), contains));
            case "litres", "quarts" -> f.text(SheetMessage.BUY_TINS.of(line.count(), contains, unit));
            default ->
                f.text(
                        Bulk.isUnit(unit)
                                ? bulk(line, unit, contains, f)
                                : SheetMessage.BUY_ROLLS.of(line.count(), contains + " " + unit));
        };
    }

    /** Bags, and loads of a quarter of a cubic metre or more, which nobody carries. */
    private Message bulk(Basket.Line line, String unit, String contains, PrintedFigures f) {
        double m3 = line.contains().doubleValue() * Bulk.unitM3(f.units());
        return m3 < BagChoice.LOOSE_M3
                ? SheetMessage.BUY_BAGS.of(line.count(), f.lengths().volume(m3))
                : SheetMessage.BUY_LOADS.of(line.count(), contains + " " + unit);
    }

    /** How much of something is needed, with its unit. */
    public String quantity(BigDecimal quantity, String unit, PrintedFigures f) {
        return switch (unit) {
            case "pieces" -> f.text(SheetMessage.GOODS_PIECES.of(quantity.intValueExact()));
            case "rolls" -> f.text(SheetMessage.GOODS_ROLLS.of(quantity.intValueExact()));
            default -> quantity.toPlainString() + " " + unit;
        };
    }
}
