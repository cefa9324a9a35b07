package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.BoardModel;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Turns a case into one model of all its sections and goods. */
final class CaseModel {
    private final ShoppingCase shopping;
    private final SupplierCase c;

    CaseModel(ShoppingCase shopping, SupplierCase c) {
        this.shopping = shopping;
        this.c = c;
    }

    /** The whole case as one model: sections, goods, and the least value of each order. */
    BoardModel model() {
        int suppliers = shopping.suppliers.size();
        List<Long> need = new ArrayList<>();
        List<BoardModel.Extra> extras = new ArrayList<>();
        for (GoodsCover cover : shopping.covers) {
            need.add(cover.wanted);
        }
        int[] valueRow = new int[suppliers];
        for (int k = 0; k < suppliers; k++) {
            valueRow[k] = c.leastValue(k) > 0 ? need.size() : -1;
            if (valueRow[k] >= 0) {
                need.add(c.leastValue(k));
            }
        }
        for (int g = 0; g < shopping.covers.size(); g++) {
            GoodsCover cover = shopping.covers.get(g);
            for (int o = 0; o < cover.offers.size(); o++) {
                extras.add(extra(cover, g, o, valueRow));
            }
        }
        int n = shopping.sections.size();
        List<StockCase> parts = new ArrayList<>();
        int[][] sideRow = new int[n][];
        long[][] sideValue = new long[n][];
        for (int s = 0; s < n; s++) {
            ShoppingSection section = shopping.sections.get(s);
            parts.add(c.restricted(section));
            sideRow[s] = new int[section.types()];
            sideValue[s] = new long[section.types()];
            Arrays.setAll(sideValue[s], section::value);
            Arrays.setAll(
                    sideRow[s], j -> section.supplier(j) == ShoppingCase.SHED ? -1 : valueRow[section.supplier(j)]);
        }
        return new BoardModel(
                parts, need.stream().mapToLong(Long::longValue).toArray(), sideRow, sideValue, extras, List.of());
    }

    private BoardModel.Extra extra(GoodsCover cover, int g, int o, int[] valueRow) {
        GoodsOffer offer = cover.offers.get(o);
        int k = cover.supplier[o];
        int side = valueRow[k];
        long most = (cover.wanted + cover.content[o] - 1) / cover.content[o];
        if (side >= 0 && offer.price() > 0) {
            most += (c.leastValue(k) + offer.price() - 1) / offer.price();
        }
        return new BoardModel.Extra(
                shopping.grains(offer.price(), k),
                side < 0 ? new int[] {g} : new int[] {g, side},
                side < 0 ? new long[] {cover.content[o]} : new long[] {cover.content[o], offer.price()},
                c.allows(cover, o) ? (int) Math.min(Math.max(most, offer.least()), offer.available()) : 0,
                offer.least());
    }
}
