package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Entries;
import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.buying.boards.ModelColumn.Takes;
import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The rows of a model and its columns in whole numbers: pieces first, then boards that are counted, then side rows.
 *
 * <p>Boards are counted, that is have a column for packs bought and a row "packs less patterns", where they are limited,
 * sold in packs or at a quantity price, or couple with a side row, and wherever there is a choice of boards: how many of
 * each are bought decides the cost, so a search branches on it. Where one board is to be had without limit its patterns
 * carry the cost.
 */
public final class ModelRows {
    public final BoardModel model;
    final int count;
    private final List<PartRows> parts = new ArrayList<>();
    final int sideFrom;
    private final int floorFrom;
    /** Least whole value of each row. */
    final long[] required;
    /** Cost of the dearest board: the linear programme's unit of cost. */
    final double costUnit;

    /** The rows of a part. */
    private static final class PartRows {
        /** Row of its first size; the others follow. */
        final int firstSize;
        /** Row of each board, -1 where it is not counted. */
        final int[] ofBoard;
        /** First of two rows for each total, "boards less total" and "total less boards". */
        final int firstTotal;
        /** Least length of the boards in each total. */
        final long[] totalFrom;

        PartRows(int firstSize, int[] ofBoard, int firstTotal, long[] totalFrom) {
            this.firstSize = firstSize;
            this.ofBoard = ofBoard;
            this.firstTotal = firstTotal;
            this.totalFrom = totalFrom;
        }

        int ofTotal(int t) {
            return firstTotal + 2 * t;
        }
    }

    ModelRows(BoardModel model) {
        this.model = model;
        int[] firstSize = new int[parts()];
        int[][] ofBoard = new int[parts()][];
        int rows = 0;
        double dearest = 1;
        for (int part = 0; part < parts(); part++) {
            firstSize[part] = rows;
            rows += stock(part).sizes();
        }
        for (int part = 0; part < parts(); part++) {
            StockCase stock = stock(part);
            boolean counted = areCounted(part);
            ofBoard[part] = new int[stock.boards()];
            for (int board = 0; board < stock.boards(); board++) {
                dearest = Math.max(dearest, stock.cost(board) / (double) stock.pack(board));
                ofBoard[part][board] = counted && isUsable(part, board) ? rows++ : -1;
            }
        }
        for (int part = 0; part < parts(); part++) {
            long[] totalFrom = lengths(stock(part), ofBoard[part]);
            parts.add(new PartRows(firstSize[part], ofBoard[part], rows, totalFrom));
            rows += 2 * totalFrom.length;
        }
        this.sideFrom = rows;
        this.floorFrom = rows + model.need.length;
        this.count = floorFrom + model.floors.size();
        this.costUnit = dearest;
        this.required = new long[count];
        fillRequired();
    }

    private void fillRequired() {
        for (int part = 0; part < parts(); part++) {
            for (int size = 0; size < stock(part).sizes(); size++) {
                required[rowOfSize(part, size)] = stock(part).demand(size);
            }
        }
        System.arraycopy(model.need, 0, required, sideFrom, model.need.length);
        for (int f = 0; f < model.floors.size(); f++) {
            required[floorFrom + f] = model.floors.get(f).least;
        }
    }

    /** Whether the boards of a part are counted, as far as they are to be had. */
    private boolean areCounted(int part) {
        StockCase stock = stock(part);
        int usable = 0;
        boolean plain = !stock.keeps() && model.floors.stream().noneMatch(f -> f.part == part);
        for (int board = 0; board < stock.boards(); board++) {
            if (isUsable(part, board)) {
                usable++;
                plain &= !stock.isPacked(board)
                        && stock.least(board) == 1
                        && stock.available(board) >= stock.pieces()
                        && model.side(part, board).isNone();
            }
        }
        return usable > 1 || !plain;
    }

    /** Lengths of the boards that are counted, except where only one board is as long. */
    private static long[] lengths(StockCase stock, int[] row) {
        return IntStream.range(0, row.length)
                .filter(board -> row[board] >= 0)
                .mapToLong(stock::capacity)
                .distinct()
                .sorted()
                .filter(length -> IntStream.range(0, row.length)
                                .filter(board -> row[board] >= 0 && stock.capacity(board) >= length)
                                .count()
                        > 1)
                .toArray();
    }

    /** Whether a pack of a board is to be had at all. */
    boolean isUsable(int part, int board) {
        return stock(part).available(board) >= stock(part).pack(board);
    }

    int parts() {
        return model.parts.size();
    }

    /** Pieces and boards of a part. */
    StockCase stock(int part) {
        return model.parts.get(part);
    }

    /** Row of a part's size. */
    int rowOfSize(int part, int size) {
        return parts.get(part).firstSize + size;
    }

    /** Row of a part's board; only where it is counted. */
    int rowOfBoard(int part, int board) {
        return parts.get(part).ofBoard[board];
    }

    /** Whether a board has a row of its own. */
    boolean isCounted(int part, int board) {
        return parts.get(part).ofBoard[board] >= 0;
    }

    /** Whether no board of any part has a row of its own. */
    boolean countsNoBoard() {
        return parts.stream().allMatch(part -> Arrays.stream(part.ofBoard).allMatch(row -> row < 0));
    }

