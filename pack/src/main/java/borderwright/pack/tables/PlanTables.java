package borderwright.pack.tables;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Sentences;
import borderwright.engine.plan.Costs;
import borderwright.engine.plan.Plan;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.shopping.UnpricedItem;
import borderwright.pack.figures.PartWords;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The cutting list and the shopping list as tables for a spreadsheet. */
public final class PlanTables {
    private static final String[] CUTTING_COLUMNS = {
        "board",
        "section",
        "board_length_mm",
        "board_from",
        "order",
        "label",
        "length_mm",
        "length_in",
        "starts_at_mm",
        "left_end",
        "left_tilt_deg",
        "left_fence_deg",
        "right_end",
        "right_tilt_deg",
        "right_fence_deg",
        "set_up",
        "saw",
        "turned_over",
        "end_for_end",
        "shares_cut",
        "waits",
        "what",
        "box",
        "planter",
        "course"
    };

    private PlanTables() {}

    /** One row for each piece on each board, in the order of cutting; then the pieces that no board gives. */
    public static byte[] cutting(Plan plan, Sentences sentences) {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        for (Box box : plan.boxes()) {
            box.pieces().forEach(p -> pieces.put(p.label(), p));
        }
        CsvWriter table = new CsvWriter(CUTTING_COLUMNS);
        for (CuttingPlan.BoardCuts board : plan.cutting().boards()) {
            int order = 1;
            for (CuttingPlan.Cut cut : board.cuts()) {
                cutRow(table, plan, board, order++, cut, pieces.get(cut.label()), sentences);
            }
        }
        for (CuttingPlan.Uncut uncut : plan.cutting().uncut()) {
            table.sparseRow(Map.of("board_from", sentences.text(uncut.why()), "label", uncut.label()));
        }
        return table.bytes();
    }

    private static void cutRow(
            CsvWriter table,
            Plan plan,
            CuttingPlan.BoardCuts board,
            int order,
            CuttingPlan.Cut cut,
            @Nullable Piece piece,
            Sentences sentences) {
        CuttingPlan.SetUp setUp =
                cut.setUp() >= 0 && cut.setUp() < plan.cutting().setUps().size()
                        ? plan.cutting().setUps().get(cut.setUp())
                        : null;
        table.row(
                Integer.toString(board.number()),
                board.section(),
                mm(board.length()),
                board.from(),
                Integer.toString(order),
                cut.label(),
                mm(cut.length()),
                inches(cut.length()),
                mm(cut.start()),
                piece == null ? "" : end(piece.left(), sentences),
                piece == null ? "" : degrees(piece.left().tiltDeg()),
                piece == null ? "" : degrees(piece.left().fenceDeg()),
                piece == null ? "" : end(piece.right(), sentences),
                piece == null ? "" : degrees(piece.right().tiltDeg()),
                piece == null ? "" : degrees(piece.right().fenceDeg()),
                setUp == null ? "" : Integer.toString(setUp.number()),
                setUp == null ? "" : setUp.saw(),
                cut.turnedOver() ? "yes" : "no",
                cut.endForEnd() ? "yes" : "no",
                cut.sharesCut() ? "yes" : "no",
                plan.cutting().waiting().contains(cut.label()) ? "yes" : "no",
                piece == null ? "" : sentences.text(PartWords.role(piece.role())),
                piece == null ? "" : piece.box(),
                piece == null ? "" : piece.planter(),
                piece == null || piece.course() == 0 ? "" : Integer.toString(piece.course()));
    }

    /** One row for each line of each order, its delivery and tax; then what nobody prices, and all sums. */
    public static byte[] shopping(Plan plan, Sentences sentences) {
        String currency = plan.garden().currency().getCode();
        CsvWriter table = new CsvWriter(
                "supplier",
                "what",
                "length_mm",
                "length_in",
                "how_many",
                "pack_of",
                "each_" + currency,
                "sum_" + currency,
                "quantity_needed",
                "unit",
                "for");
        Charges charges = new Charges(table, sentences);
        for (Basket.Order order : plan.basket().orders()) {
            for (Basket.Line line : order.lines()) {
                lineRow(table, plan, order, line, sentences);
            }
            TableMessage journey = order.fetched() ? TableMessage.TABLE_FETCHING : TableMessage.TABLE_DELIVERY;
            charges.row(order.supplier(), journey, order.delivery().getAmount());
            charges.row(order.supplier(), TableMessage.TABLE_TAX, order.tax().getAmount());
            charges.row(
                    order.supplier(), TableMessage.TABLE_TOTAL, order.total().getAmount());
        }
        String all = sentences.text(TableMessage.TABLE_ALL_SUPPLIERS.of());
        charges.row(all, TableMessage.TABLE_LISTED, plan.basket().total().getAmount());
        Costs costs = plan.totals().costs();
        costs.unpriced().forEach(item -> unpricedRow(table, item, sentences));
        charges.row(all, TableMessage.TABLE_USUAL, costs.usual().getAmount());
        costs.inAll().ifPresent(sum -> charges.row(all, TableMessage.TABLE_TOTAL, sum.getAmount()));
        return table.bytes();
    }

    private static void lineRow(CsvWriter table, Plan plan, Basket.Order order, Basket.Line line, Sentences sentences) {
        boolean board = line.length().ticks() > 0;
        ShoppingItem item = plan.shopping().stream()
                .filter(s -> s.item().equals(line.item()))
                .findFirst()
                .orElse(null);
        table.row(
                order.supplier(),
                line.item(),
                board ? mm(line.length()) : "",
                board ? inches(line.length()) : "",
                Integer.toString(line.count()),
                Integer.toString(line.pack()),
                line.unitPrice().getAmount().toPlainString(),
                line.sum().getAmount().toPlainString(),
                item == null ? "" : item.quantity().toPlainString(),
                item == null ? "" : item.unit(),
                item == null ? "" : sentences.text(item.why()));
    }

    private static void unpricedRow(CsvWriter table, UnpricedItem item, Sentences sentences) {
        String each = item.usual()
                .map(usual -> usual.each().getAmount().toPlainString())
                .orElse("");
        table.row(
                sentences.text(TableMessage.TABLE_NOBODY.of()),
                item.item(),
                "",
                "",
                item.usual().map(usual -> Integer.toString(usual.count())).orElse(""),
                "",
                each,
                item.usual()
                        .map(usual -> usual.sum().getAmount().toPlainString())
                        .orElse(""),
                item.quantity().toPlainString(),
                item.unit(),
                item.usual().map(usual -> usual.origin().note()).orElse(""));
    }

    private record Charges(CsvWriter table, Sentences sentences) {
        void row(String supplier, TableMessage what, BigDecimal amount) {
            table.row(supplier, sentences.text(what.of()), "", "", "", "", "", amount.toPlainString(), "", "", "");
        }
    }

    private static String end(EndCut cut, Sentences sentences) {
        return sentences.text(cut.words());
    }

    private static String mm(Length length) {
        return decimal(length.mm(), 1);
    }

    private static String inches(Length length) {
        return decimal(length.inches(), 4);
    }

    private static String degrees(double degrees) {
        return decimal(degrees, 2);
    }

    private static String decimal(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
