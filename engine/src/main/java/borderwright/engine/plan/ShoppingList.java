package borderwright.engine.plan;

import borderwright.engine.buildup.Box;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
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
    /** 0.9144 m cubed, exact by the international yard. */
    private static final double M3_PER_CUBIC_YARD = 0.764554857984;

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
            items.add(soil(orderedM3, format.volume(filledM3) + " inside the walls, and what settles", format.units()));
        }
        return items;
    }

    /** Soil is ordered by the hundredth of a cubic metre, or yard, at the finest; rounding up keeps it enough. */
    private static ShoppingItem soil(double orderedM3, String why, UnitSystem units) {
        boolean imperial = units == UnitSystem.IMPERIAL;
        double quantity = imperial ? orderedM3 / M3_PER_CUBIC_YARD : orderedM3;
        return new ShoppingItem(
                "soil", BigDecimal.valueOf(quantity).setScale(2, RoundingMode.CEILING), imperial ? "cu yd" : "m3", why);
    }
}