    /** What one whole unit of a row counts in the linear programme: side rows are scaled to require 1. */
    double unit(int row) {
        return row >= sideFrom ? 1.0 / Math.max(1, required[row]) : 1;
    }

    /**
     * Columns for totals, counts and extras.
     *
     * @param ceiling greatest cost of interest
     */
    List<ModelColumn> fixedColumns(long ceiling) {
        List<ModelColumn> columns = new ArrayList<>();
        for (int part = 0; part < parts(); part++) {
            for (int board = 0; board < stock(part).boards(); board++) {
                if (isCounted(part, board)) {
                    columns.add(count(part, board, ceiling));
                }
            }
            for (int t = 0; t < parts.get(part).totalFrom.length; t++) {
                columns.add(total(part, t, columns));
            }
        }
        for (int e = 0; e < model.extras.size(); e++) {
            BoardModel.Extra extra = model.extras.get(e);
            int[] row = extra.sides().stream()
                    .mapToInt(side -> side.row() + sideFrom)
                    .toArray();
            long[] value =
                    extra.sides().stream().mapToLong(BoardModel.Side::value).toArray();
            columns.add(ModelColumn.extra(
                    e, extra.cost(), new Entries(row, value), new Takes(extra.least(), extra.most())));
        }
        return columns;
    }

    private ModelColumn total(int part, int t, List<ModelColumn> columns) {
        StockCase stock = stock(part);
        double most = 0;
        for (ModelColumn column : columns) {
            if (column.kind() == Kind.COUNT
                    && column.part() == part
                    && stock.capacity(column.index()) >= parts.get(part).totalFrom[t]) {
                most += (double) column.most() * stock.pack(column.index());
            }
        }
        return ModelColumn.total(
                part, parts.get(part).ofTotal(t), Takes.upTo((long) Math.min(most, Math.scalb(1.0, 40))));
    }

    private ModelColumn count(int part, int board, long ceiling) {
        StockCase stock = stock(part);
        BoardModel.Side side = model.side(part, board);
        int pack = stock.pack(board);
        long boards = model.mostBoards(part, board, Math.max(ceiling, 0));
        PartRows its = parts.get(part);
        int totals = 0;
        while (totals < its.totalFrom.length && its.totalFrom[totals] <= stock.capacity(board)) {
            totals++;
        }
        int[] floors = IntStream.range(0, model.floors.size())
                .filter(f -> model.floors.get(f).part == part)
                .toArray();
        int[] row = new int[1 + 2 * totals + (side.isNone() ? 0 : 1) + floors.length];
        long[] entry = new long[row.length];
        row[0] = its.ofBoard[board];
        entry[0] = pack;
        for (int t = 0; t < totals; t++) {
            row[1 + 2 * t] = its.ofTotal(t);
            entry[1 + 2 * t] = pack;
            row[2 + 2 * t] = its.ofTotal(t) + 1;
            entry[2 + 2 * t] = -pack;
        }
        int at = 1 + 2 * totals;
        for (int f : floors) {
            row[at] = floorFrom + f;
            entry[at++] = model.floors.get(f).value[board];
        }
        if (!side.isNone()) {
            row[at] = sideFrom + side.row();
            entry[at] = side.value();
        }
        long most = Math.min(stock.available(board) / pack, (boards + pack - 1) / pack);
        return ModelColumn.count(
                part, board, stock.cost(board), new Entries(row, entry), new Takes(stock.least(board), most));
    }

    /** The column of a pattern. */
    ModelColumn pattern(int part, CuttingPattern pattern) {
        StockCase stock = stock(part);
        int board = pattern.board();
        int n = pattern.kinds();
        boolean counted = isCounted(part, board);
        int[] row = new int[counted ? n + 1 : n];
        long[] entry = new long[row.length];
        long needed = 0;
        for (int k = 0; k < n; k++) {
            int size = pattern.item(k);
            row[k] = rowOfSize(part, size);
            entry[k] = pattern.count(k);
            needed = Math.max(needed, (stock.demand(size) + pattern.count(k) - 1L) / pattern.count(k));
        }
        if (counted) {
            row[n] = rowOfBoard(part, board);
            entry[n] = -1;
        }
        long most = Math.min(stock.available(board), needed);
        long use = stock.keeps() ? stock.use(board, pattern.used(stock)) : 0;
        long cost = (counted ? 0 : stock.cost(board)) + use;
        return ModelColumn.pattern(part, pattern, cost, new Entries(row, entry), Takes.upTo(most));
    }

    /** Adds a column to a linear programme; its number there. */
    int addTo(LinearProgram program, ModelColumn column, double upper) {
        double[] entries = new double[column.entries()];
        for (int k = 0; k < entries.length; k++) {
            entries[k] = column.entry(k) * unit(column.row(k));
        }
        return program.add(column.cost() / costUnit, column.copyOfRows(), entries, upper);
    }

    /** A linear programme of these rows without columns; {@code dear} is what a unit of a row costs that is not met. */
    LinearProgram program(double dear) {
        double[] least = new double[count];
        double[] artificial = new double[count];
        for (int r = 0; r < count; r++) {
            least[r] = required[r] * unit(r);
            artificial[r] = dear * Math.max(1, r >= sideFrom ? 10 : 1);
        }
        return new LinearProgram(least, artificial);
    }
}
