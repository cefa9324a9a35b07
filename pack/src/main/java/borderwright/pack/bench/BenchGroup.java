package borderwright.pack.bench;

import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Pieces of one kind at one height, which share a heading on paper, so that a page has room for a whole wall.
 *
 * @param what they are
 * @param shared what holds of all of them: heights, and notes
 * @param items each with its place, in the order of the rows
 */
public record BenchGroup(String what, String shared, List<Item> items) {
    public BenchGroup {
        items = List.copyOf(items);
    }

    /**
     * One piece.
     *
     * @param label its mark
     * @param place its two edges from the hook
     * @param note what holds of it alone; empty for nothing
     */
    public record Item(String label, String place, String note) {
        private double widthEm() {
            return TypeFace.BOLD.widthEm(label) + TypeFace.REGULAR.widthEm("   " + place + note);
        }
    }

    /** How many stand side by side on a page. */
    public int columns() {
        return Rows.columns(items.stream().mapToDouble(Item::widthEm).max().orElse(0));
    }

    /** The items in rows. */
    public List<List<Item>> rows(int columns) {
        return Rows.of(items, columns);
    }

    /** Of a wall or divider: each piece has its place along it, and its heights where they are not those of all. */
    static List<BenchGroup> ofWall(List<BenchRow> rows, PrintedFigures f) {
        return byKind(rows).stream().map(kind -> onWall(kind, f)).toList();
    }

    /** Of a floor: each piece has its place along the slats and across them. */
    static List<BenchGroup> ofFloor(List<BenchRow> rows) {
        return byKind(rows).stream()
                .map(kind -> group(kind, "", BenchRow::along, common(kind)))
                .toList();
    }

    private static List<List<BenchRow>> byKind(List<BenchRow> rows) {
        Map<String, List<BenchRow>> byKind = new LinkedHashMap<>();
        rows.forEach(row ->
                byKind.computeIfAbsent(row.what(), k -> new ArrayList<>()).add(row));
        return List.copyOf(byKind.values());
    }

    private static BenchGroup onWall(List<BenchRow> kind, PrintedFigures f) {
        List<BenchRow> stacks = stacked(kind, f);
        BenchRow first = stacks.get(0);
        boolean level = stacks.stream()
                .allMatch(
                        row -> row.bottom().equals(first.bottom()) && row.top().equals(first.top()));
        String heights = level ? up(first, f) : "";
        return group(stacks, heights, row -> row.along() + (level ? "" : ", " + up(row, f)), common(stacks));
    }

    /** Boards of one divider meet a wall one above the other: they are one line. */
    private static List<BenchRow> stacked(List<BenchRow> kind, PrintedFigures f) {
        List<BenchRow> stacks = new ArrayList<>();
        String lowest = "";
        for (BenchRow row : kind) {
            BenchRow below = stacks.isEmpty() ? null : stacks.get(stacks.size() - 1);
            if (below != null
                    && below.along().equals(row.along())
                    && below.top().equals(row.bottom())
                    && below.notes().equals(row.notes())) {
                stacks.set(
                        stacks.size() - 1,
                        new BenchRow(
                                row.what(),
                                f.text(BenchMessage.BENCH_LABELS.of(lowest, row.label())),
                                row.along(),
                                below.bottom(),
                                row.top(),
                                row.notes()));
            } else {
                lowest = row.label();
                stacks.add(row);
            }
        }
        return stacks;
    }

    private static List<String> common(List<BenchRow> kind) {
        List<String> common = new ArrayList<>(kind.get(0).notes());
        kind.forEach(row -> common.retainAll(row.notes()));
        return common;
    }

    private static BenchGroup group(
            List<BenchRow> kind, String heights, Function<BenchRow, String> place, List<String> common) {
        List<Item> items = new ArrayList<>();
        for (BenchRow row : kind) {
            List<String> own = new ArrayList<>(row.notes());
            own.removeAll(common);
            items.add(new Item(row.label(), place.apply(row), String.join("; ", own)));
        }
        List<String> shared = new ArrayList<>(common);
        if (!heights.isEmpty()) {
            shared.add(0, heights);
        }
        return new BenchGroup(kind.get(0).what(), String.join(", ", shared), items);
    }

    private static String up(BenchRow row, PrintedFigures f) {
        return f.text(BenchMessage.BENCH_UP.of(new HookedTape(f, HookedTape.On.BOARD).joined(row.bottom(), row.top())));
    }
}
