package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Entries;
import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.buying.boards.ModelColumn.Takes;
import borderwright.engine.linear.LinearProgram;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
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
    /** First row of each part's sizes. */
    final int[] itemRow;
    /** Row of each board, -1 where it is not counted. */
    final int[][] boardRow;

    /**
     * Two rows for each total, "boards less total" and "total less boards"; totals are of boards of at least a length.
     */
    private final int[][] totalRow;

    private final long[][] totalFrom;
    final int sideFrom;
    private final int floorFrom;
    /** Least whole value of each row. */
    final long[] required;
    /** Cost of the dearest board: the linear programme's unit of cost. */
    final double costUnit;

    ModelRows(BoardModel model) {
        this.model = model;
        int parts = model.parts.size();
        this.itemRow = new int[parts];
        this.boardRow = new int[parts][];
        int rows = 0;
        double dearest = 1;
        for (int s = 0; s < parts; s++) {
            itemRow[s] = rows;
            rows += model.parts.get(s).sizes();
        }
        for (int s = 0; s < parts; s++) {
            StockCase stock = model.parts.get(s);
            boolean counted = isCounted(s);
            boardRow[s] = new int[stock.boards()];
            for (int j = 0; j < stock.boards(); j++) {
                dearest = Math.max(dearest, stock.cost(j) / (double) stock.pack(j));
                boardRow[s][j] = counted && isUsable(s, j) ? rows++ : -1;
            }
        }
        this.totalRow = new int[parts][];
        this.totalFrom = new long[parts][];
        for (int s = 0; s < parts; s++) {
            totalFrom[s] = lengths(s);
            totalRow[s] = new int[totalFrom[s].length];
            for (int t = 0; t < totalRow[s].length; t++) {
                totalRow[s][t] = rows;
                rows += 2;
            }
        }
        this.sideFrom = rows;
        this.floorFrom = rows + model.need.length;
        this.count = floorFrom + model.floors.size();
        this.costUnit = dearest;
        this.required = new long[count];
        fillRequired();
    }

    private void fillRequired() {
        for (int s = 0; s < itemRow.length; s++) {
            for (int i = 0; i < model.parts.get(s).sizes(); i++) {
                required[itemRow[s] + i] = model.parts.get(s).demand(i);
            }
        }
        System.arraycopy(model.need, 0, required, sideFrom, model.need.length);
        for (int f = 0; f < model.floors.size(); f++) {
            required[floorFrom + f] = model.floors.get(f).least;
        }
    }

    private boolean isCounted(int s) {
        StockCase stock = model.parts.get(s);
        int usable = 0;
        boolean plain = !stock.keeps() && model.floors.stream().noneMatch(f -> f.part == s);
        for (int j = 0; j < stock.boards(); j++) {
            if (isUsable(s, j)) {
                usable++;
                plain &= !stock.isPacked(j)
                        && stock.least(j) == 1
                        && stock.available(j) >= stock.pieces()
                        && model.side(s, j).isNone();
            }
        }
        return usable > 1 || !plain;
    }

    /** Lengths of the boards that are counted, except where only one board is as long. */
    private long[] lengths(int s) {
        StockCase stock = model.parts.get(s);
        int[] row = boardRow[s];
        return IntStream.range(0, row.length)
                .filter(j -> row[j] >= 0)
                .mapToLong(stock::capacity)
                .distinct()
                .sorted()
                .filter(length -> IntStream.range(0, row.length)
                                .filter(j -> row[j] >= 0 && stock.capacity(j) >= length)
                                .count()
                        > 1)
                .toArray();
    }

    /** Whether a pack of a board is to be had at all. */
    boolean isUsable(int s, int j) {
        return model.parts.get(s).available(j) >= model.parts.get(s).pack(j);
    }

    /** Row of a part's size. */
    int rowOfSize(int s, int i) {
        return itemRow[s] + i;
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
        for (int s = 0; s < boardRow.length; s++) {
            for (int j = 0; j < boardRow[s].length; j++) {
                if (boardRow[s][j] >= 0) {
                    columns.add(count(s, j, ceiling));
                }
            }
            for (int t = 0; t < totalRow[s].length; t++) {
                columns.add(total(s, t, columns));
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

    private ModelColumn total(int s, int t, List<ModelColumn> columns) {
        StockCase stock = model.parts.get(s);
        double most = 0;
        for (ModelColumn column : columns) {
            if (column.kind() == Kind.COUNT
                    && column.part() == s
                    && stock.capacity(column.index()) >= totalFrom[s][t]) {
                most += (double) column.most() * stock.pack(column.index());
            }
        }
        return ModelColumn.total(s, totalRow[s][t], Takes.upTo((long) Math.min(most, Math.scalb(1.0, 40))));
    }

    private ModelColumn count(int s, int j, long ceiling) {
        StockCase stock = model.parts.get(s);
        BoardModel.Side side = model.side(s, j);
        int pack = stock.pack(j);
        long boards = model.mostBoards(s, j, Math.max(ceiling, 0));
        int totals = 0;
        while (totals < totalFrom[s].length && totalFrom[s][totals] <= stock.capacity(j)) {
            totals++;
        }
        int[] floors = IntStream.range(0, model.floors.size())
                .filter(f -> model.floors.get(f).part == s)
                .toArray();
        int[] row = new int[1 + 2 * totals + (side.isNone() ? 0 : 1) + floors.length];
        long[] entry = new long[row.length];
        row[0] = boardRow[s][j];
        entry[0] = pack;
        for (int t = 0; t < totals; t++) {
            row[1 + 2 * t] = totalRow[s][t];
            entry[1 + 2 * t] = pack;
            row[2 + 2 * t] = totalRow[s][t] + 1;
            entry[2 + 2 * t] = -pack;
        }
        int at = 1 + 2 * totals;
        for (int f : floors) {
            row[at] = floorFrom + f;
            entry[at++] = model.floors.get(f).value[j];
        }
        if (!side.isNone()) {
            row[at] = sideFrom + side.row();
            entry[at] = side.value();
        }
        long most = Math.min(stock.available(j) / pack, (boards + pack - 1) / pack);
        return ModelColumn.count(s, j, stock.cost(j), new Entries(row, entry), new Takes(stock.least(j), most));
    }

    /** The column of a pattern. */
    ModelColumn pattern(int s, CuttingPattern pattern) {
        StockCase stock = model.parts.get(s);
        int j = pattern.board();
        int n = pattern.kinds();
        boolean counted = boardRow[s][j] >= 0;
        int[] row = new int[counted ? n + 1 : n];
        long[] entry = new long[row.length];
        long needed = 0;
        for (int k = 0; k < n; k++) {
            int i = pattern.item(k);
            row[k] = itemRow[s] + i;
            entry[k] = pattern.count(k);
            needed = Math.max(needed, (stock.demand(i) + pattern.count(k) - 1L) / pattern.count(k));
        }
        if (counted) {
            row[n] = boardRow[s][j];
            entry[n] = -1;
        }
        long most = Math.min(stock.available(j), needed);
        long use = stock.keeps() ? stock.use(j, pattern.used(stock)) : 0;
        long cost = (counted ? 0 : stock.cost(j)) + use;
        return ModelColumn.pattern(s, pattern, cost, new Entries(row, entry), Takes.upTo(most));
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
