package borderwright.engine.shopping;

import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.FinishPlan;
import borderwright.engine.filling.Material;
import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.FillingSpec.LinerSpec;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What fills and covers the boxes, as lines of the shopping list. */
record FillItems(FillingSpec spec, UnitSystem units) {
    List<ShoppingItem> of(FillPlan filling) {
        List<ShoppingItem> items = new ArrayList<>();
        for (Material material : filling.materials()) {
            if (material.bought()) {
                Bulk ordered = Bulk.of(material.orderedM3(), units);
                items.add(new ShoppingItem(
                        material.item(),
                        ordered.quantity(),
                        ordered.unit(),
                        ShoppingMessage.FILL_TO_BUY.of(material.filledM3())));
            }
        }
        boolean imperial = units == UnitSystem.IMPERIAL;
        measured(
                items,
                "floor fabric",
                imperial ? filling.floorFabricM2() / UnitFactors.M2_PER_SQUARE_FOOT : filling.floorFabricM2(),
                imperial ? "sq ft" : "m2",
                ShoppingMessage.FLOOR_FABRIC_TO_BUY.of());
        filling.liner().ifPresent(liner -> {
            LinerSpec roll = spec.liner().orElseThrow();
            items.add(new ShoppingItem(
                    "liner roll",
                    BigDecimal.valueOf(liner.rolls()),
                    "rolls",
                    ShoppingMessage.LINER_TO_BUY.of(
                            liner.strips().size(), liner.lengthMm(), roll.widthMm(), roll.lengthMm())));
            items.add(new ShoppingItem(
                    "staple", BigDecimal.valueOf(liner.staples()), "pieces", ShoppingMessage.STAPLES_TO_BUY.of()));
        });
        brushedOn(items, filling.finish());
        return items;
    }

    private void brushedOn(List<ShoppingItem> items, FinishPlan finish) {
        boolean imperial = units == UnitSystem.IMPERIAL;
        double litres = imperial ? UnitFactors.LITRES_PER_QUART : 1;
        String liquid = imperial ? "quarts" : "litres";
        measured(
                items,
                "finish",
                finish.finishLitres() / litres,
                liquid,
                ShoppingMessage.FINISH_TO_BUY.of(finish.coats(), finish.outerM2()));
        measured(
                items,
                "preservative",
                finish.preservativeLitres() / litres,
                liquid,
                ShoppingMessage.PRESERVATIVE_TO_BUY.of(finish.cutEnds()));
    }

    private static void measured(List<ShoppingItem> items, String item, double quantity, String unit, Message why) {
        if (quantity > 0) {
            items.add(new ShoppingItem(item, ShoppingItem.upToTenth(quantity), unit, why));
        }
    }
}
