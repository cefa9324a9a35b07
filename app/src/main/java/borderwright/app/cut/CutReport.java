package borderwright.app.cut;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.why.BasketWords;
import borderwright.engine.buying.why.Explanation;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** Writes the answer of {@code cut} as JSON or as a table. */
final class CutReport {
    private static final BigDecimal TICKS_PER_MM = BigDecimal.valueOf(320);

    private final int decimals;

    /**
     * A report in a currency.
     *
     * @param decimals decimal places of a minor unit
     */
    CutReport(int decimals) {
        this.decimals = decimals;
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
                for (String reason : answer.reasons()) {
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

    void table(ShoppingAnswer answer, Explanation why, double seconds, PrintWriter out) {
        out.println("Cost " + money(answer.cost() - answer.counted()).toPlainString() + ", no basket costs less than "
                + money(answer.bound() - answer.counted()).toPlainString()
                + (answer.proven() ? " (proven)" : openBy(answer)));
        for (ShoppingAnswer.Order order : answer.orders()) {
            order(order, out);
        }
        out.println();
        out.println("Boards and what is cut from each, in order (lengths in mm):");
        for (LaidBoard board : answer.boards()) {
            out.println("  " + board.count() + " x " + name(board.section())
                    + mm(board.lengthTicks()).toPlainString() + " mm" + from(board.supplier()) + ": "
                    + pieces(board.pieces()));
        }
        List<String> reasons = new BasketWords(
                        minor -> money(minor).toPlainString(),
                        ticks -> mm(ticks).toPlainString() + " mm")
                .sentences(answer, why);
        if (!reasons.isEmpty()) {
            out.println();
            out.println("Why this basket:");
            reasons.forEach(reason -> out.println("  " + reason));
        }
        out.println();
        out.printf(Locale.ROOT, "Solved in %.3f s.%n", seconds);
        out.flush();
    }

    private static String openBy(ShoppingAnswer answer) {
        return String.format(Locale.ROOT, " (open by %.3f %%)", 100 * answer.gap());
    }

    private void order(ShoppingAnswer.Order order, PrintWriter out) {
        out.println();
        out.println("From " + (order.supplier().isEmpty() ? "the supplier" : order.supplier()) + ": "
                + money(order.total()).toPlainString() + " in all (goods "
                + money(order.value()).toPlainString() + (order.fetched() ? ", fetching it " : ", delivery ")
                + money(order.delivery()).toPlainString() + ", tax "
                + money(order.tax()).toPlainString() + ")");
        for (ShoppingAnswer.BoardLine line : order.boards()) {
            out.println("  " + line.packs()
                    + (line.offer().pack() > 1 ? " packs of " + line.offer().pack() : "") + " x "
                    + name(line.offer().section())
                    + mm(line.offer().lengthTicks()).toPlainString() + " mm at "
                    + money(line.offer().packPrice()).toPlainString());
        }
    }

    private static String pieces(List<LaidBoard.LaidPiece> pieces) {
        StringBuilder text = new StringBuilder();
        for (LaidBoard.LaidPiece piece : pieces) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append(name(piece.label()))
                    .append(mm(piece.lengthTicks()).toPlainString());
        }
        return text.toString();
    }

    private static String name(String name) {
        return name.isEmpty() ? "" : name + " ";
    }

    private static String from(String supplier) {
        return supplier.isEmpty() ? "" : " from " + supplier;
    }

    private BigDecimal money(long minor) {
        BigDecimal amount = BigDecimal.valueOf(minor, decimals).stripTrailingZeros();
        return amount.scale() < 0 ? amount.setScale(0) : amount;
    }

    private static BigDecimal mm(long ticks) {
        BigDecimal mm = BigDecimal.valueOf(ticks).divide(TICKS_PER_MM).stripTrailingZeros();
        return mm.scale() < 0 ? mm.setScale(0) : mm;
    }
}
