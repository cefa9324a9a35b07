package borderwright.app.cut;

import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the files of pieces, boards and terms, and gathers all that is wrong with them. */
final class CutFiles {
    /** Most boards or pieces in one row. */
    private static final int MOST_COUNT = 1_000_000_000;

    /** Greatest sum that is counted: some way below the greatest long. */
    private static final BigDecimal MOST_MONEY = new BigDecimal("2000000000000000000");

    private final CutFaults faults;
    private final List<Demand> demands = new ArrayList<>();
    private final List<PricedBoard> priced = new ArrayList<>();
    private final TermsRows termsRows = new TermsRows(this);
    private int decimals = 2;
    private @Nullable String lengthColumn;

    CutFiles(CutFaults faults) {
        this.faults = faults;
    }

    private record PricedBoard(
            String supplier, String section, long ticks, BigDecimal price, int pack, int available, int least) {}

    List<Demand> demands() {
        return demands;
    }

    /** Decimal places of all prices: two, or as many as the files use. */
    int decimals() {
        return decimals;
    }

    List<BoardOffer> boards() {
        List<BoardOffer> boards = new ArrayList<>();
        for (PricedBoard b : priced) {
            boards.add(new BoardOffer(b.supplier, b.section, b.ticks, minor(b.price) * b.pack, b.pack, b.available)
                    .soldFrom(b.least));
        }
        return boards;
    }

    List<SupplierTerms> terms() {
        return termsRows.terms();
    }

    /** Whether what is asked for could cost more than can be counted. */
    boolean isBeyondCounting() {
        BigDecimal pieces = BigDecimal.ONE;
        for (Demand demand : demands) {
            pieces = pieces.add(BigDecimal.valueOf(demand.quantity()));
        }
        BigDecimal dearest = BigDecimal.ZERO;
        for (PricedBoard board : priced) {
            dearest = dearest.max(
                    board.price.multiply(BigDecimal.valueOf(board.pack)).multiply(BigDecimal.valueOf(board.least)));
        }
        return dearest.multiply(pieces)
                        .add(termsRows.sumOfThresholds())
                        .movePointRight(decimals + termsRows.parts())
                        .compareTo(MOST_MONEY)
                > 0;
    }

    long minor(BigDecimal amount) {
        return amount.movePointRight(decimals).longValueExact();
    }

    void readPieces(Path path) {
        CsvTable table = new CsvTable(path, faults);
        table.read(() -> hasLength(table), row -> {
            long ticks = length(row, RoundingMode.CEILING);
            int quantity = count(row, "quantity", 1, 0);
            if (!row.isBad() && quantity > 0) {
                demands.add(new Demand(row.text("section"), ticks, quantity, row.text("label")));
            }
        });
    }

    void readBoards(Path path) {
        CsvTable table = new CsvTable(path, faults);
        table.read(() -> hasColumn(table, "price") && hasLength(table), row -> {
            long ticks = length(row, RoundingMode.FLOOR);
            BigDecimal price = money(row, "price", null);
            int available = count(row, "available", Integer.MAX_VALUE, 0);
            int pack = count(row, "pack", 1, 1);
            int least = count(row, "from", 1, 1);
            if (!row.isBad() && price != null) {
                priced.add(new PricedBoard(
                        row.text("supplier"), row.text("section"), ticks, price, pack, available, least));
            }
        });
    }

    void readTerms(Path path) {
        CsvTable table = new CsvTable(path, faults);
        table.read(() -> hasColumn(table, "supplier"), termsRows::read);
    }

    private boolean hasLength(CsvTable table) {
        List<String> columns = table.lengthColumns();
        if (columns.isEmpty()) {
            faults.file(table.name(), CutFaultMessage.LENGTH_COLUMN_MISSING.of());
            return false;
        }
        if (columns.size() > 1 || !LengthCell.TICKS.containsKey(columns.get(0))) {
            faults.file(table.name(), CutFaultMessage.LENGTH_COLUMN_UNCLEAR.of(columns));
            return false;
        }
        lengthColumn = columns.get(0);
        return true;
    }

    private boolean hasColumn(CsvTable table, String column) {
        if (!table.has(column)) {
            faults.file(table.name(), CutFaultMessage.COLUMN_MISSING.of(column));
        }
        return table.has(column);
    }

    private long length(CsvTable.Row row, RoundingMode rounding) {
        String column = lengthColumn == null ? "length_mm" : lengthColumn;
        String text = row.number(column, "length");
        if (row.isBad()) {
            return 0;
        }
        long ticks = LengthCell.ticks(text, column, rounding);
        if (ticks <= 0) {
            CutFaultMessage code = column.equals("length_in")
                    ? CutFaultMessage.LENGTH_NOT_POSITIVE_INCHES
                    : CutFaultMessage.LENGTH_NOT_POSITIVE_NUMBER;
            row.fault(code.of(row.text(column)));
        }
        return ticks;
    }

    private int count(CsvTable.Row row, String column, int otherwise, int least) {
        String text = row.text(column);
        if (text.isEmpty()) {
            return otherwise;
        }
        if (text.matches("\\d{1,10}") && Long.parseLong(text) >= least && Long.parseLong(text) <= MOST_COUNT) {
            return Integer.parseInt(text);
        }
        row.fault(CutFaultMessage.COUNT_OUT_OF_RANGE.of(column, text, least, MOST_COUNT));
        return least;
    }

    @Nullable
    BigDecimal money(CsvTable.Row row, String column, @Nullable BigDecimal otherwise) {
        String text = row.number(column, column.replace('_', ' '));
        if (text.isEmpty() && otherwise != null) {
            return otherwise;
        }
        if (!text.matches("\\d{1,12}(\\.\\d{0,6})?|\\.\\d{1,6}")) {
            if (!row.isBad()) {
                row.fault(CutFaultMessage.AMOUNT_OUT_OF_RANGE.of(column.replace('_', ' '), row.text(column)));
            }
            return null;
        }
        BigDecimal amount = new BigDecimal(text);
        if (!column.equals("tax_percent") && !column.equals("collect_up_to_mm")) {
            decimals = Math.max(decimals, amount.stripTrailingZeros().scale());
        }
        return amount;
    }
}
