package borderwright.engine.shopping;

import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.SheetPlan;
import borderwright.engine.measure.LengthFormat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What the ground takes, as lines of the shopping list. */
record GroundItems(LengthFormat format) {

    List<ShoppingItem> of(GroundPlan ground) {
        List<ShoppingItem> items = new ArrayList<>();
        if (ground.gravelLooseM3() > 0) {
            Bulk loose = Bulk.of(ground.gravelLooseM3(), format.units());
            items.add(new ShoppingItem(
                    "gravel",
                    loose.quantity(),
                    loose.unit(),
                    format.volume(ground.gravelM3()) + " compacted under the planters, ordered loose"));
        }
        ground.sheet().ifPresent(sheet -> sheet(sheet, items));
        add(items, "planter foot", ground.feet(), "pieces", "under planters on hard ground, packed to their heights");
        add(
                items,
                "skip",
                ground.spoil().skips(),
                "pieces",
                format.volume(ground.spoil().movedM3()) + " of turf and loose earth");
        return items;
    }

    private void sheet(SheetPlan sheet, List<ShoppingItem> items) {
        add(
                items,
                "membrane roll",
                sheet.rolls(),
                "rolls",
                sheet.strips().size() + " strips, " + format.site(sheet.lengthMm()) + " in all, under the gravel");
        add(items, "membrane pin", sheet.pins(), "pieces", "along the membrane's edges and seams, and in the field");
    }

    private static void add(List<ShoppingItem> items, String item, int count, String unit, String why) {
        if (count > 0) {
            items.add(new ShoppingItem(item, BigDecimal.valueOf(count), unit, why));
        }
    }
}
