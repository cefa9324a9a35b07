package borderwright.pack.sheets;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.worked.Check;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of the strength of boxes that are all alike.
 *
 * @param alike the boxes
 * @param report of the weakest of them
 * @param bows a drawing of each side that bows
 * @param currency code of the money that the cost of each way to build it is in
 */
public record StrengthSheet(List<Box> alike, StrengthReport report, List<Drawing> bows, String currency)
        implements Sheet {
    private static final int LEAST_SHOWN = 3;

    private static final double WORTH_SHOWING = 0.1;

    public StrengthSheet {
        alike = List.copyOf(alike);
        bows = List.copyOf(bows);
    }

    @Override
    public String title() {
        return "Strength of " + report.box();
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }

    /** Checks that use a tenth or more of what there is, and always the first few. */
    public List<Check> shown() {
        List<Check> shown = new ArrayList<>();
        for (Check check : report.checks()) {
            if (shown.size() < LEAST_SHOWN || check.utilisation() >= WORTH_SHOWING) {
                shown.add(check);
            }
        }
        return shown;
    }

    /** Sides that read the same, with their letters. */
    public List<Alike<SideBow>> sides(PrintedFigures f) {
        return Alike.group(
                report.sides(),
                SideBow::letter,
                s -> f.error(s.finalMm()) + s.course() + f.length(s.alongMm()) + f.error(s.passingMm()) + s.holds());
    }

    /** Which box the verdict is about. */
    public String names(PrintedFigures f) {
        return f.text(
                alike.size() == 1
                        ? SheetMessage.STRENGTH_OF_BOX.of(report.box())
                        : SheetMessage.STRENGTH_OF_WEAKEST.of(report.box(), alike.size()));
    }
}
