package borderwright.app.cut;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.engine.problem.Problem;
import borderwright.pack.language.Language;
import java.util.ArrayList;
import java.util.List;

/** Faults found in the files, every one of them, each with its file and line; and remarks that are no faults. */
final class CutFaults {
    /** Faults written out one by one; a file with more is mostly wrong, and its first lines show how. */
    private static final int MOST_SHOWN = 1000;

    /** Everything that {@code cut} writes; its lengths are in millimetres. */
    static final Sentences SENTENCES = Language.english().in(UnitSystem.METRIC);

    private final List<Problem> rows = new ArrayList<>();
    private final List<Problem> files = new ArrayList<>();
    private final List<Problem> remarks = new ArrayList<>();
    private long unshown;

    /** A fault of one row; {@code --skip-bad} may pass over it. */
    void row(String file, long line, Message message) {
        if (rows.size() < MOST_SHOWN) {
            rows.add(new Problem(file + ":" + line, message));
        } else {
            unshown++;
        }
    }

    /** A fault of a whole file or of an option; nothing passes over it. */
    void file(String file, Message message) {
        files.add(new Problem(file, message));
    }

    void remark(String file, Message message) {
        remarks.add(new Problem(file, message));
    }

    boolean hasRowFaults() {
        return !rows.isEmpty();
    }

    boolean hasFileFaults() {
        return !files.isEmpty();
    }

    long count() {
        return files.size() + rows.size() + unshown;
    }

    List<String> remarks() {
        return remarks.stream().map(CutFaults::line).toList();
    }

    /** Every fault, those of whole files first. */
    List<String> all() {
        List<String> all = new ArrayList<>();
        files.forEach(fault -> all.add(line(fault)));
        rows.forEach(fault -> all.add(line(fault)));
        if (unshown > 0) {
            all.add(SENTENCES.text(CutFaultMessage.MORE_FAULTS.of(unshown)));
        }
        return all;
    }

    private static String line(Problem fault) {
        return fault.where() + ": " + fault.sentence(SENTENCES);
    }
}
