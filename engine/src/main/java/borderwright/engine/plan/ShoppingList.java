package borderwright.engine.plan;

import borderwright.engine.buildup.Box;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.measure.LengthFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything to buy that is not a board. */
final class ShoppingList {
    private ShoppingList() {}

    /** Fixings by kind in the order in which they are first used, then soil. */
    static List<ShoppingItem> of(List<Box> boxes, List<SoilVolume> soil, LengthFormat format) {
        List<ShoppingItem> items = new ArrayList<>();
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, Set<String>> uses = new LinkedHashMap<>();
        for (Box box : boxes) {
            for (Box.Fixing fixing : box.fixings()) {
                counts.merge(fixing.item(), fixing.count(), Integer::sum);
                uses.computeIfAbsent(fixing.item(), item -> new LinkedHashSet<>())
                        .add(fixing.use());
            }
        }
        counts.forEach((item, count) -> items.add(new ShoppingItem(
                item, BigDecimal.valueOf(count), "pieces", String.join("; ", uses.getOrDefault(item, Set.of())))));
        double orderedM3 = soil.stream().mapToDouble(SoilVolume::orderedM3).sum();
        double filledM3 = soil.stream().mapToDouble(SoilVolume::filledM3).sum();
        if (orderedM3 > 0) {
            // Soil is ordered by the hundredth of a cubic metre at the finest; rounding up keeps it enough.
            items.add(new ShoppingItem(
                    "soil",
                    BigDecimal.valueOf(orderedM3).setScale(2, RoundingMode.CEILING),
                    "m3",
                    format.volume(filledM3) + " inside the walls, and what settles"));
        }
        return items;
    }
}
