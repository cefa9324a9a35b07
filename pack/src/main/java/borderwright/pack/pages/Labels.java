package borderwright.pack.pages;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.plan.Plan;
import borderwright.pack.drawings.CodeDrawing;
import java.util.ArrayList;
import java.util.List;

/** Labels for every planter and every board: a name to be read from afar, a line or two, and a QR code of the same in full. */
final class Labels {
    /** So much text keeps the code's squares large enough for an old telephone at arm's length. */
    private static final int MOST_CODED = 180;

    private static final int MOST_SHOWN = 70;
    private static final double CODE_MM = 22;

    private Labels() {}

    static SiteSheet.LabelSheet of(Plan plan, Figures f) {
        List<SiteSheet.Label> planters = new ArrayList<>();
        for (SoilVolume planter : plan.site().filling().planters()) {
            planters.add(label(
                    planter.planter(),
                    List.of(
                            "soil " + f.length(planter.depthMm()) + " deep, "
                                    + f.lengths().volume(planter.orderedM3()) + " to order",
                            "box " + planter.box()),
                    plan.garden().name()));
        }
        List<SiteSheet.Label> boards = new ArrayList<>();
        for (CuttingPlan.BoardCuts board : plan.cutting().boards()) {
            String pieces = String.join(
                    ", ", board.cuts().stream().map(CuttingPlan.Cut::label).toList());
            boards.add(label(
                    board.id(),
                    List.of(board.section() + ", " + f.site(board.length().mm()), pieces),
                    plan.garden().name()));
        }
        return new SiteSheet.LabelSheet(planters, boards);
    }

    private static SiteSheet.Label label(String name, List<String> lines, String garden) {
        String all = name + "\n" + String.join("\n", lines) + "\n" + garden;
        String coded = shortened(all, MOST_CODED);
        return new SiteSheet.Label(
                name,
                lines.stream().map(line -> shortened(line, MOST_SHOWN)).toList(),
                CodeDrawing.draw(coded, CODE_MM, "QR code: " + coded.replace("\n", "; ")));
    }

    private static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 1) + "\u2026";
    }
}
