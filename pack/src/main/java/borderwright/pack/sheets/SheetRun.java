package borderwright.pack.sheets;

import borderwright.pack.paper.Orientation;
import java.util.ArrayList;
import java.util.List;

/**
 * Sheets that follow each other on the same pages: those of one part that lie the same way.
 *
 * @param part of all of them
 * @param orientation of all of them
 * @param sheets in their order
 */
public record SheetRun(Part part, Orientation orientation, List<Sheet> sheets) {
    public SheetRun {
        sheets = List.copyOf(sheets);
    }

    /** Cuts a list of sheets into runs. */
    public static List<SheetRun> of(List<Sheet> sheets) {
        List<SheetRun> runs = new ArrayList<>();
        List<Sheet> run = new ArrayList<>();
        for (Sheet sheet : sheets) {
            if (!run.isEmpty() && !follows(run.get(0), sheet)) {
                runs.add(one(run));
                run = new ArrayList<>();
            }
            run.add(sheet);
        }
        if (!run.isEmpty()) {
            runs.add(one(run));
        }
        return runs;
    }

    private static boolean follows(Sheet first, Sheet next) {
        return first.part() == next.part() && first.orientation() == next.orientation();
    }

    private static SheetRun one(List<Sheet> sheets) {
        return new SheetRun(sheets.get(0).part(), sheets.get(0).orientation(), sheets);
    }
}
