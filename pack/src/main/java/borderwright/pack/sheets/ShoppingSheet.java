package borderwright.pack.sheets;

import borderwright.engine.buying.why.Basket;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import java.math.BigDecimal;

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

    /** How much of something is needed, with its unit. */
    public String quantity(BigDecimal quantity, String unit, PrintedFigures f) {
        return switch (unit) {
            case "pieces" -> f.text(SheetMessage.GOODS_PIECES.of(quantity.intValueExact()));
            case "rolls" -> f.text(SheetMessage.GOODS_ROLLS.of(quantity.intValueExact()));
            default -> quantity.toPlainString() + " " + unit;
        };
    }
}
