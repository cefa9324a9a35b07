package borderwright.engine.shopping;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.garden.Garden;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything to buy that is not a board. */
public final class ShoppingList {
    private ShoppingList() {}

    /**
     * Fixings by kind in the order in which they are first used, then what the ground takes, then what fills and covers the
     * boxes. What is needed in two places stands once, with both reasons.
     */
    public static List<ShoppingItem> of(List<Box> boxes, GroundPlan ground, FillPlan filling, Garden garden) {
        List<ShoppingItem> items = fixings(boxes);
        items.addAll(new GroundItems(garden.ground(), garden.units()).of(ground));
        items.addAll(new FillItems(garden.filling(), garden.units()).of(filling));
        Map<String, ShoppingItem> merged = new LinkedHashMap<>();
        items.forEach(item -> merged.merge(item.item() + " in " + item.unit(), item, ShoppingItem::and));
        return List.copyOf(merged.values());
    }

    private static List<ShoppingItem> fixings(List<Box> boxes) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, Set<Message>> uses = new LinkedHashMap<>();
        for (Box box : boxes) {
            for (Box.Fixing fixing : box.fixings()) {
                counts.merge(fixing.item(), fixing.count(), Integer::sum);
                uses.computeIfAbsent(fixing.item(), item -> new LinkedHashSet<>())
                        .add(fixing.use());
            }
        }
        List<ShoppingItem> items = new ArrayList<>();
        counts.forEach((item, count) -> items.add(new ShoppingItem(
                item,
                BigDecimal.valueOf(count),
                "pieces",
                uses.getOrDefault(item, Set.of()).stream()
                        .reduce((first, next) -> ShoppingMessage.TWO_USES.of(first, next))
                        .orElseThrow())));
        return items;
    }
}
