package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.SectionSearch;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Searches of sections on their own, shared between the cases that allow the same boards. */
final class SharedSearches {
    private final ShoppingCase shopping;
    private final Budget budget;
    private final Map<String, SectionSearch> searches = new HashMap<>();

    /**
     * No searches yet.
     *
     * @param budget for the first bounds of each
     */
    SharedSearches(ShoppingCase shopping, Budget budget) {
        this.shopping = shopping;
        this.budget = budget;
    }

    /** The search of a section over the boards that a case allows. */
    SectionSearch of(SupplierCase c, ShoppingSection section) {
        StringBuilder key = new StringBuilder(section.name).append('\0');
        for (int j = 0; j < section.types(); j++) {
            key.append(c.allows(section, j) ? '1' : '0');
        }
        return searches.computeIfAbsent(key.toString(), k -> new SectionSearch(c.restricted(section), budget));
    }

    /** The same at other costs of the boards, whole and at least 0. */
    SectionSearch of(SupplierCase c, ShoppingSection section, long[] costs) {
        StockCase stock = c.restricted(section);
        StringBuilder key = new StringBuilder(section.name).append('\0');
        for (int j = 0; j < costs.length; j++) {
            key.append(stock.available(j) >= stock.pack(j) ? costs[j] : -1).append(' ');
        }
        return searches.computeIfAbsent(key.toString(), k -> new SectionSearch(stock.withCosts(costs), budget));
    }

    /** What the boards of a case cost at least, grains; {@link Long#MAX_VALUE} where they cannot serve. */
    long bound(SupplierCase c) {
        long grains = 0;
        for (ShoppingSection section : shopping.sections) {
            long each = of(c, section).bound();
            if (each == Long.MAX_VALUE) {
                return each;
            }
            grains = Math.addExact(grains, each);
        }
        return grains;
    }

    /** Each section's own best packing and the cheapest goods; null while one of them is unknown. */
    @Nullable
    Purchase separate(SupplierCase c) {
        List<Packing> packings = new ArrayList<>();
        for (ShoppingSection section : shopping.sections) {
            Packing packing = of(c, section).best();
            if (packing == null) {
                return null;
            }
            packings.add(packing);
        }
        return purchase(c, packings);
    }

    /** Some packings and the cheapest goods of a case; null where goods cannot be had. */
    @Nullable
    Purchase purchase(SupplierCase c, List<Packing> packings) {
        int[][] counts = new int[shopping.covers.size()][];
        for (int i = 0; i < counts.length; i++) {
            GoodsCover cover = shopping.covers.get(i);
            counts[i] = c.cheapestGoods(cover).counts();
            if (!cover.isMetBy(counts[i])) {
                return null;
            }
        }
        return new Purchase(shopping, packings, Purchase.packsFor(shopping, packings), counts);
    }
}
