package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
import java.util.List;

/** Turns a purchase into orders and laid boards with the pieces' labels on them. */
public final class AnswerWriter {
    private final ShoppingCase shopping;
    private final Purchase purchase;

    public AnswerWriter(ShoppingCase shopping, Purchase purchase) {
        this.shopping = shopping;
        this.purchase = purchase;
    }

    public List<ShoppingAnswer.Order> orders() {
        List<ShoppingAnswer.Order> orders = new ArrayList<>();
        for (int k = 0; k < shopping.suppliers.size(); k++) {
            if (purchase.buysFrom(k)) {
                orders.add(order(k));
            }
        }
        return orders;
    }

    private ShoppingAnswer.Order order(int k) {
        List<ShoppingAnswer.BoardLine> boards = new ArrayList<>();
        for (Purchase.BoughtBoards bought : purchase.boards) {
            BoardOffer offer = bought.section().source(bought.type()).offer();
            if (offer != null && bought.supplier() == k) {
                boards.add(new ShoppingAnswer.BoardLine(offer, bought.packs()));
            }
        }
        List<ShoppingAnswer.GoodsLine> goods = purchase.items.stream()
                .filter(bought -> bought.offer().supplier() == k)
                .map(bought -> new ShoppingAnswer.GoodsLine(bought.offer().terms(), bought.count()))
                .toList();
        SupplierTerms terms = shopping.suppliers.get(k);
        long value = purchase.value[k];
        DeliveryOption way = purchase.way(k);
        long charge = way == null ? 0 : way.charge();
        boolean fetched = way != null && way.fetched();
        return new ShoppingAnswer.Order(
                terms.name(), boards, goods, value, charge, shopping.paid(k, value, way) - value - charge, fetched);
    }

    public List<LaidBoard> boards() {
        List<LaidBoard> boards = new ArrayList<>();
        for (int s = 0; s < purchase.packings.size(); s++) {
            lay(shopping.sections.get(s), purchase.packings.get(s), shopping.problem.trimTicks(), boards);
        }
        return boards;
    }

    /** Deals the labels out to the patterns; boards that come out alike are one entry with a count. */
    private static void lay(ShoppingSection section, Packing packing, long trimTicks, List<LaidBoard> boards) {
        List<LabelDeal> deals = new ArrayList<>();
        for (int i = 0; i < section.stock.sizes(); i++) {
            deals.add(new LabelDeal(section.demands(i)));
        }
        for (int p = 0; p < packing.kinds(); p++) {
            CuttingPattern pattern = packing.pattern(p);
            BoardSource source = section.source(pattern.board());
            int left = packing.times(p);
            while (left > 0) {
                int alike = left;
                for (int k = 0; k < pattern.kinds(); k++) {
                    alike = Math.min(alike, deals.get(pattern.item(k)).alike(pattern.count(k)));
                }
                List<LaidBoard.LaidPiece> pieces = new ArrayList<>();
                for (int k = 0; k < pattern.kinds(); k++) {
                    deals.get(pattern.item(k)).deal(pattern.count(k), alike, pieces);
                }
                if (!pieces.isEmpty()) {
                    boards.add(LaidBoard.builder(source.from(), section.name)
                            .owned(source.isOwned())
                            .lengthTicks(source.lengthTicks())
                            .trimTicks(source.trimTicks(trimTicks))
                            .price(source.pricePerBoard())
                            .count(alike)
                            .pieces(pieces)
                            .build());
                }
                left -= alike;
            }
        }
    }

    /** The labels of one size, dealt out in order. */
    private static final class LabelDeal {
        private final List<Demand> demands;
        private int at;
        private int left;

        LabelDeal(List<Demand> demands) {
            this.demands = demands;
            this.left = demands.isEmpty() ? 0 : demands.get(0).quantity();
        }

        /** How many boards that take {@code count} each get the same labels; at least 1. */
        int alike(int count) {
            return at >= demands.size() ? Integer.MAX_VALUE : Math.max(1, left / count);
        }

        void deal(int count, int boards, List<LaidBoard.LaidPiece> to) {
            for (int i = 0; i < count && at < demands.size(); i++) {
                Demand demand = demands.get(at);
                to.add(new LaidBoard.LaidPiece(demand.label(), demand.lengthTicks()));
                left -= boards;
                if (left == 0 && ++at < demands.size()) {
                    left = demands.get(at).quantity();
                }
            }
        }
    }
}
