package borderwright.engine.shopping;

import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.FinishPlan;
import borderwright.engine.filling.Material;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What fills and covers the boxes, as lines of the shopping list. */
record FillItems(LengthFormat format) {
    List<ShoppingItem> of(FillPlan filling) {
        List<ShoppingItem> items = new ArrayList<>();
        for (Material material : filling.materials()) {
            if (material.bought()) {
                Bulk ordered = Bulk.of(material.orderedM3(), format.units());
                items.add(new ShoppingItem(
                        material.item(),
                        ordered.quantity(),
                        ordered.unit(),
                        format.volume(material.filledM3()) + " inside the walls, and what settles"));
            }
        }
        boolean imperial = format.units() == UnitSystem.IMPERIAL;
        measured(
                items,
                "floor fabric",
                imperial ? filling.floorFabricM2() / UnitFactors.M2_PER_SQUARE_FOOT : filling.floorFabricM2(),
                imperial ? "sq ft" : "m2",
                "over the slats, turned up at the walls; strong, woven, lets water through");
        filling.liner().ifPresent(liner -> {
            items.add(new ShoppingItem(
                    "liner roll",
                    BigDecimal.valueOf(liner.rolls()),
                    "rolls",
                    liner.strips().size() + " strips inside the walls, " + format.site(liner.lengthMm()) + " in all"));
            items.add(new ShoppingItem(
                    "staple", BigDecimal.valueOf(liner.staples()), "pieces", "rows under the rim and at the bottom"));
        });
        FinishPlan finish = filling.finish();
        double litres = imperial ? UnitFactors.LITRES_PER_QUART : 1;
        String liquid = imperial ? "quarts" : "litres";
        measured(
                items,
                "finish",
                finish.finishLitres() / litres,
                liquid,
                finish.coats() + " coats on " + format.area(finish.outerM2()) + " of outer faces");
        measured(
                items,
                "preservative",
                finish.preservativeLitres() / litres,
                liquid,
                "two coats on " + finish.cutEnds() + " cut ends of treated boards");
        return items;
    }

    /** To the tenth, rounded up. */
    private static void measured(List<ShoppingItem> items, String item, double quantity, String unit, String why) {
        if (quantity > 0) {
            items.add(
                    new ShoppingItem(item, BigDecimal.valueOf(quantity).setScale(1, RoundingMode.CEILING), unit, why));
        }
    }
}
