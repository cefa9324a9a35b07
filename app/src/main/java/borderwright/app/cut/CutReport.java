package borderwright.app.cut;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.why.BasketReasons;
import borderwright.engine.buying.why.Explanation;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.MinorUnit;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.BigMoney;

/** Writes the answer of {@code cut} as JSON or as a table. */
final class CutReport {
    private static final BigDecimal TICKS_PER_MM = BigDecimal.valueOf(Length.TICKS_PER_MM);
    private static final String INDENT = "  ";

    private final MinorUnit unit;

    /**
     * A report of amounts in a unit.
     *
     * @param unit of all money of the answer
     */
    CutReport(MinorUnit unit) {
        this.unit = unit;
    }

    void json(ShoppingAnswer answer, Explanation why, double seconds, PrintWriter out) throws IOException {
        try (JsonGenerator json = new JsonFactory()
                .createGenerator(out)
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN.mappedFeature())) {
            json.writeStartObject();
            if (answer.status() == ShoppingAnswer.Status.FOUND) {
                json.writeNumberField("cost", money(answer.cost() - answer.counted()));
                json.writeNumberField("bound", money(answer.bound() - answer.counted()));
                json.writeNumberField("open_by", answer.gap());
                if (answer.kept() != 0) {
                    json.writeNumberField("offcuts_worth", money(answer.kept()));
                }
            }
            json.writeBooleanField("proven", answer.proven());
            json.writeNumberField("seconds", seconds);
            if (answer.status() != ShoppingAnswer.Status.FOUND) {
                json.writeArrayFieldStart("reasons");
                for (String reason : whyNone(answer)) {
                    json.writeString(reason);
                }
                json.writeEndArray();
            }
            json.writeArrayFieldStart("boards");
            for (LaidBoard board : answer.boards()) {
                board(board, json);
            }
            json.writeEndArray();
            if (answer.status() == ShoppingAnswer.Status.FOUND) {
                new WhyJson(json, this::money, CutReport::mm).write(answer, why);
            }
            json.writeEndObject();
        }
        out.println();
        out.flush();
    }

    private void board(LaidBoard board, JsonGenerator json) throws IOException {
        json.writeRaw('\n');
        json.writeStartObject();
        json.writeStringField("supplier", board.supplier());
        json.writeStringField("section", board.section());
        json.writeNumberField("length_mm", mm(board.lengthTicks()));
        json.writeNumberField("price", money(board.price()));
        json.writeNumberField("count", board.count());
        json.writeArrayFieldStart("pieces");
        for (LaidBoard.LaidPiece piece : board.pieces()) {
            json.writeStartObject();
            json.writeStringField("label", piece.label());
            json.writeNumberField("length_mm", mm(piece.lengthTicks()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Why there is no basket, a text for each reason. */
    static List<String> whyNone(ShoppingAnswer answer) {
        return answer.reasons().stream().map(CutFaults.SENTENCES::sentence).toList();
    }

    void table(ShoppingAnswer answer, Explanation why, double seconds, PrintWriter out) {
        BigMoney cost = unit.money(answer.cost() - answer.counted());
        line(
                answer.proven()
                        ? CutReportMessage.CUT_COST_PROVEN.of(cost)
                        : CutReportMessage.CUT_COST_BOUNDED.of(
                                cost, unit.money(answer.bound() - answer.counted()), answer.gap()),
                "",
                out);
        for (ShoppingAnswer.Order order : answer.orders()) {
            order(order, out);
        }
        out.println();
        line(CutReportMessage.CUT_BOARDS_HEADING.of(), "", out);
        for (LaidBoard board : answer.boards()) {
            line(
                    CutReportMessage.CUT_BOARD.of(
                            board.count(),
                            board.section(),
                            named(board.section()),
                            mm(board.lengthTicks()),
                            board.supplier(),
                            named(board.supplier()),
                            pieces(board.pieces())),
                    INDENT,
                    out);
        }
        List<Message> reasons = BasketReasons.of(answer, why, unit);
        if (!reasons.isEmpty()) {
            out.println();
            line(CutReportMessage.CUT_WHY_HEADING.of(), "", out);
            reasons.forEach(reason -> line(reason, INDENT, out));
        }
        out.println();
        line(CutReportMessage.CUT_SOLVED_IN.of(seconds), "", out);
        out.flush();
    }

    private static void line(Message message, String indent, PrintWriter out) {
        out.println(indent + CutFaults.SENTENCES.text(message));
    }

    private void order(ShoppingAnswer.Order order, PrintWriter out) {
        out.println();
        CutReportMessage code =
                order.fetched() ? CutReportMessage.CUT_ORDER_FETCHED : CutReportMessage.CUT_ORDER_DELIVERED;
        line(
                code.of(
                        order.supplier(),
                        named(order.supplier()),
                        unit.money(order.total()),
                        unit.money(order.value()),
                        unit.money(order.delivery()),
                        unit.money(order.tax())),
                "",
                out);
        for (ShoppingAnswer.BoardLine bought : order.boards()) {
            BoardOffer offer = bought.offer();
            BigDecimal length = mm(offer.lengthTicks());
            BigMoney price = unit.money(offer.packPrice());
            int sections = named(offer.section());
            line(
                    offer.pack() > 1
                            ? CutReportMessage.CUT_ORDER_PACKS.of(
                                    bought.packs(), offer.pack(), offer.section(), sections, length, price)
                            : CutReportMessage.CUT_ORDER_LINE.of(
                                    bought.packs(), offer.section(), sections, length, price),
                    INDENT,
                    out);
        }
    }

    /** How many names there are: none where a list leaves them out. */
    private static int named(String name) {
        return name.isEmpty() ? 0 : 1;
    }

    /** Labels and lengths, mm: {@code side 1000, end 800}. */
    private static String pieces(List<LaidBoard.LaidPiece> pieces) {
        StringBuilder text = new StringBuilder();
        for (LaidBoard.LaidPiece piece : pieces) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append(piece.label().isEmpty() ? "" : piece.label() + " ")
                    .append(mm(piece.lengthTicks()).toPlainString());
        }
        return text.toString();
    }

    private BigDecimal money(long minor) {
        BigDecimal amount = BigDecimal.valueOf(minor, unit.places()).stripTrailingZeros();
        return amount.scale() < 0 ? amount.setScale(0) : amount;
    }

    private static BigDecimal mm(long ticks) {
        BigDecimal mm = BigDecimal.valueOf(ticks).divide(TICKS_PER_MM).stripTrailingZeros();
        return mm.scale() < 0 ? mm.setScale(0) : mm;
    }
}
