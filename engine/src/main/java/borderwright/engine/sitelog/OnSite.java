package borderwright.engine.sitelog;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.Receipt;
import borderwright.engine.garden.Receipt.ReceivedBoard;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import borderwright.engine.stock.row.CuttingJob;
import borderwright.engine.stock.row.EndShape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is on site.
 *
 * @param open pieces that are still to be cut
 * @param done labels of pieces that are cut already
 * @param stock boards and offcuts that are here
 * @param problems what cannot be as it is reported
 */
public record OnSite(List<Piece> open, List<String> done, List<OwnedStock> stock, List<Problem> problems) {
    public OnSite {
        open = List.copyOf(open);
        done = List.copyOf(done);
        stock = List.copyOf(stock);
        problems = List.copyOf(problems);
    }

    /** What a garden has on site, of the pieces of its boxes. */
    public static OnSite of(Garden garden, List<Piece> pieces) {
        return new Reader(garden, pieces).read();
    }

    /** What is still needed of goods, by name, once what has arrived is taken off. */
    public static List<GoodsNeed> stillNeeded(Garden garden, List<GoodsNeed> needs) {
        Receipt received = garden.received().orElse(Receipt.NOTHING);
        if (received.hasAllGoods()) {
            return List.of();
        }
        Map<String, BigDecimal> here = new HashMap<>();
        received.goods().forEach(goods -> here.merge(goods.item(), goods.quantity(), BigDecimal::add));
        List<GoodsNeed> left = new ArrayList<>();
        for (GoodsNeed need : needs) {
            BigDecimal quantity = need.quantity().subtract(here.getOrDefault(need.item(), BigDecimal.ZERO));
            if (quantity.signum() > 0) {
                left.add(new GoodsNeed(need.item(), quantity, need.unit()));
            }
        }
        return left;
    }

    private static final class Reader {
        private final Garden garden;
        private final Receipt received;
        private final Map<String, Piece> open = new LinkedHashMap<>();
        private final Map<String, Piece> all = new HashMap<>();
        private final List<String> done = new ArrayList<>();
        private final List<OwnedStock> stock = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();
        private final Length trim;
        private final Length kerf;

        Reader(Garden garden, List<Piece> pieces) {
            this.garden = garden;
            this.received = garden.received().orElse(Receipt.NOTHING);
            this.trim = garden.cutting().trim();
            this.kerf = CuttingJob.widestKerf(garden.saws());
            pieces.forEach(piece -> open.put(piece.label(), piece));
            all.putAll(open);
        }

        OnSite read() {
            garden.owned()
                    .forEach(board -> stock.add(new OwnedStock(
                            board.section(),
                            board.length().ticks(),
                            board.count(),
                            board.label().orElse("shed"))));
            for (int i = 0; i < received.boards().size(); i++) {
                ReceivedBoard board = received.boards().get(i);
                String where = "received.boards[" + i + "]";
                if (board.cut().isEmpty() && board.left().isEmpty()) {
                    whole(board);
                } else {
                    cutInto(board, where);
                }
            }
            return new OnSite(List.copyOf(open.values()), done, stock, problems);
        }

        private static String name(ReceivedBoard board) {
            return board.sentBy().map(from -> "here, from " + from).orElse("here");
        }

        private void whole(ReceivedBoard board) {
            if (board.usable() > 0) {
                stock.add(new OwnedStock(
                        board.section(), board.length().ticks(), board.usable(), name(board), trim.ticks()));
            }
        }

        private void cutInto(ReceivedBoard board, String where) {
            long used = trim.ticks();
            for (String label : board.cut()) {
                Piece piece = open.remove(label);
                if (piece == null) {
                    problems.add(notOpen(label, where));
                } else {
                    done.add(label);
                    used += piece.length().ticks() + cutTicks(piece);
                    if (!piece.section().equals(board.section())) {
                        problems.add(new Problem(
                                where + ".cut",
                                SiteLogMessage.CUT_SECTION.of(label, board.section(), piece.section())));
                    }
                }
            }
            long left = board.left().map(Length::ticks).orElse(board.length().ticks() - used);
            if (left > trim.ticks() && board.usable() > 0) {
                stock.add(new OwnedStock(board.section(), left - trim.ticks(), 1, "offcut " + name(board)));
            }
        }

        private long cutTicks(Piece piece) {
            return Math.max(
                    EndShape.of(piece.left(), null, kerf).kerfTicks(),
                    EndShape.of(piece.right(), null, kerf).kerfTicks());
        }

        private Problem notOpen(String label, String where) {
            return new Problem(
                    where + ".cut",
                    all.containsKey(label)
                            ? SiteLogMessage.CUT_TWICE.of(label)
                            : SiteLogMessage.CUT_UNKNOWN.of(label, NearestName.perhaps(label, all.keySet())));
        }
    }
}
