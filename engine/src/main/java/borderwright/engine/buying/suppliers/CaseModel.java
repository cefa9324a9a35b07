package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.BoardModel;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
        List<List<BoardModel.Side>> sides = new ArrayList<>();
        for (int s = 0; s < n; s++) {
            ShoppingSection section = shopping.sections.get(s);
            parts.add(c.restricted(section));
            sides.add(IntStream.range(0, section.types())
                    .mapToObj(j -> side(section, j, valueRow))
                    .toList());
        }
        return new BoardModel(parts, need.stream().mapToLong(Long::longValue).toArray(), sides, extras, List.of());
    }

    /** What a pack of a type counts towards its order, where that must come to a least value. */
    private static BoardModel.Side side(ShoppingSection section, int j, int[] valueRow) {
        int row = section.isBought(j) ? valueRow[section.supplier(j)] : -1;
        return row < 0 ? BoardModel.Side.NONE : new BoardModel.Side(row, section.value(j));
    }

    private BoardModel.Extra extra(GoodsCover cover, int g, int o, int[] valueRow) {
        GoodsOffer offer = cover.offers.get(o).terms();
        int k = cover.offers.get(o).supplier();
        int side = valueRow[k];
        long most = (cover.wanted + cover.offers.get(o).content() - 1)
                / cover.offers.get(o).content();
        if (side >= 0 && offer.price() > 0) {
            most += (c.leastValue(k) + offer.price() - 1) / offer.price();
        }
        BoardModel.Side content = new BoardModel.Side(g, cover.offers.get(o).content());
        return new BoardModel.Extra(
                shopping.grains(offer.price(), k),
                side < 0 ? List.of(content) : List.of(content, new BoardModel.Side(side, offer.price())),
                offer.least(),
                c.allows(cover, o) ? (int) Math.min(Math.max(most, offer.least()), offer.available()) : 0);
    }
}
