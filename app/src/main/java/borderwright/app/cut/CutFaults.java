package borderwright.app.cut;

import java.util.ArrayList;
import java.util.List;

/** Faults found in the files, every one of them, each with its file and line; and remarks that are no faults. */
final class CutFaults {
    /** Faults written out one by one; a file with more is mostly wrong, and its first lines show how. */
    private static final int MOST_SHOWN = 1000;

    private final List<String> rows = new ArrayList<>();
    private final List<String> files = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private long unshown;

    /** A fault of one row; {@code --skip-bad} may pass over it. */
    void row(String file, long line, String sentence) {
        if (rows.size() < MOST_SHOWN) {
            rows.add(file + ":" + line + ": " + sentence);
        } else {
            unshown++;
        }
    }

    /** A fault of a whole file; nothing passes over it. */
    void file(String file, String sentence) {
        files.add(file + ": " + sentence);
    }

    void remark(String file, String sentence) {
        remarks.add(file + ": " + sentence);
    }

    boolean hasRowFaults() {
        return !rows.isEmpty();
    }

    boolean hasFileFaults() {
        return !files.isEmpty();
    }

    List<String> remarks() {
        return remarks;
    }

    /** Every fault, those of whole files first. */
    List<String> all() {
        List<String> all = new ArrayList<>(files);
        all.addAll(rows);
        if (unshown > 0) {
            all.add("and " + unshown + " more.");
        }
        return all;
    }
}
