package borderwright.engine.layout.boxes;

import borderwright.engine.layout.run.BedLevels;
import borderwright.engine.layout.run.Findings;
import borderwright.engine.layout.run.LaidBox;
import borderwright.engine.layout.run.LayoutNotes;
import borderwright.engine.layout.run.RunTerms;
import java.util.List;

/** Reports how the boxes of a run stand on falling ground: what shows, what is buried, where they step. */
public final class SlopeReport {
    /** Falls below this are not seen, mm. */
    private static final double LEVEL_MM = 5;

    private static final double SAME_MM = 0.1;

    private final RunTerms terms;
    private final Findings findings;

    public SlopeReport(RunTerms terms, Findings findings) {
        this.terms = terms;
        this.findings = findings;
    }

    /** Boxes and their levels in the same order. */
    void report(List<LaidBox> boxes, List<BedLevels.Level> levels) {
        double low = levels.stream().mapToDouble(BedLevels.Level::lowMm).min().orElse(0);
        double high = levels.stream().mapToDouble(BedLevels.Level::highMm).max().orElse(0);
        if (high - low < LEVEL_MM) {
            return;
        }
        if (terms.rules().onHardGround()) {
            findings.note(LayoutNotes.onFeet(terms, high - low));
            return;
        }
        if (terms.isStepped()) {
            reportStepped(boxes, levels);
            return;
        }
        double shown = terms.heightMm() - (high - low);
        if (shown < terms.heightMm() / 2) {
            findings.unmet(findings.problemMaker().buriedHighEnd(terms, shown, high - low));
        } else {
            findings.note(LayoutNotes.levelRun(terms, shown, high - low));
        }
    }

    /** Neighbours of one level and height are reported together. */
    private void reportStepped(List<LaidBox> boxes, List<BedLevels.Level> levels) {
        int first = 0;
        for (int i = 0; i < boxes.size(); i++) {
            if (i + 1 < boxes.size() && isAlike(levels.get(i), levels.get(i + 1))) {
                continue;
            }
            if (first > 0) {
                reportStep(boxes.get(first - 1), boxes.get(first));
            }
            findings.note(
                    first == i
                            ? LayoutNotes.steppedBox(boxes.get(i), levels.get(i))
                            : LayoutNotes.steppedBoxes(boxes.get(first), boxes.get(i), levels.subList(first, i + 1)));
            first = i + 1;
        }
    }

    private static boolean isAlike(BedLevels.Level a, BedLevels.Level b) {
        return Math.abs(a.bedMm() - b.bedMm()) < SAME_MM && Math.abs(a.heightMm() - b.heightMm()) < SAME_MM;
    }

    private void reportStep(LaidBox before, LaidBox after) {
        double step = after.plan().bedMm() - before.plan().bedMm();
        if (Math.abs(step) > LEVEL_MM) {
            findings.note(LayoutNotes.step(before, after, step, terms));
        }
    }
}
