package borderwright.engine.layout;

import java.util.List;

/** Says how the boxes of a run stand on falling ground: what shows, what is buried, where they step. */
final class SlopeReport {
    /** Falls below this are not seen, mm. */
    private static final double LEVEL_MM = 5;

    private final RunTerms terms;
    private final LayoutWords words;
    private final Findings findings;

    SlopeReport(RunTerms terms, LayoutWords words, Findings findings) {
        this.terms = terms;
        this.words = words;
        this.findings = findings;
    }

    /** Boxes and their levels in the same order. */
    void tell(List<LaidBox> boxes, List<BedLevels.Level> levels) {
        double low = levels.stream().mapToDouble(BedLevels.Level::lowMm).min().orElse(0);
        double high = levels.stream().mapToDouble(BedLevels.Level::highMm).max().orElse(0);
        if (high - low < LEVEL_MM) {
            return;
        }
        if (terms.rules().onHardGround()) {
            findings.note(words.onFeet(terms, high - low));
            return;
        }
        if (terms.isStepped()) {
            for (int i = 0; i < boxes.size(); i++) {
                findings.note(words.steppedBox(boxes.get(i), levels.get(i)));
                if (i > 0) {
                    tellStep(boxes.get(i - 1), boxes.get(i));
                }
            }
            return;
        }
        double shown = terms.heightMm() - (high - low);
        if (shown < terms.heightMm() / 2) {
            findings.unmet(words.buriedHighEnd(terms, shown, high - low));
        } else {
            findings.note(words.levelRun(terms, shown, high - low));
        }
    }

    private void tellStep(LaidBox before, LaidBox after) {
        double step = after.plan().bedMm() - before.plan().bedMm();
        if (Math.abs(step) > LEVEL_MM) {
            findings.note(words.step(before, after, step, terms));
        }
    }
}
