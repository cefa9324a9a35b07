package borderwright.engine.shopping;

import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.GroundSpec.MembraneSpec;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.SheetPlan;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What the ground takes, as lines of the shopping list. */
record GroundItems(GroundSpec spec, UnitSystem units) {

    List<ShoppingItem> of(GroundPlan ground) {
        List<ShoppingItem> items = new ArrayList<>();
        if (ground.gravelLooseM3() > 0) {
            Bulk loose = Bulk.of(ground.gravelLooseM3(), units);
            items.add(new ShoppingItem(
                    "gravel", loose.quantity(), loose.unit(), ShoppingMessage.GRAVEL_TO_BUY.of(ground.gravelM3())));
        }
        ground.sheet().ifPresent(sheet -> sheet(sheet, spec.membrane().orElseThrow(), items));
        add(items, "packer", ground.feet(), "pieces", ShoppingMessage.PACKERS_TO_BUY.of());
        spec.dig()
                .skipM3()
                .ifPresent(each -> add(
                        items,
                        "skip",
                        ground.spoil().skips(),
                        "pieces",
                        ShoppingMessage.SKIPS_TO_HIRE.of(ground.spoil().movedM3(), each)));
        return items;
    }

    private static void sheet(SheetPlan sheet, MembraneSpec roll, List<ShoppingItem> items) {
        add(
                items,
                "membrane roll",
                sheet.rolls(),
                "rolls",
                ShoppingMessage.MEMBRANE_TO_BUY.of(
                        sheet.strips().size(), sheet.lengthMm(), roll.widthMm(), roll.lengthMm()));
        add(items, "fabric pin", sheet.pins(), "pieces", ShoppingMessage.PINS_TO_BUY.of());
    }

    private static void add(List<ShoppingItem> items, String item, int count, String unit, Message why) {
        if (count > 0) {
            items.add(new ShoppingItem(item, BigDecimal.valueOf(count), unit, why));
        }
    }
}
