package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.plan.Plan;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.drawings.LabelPage.Label;
import borderwright.pack.figures.NameRanges;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.List;

/** Labels for every planter and every board, or stack of boards cut alike: a name to read from afar, a line or two, and a QR code of the same in full. */
public final class LabelSheets {
    /** So much text keeps the code's squares large enough for an old telephone at arm's length. */
    private static final int MOST_CODED = 180;

    private LabelSheets() {}

    public static List<Label> of(Plan plan, PrintedFigures f) {
        List<Label> labels = new ArrayList<>();
        for (SoilVolume planter : plan.site().filling().planters()) {
            labels.add(label(
                    planter.planter(),
                    List.of(
                            f.text(SheetMessage.LABEL_SOIL.of(planter.depthMm(), planter.orderedM3())),
                            f.text(SheetMessage.LABEL_BOX.of(planter.box()))),
                    plan.garden().name()));
        }
        for (List<CuttingPlan.BoardCuts> alike : AlikeBoards.group(plan.cutting())) {
            if (alike.size() > AlikeBoards.MOST) {
                labels.add(label(
                        f.text(SheetMessage.LABEL_STACK.of(alike.size())),
                        ofStack(alike, f),
                        plan.garden().name()));
            } else {
                alike.forEach(board -> labels.add(label(
                        f.text(SheetMessage.LABEL_BOARD.of(Integer.toString(board.number()))),
                        List.of(described(board, f), pieces(board)),
                        plan.garden().name())));
            }
        }
        return labels;
    }

    private static String described(CuttingPlan.BoardCuts board, PrintedFigures f) {
        return board.section() + ", " + f.site(board.length().mm());
    }

    private static String pieces(CuttingPlan.BoardCuts board) {
        return String.join(
                ", ", board.cuts().stream().map(CuttingPlan.Cut::label).toList());
    }

    /** One label for the stack: sixty boards cut alike lie on one heap. */
    private static List<String> ofStack(List<CuttingPlan.BoardCuts> alike, PrintedFigures f) {
        CuttingPlan.BoardCuts first = alike.get(0);
        String cuts = String.join(
                " + ", first.cuts().stream().map(cut -> f.piece(cut.length())).toList());
        return List.of(
                described(first, f),
                cuts,
                f.text(SheetMessage.LABEL_STACK_NUMBERS.of(NameRanges.numbers(
                        alike.stream().map(CuttingPlan.BoardCuts::number).toList()))));
    }

    private static Label label(String name, List<String> lines, String garden) {
        String all = name + "\n" + String.join("\n", lines) + "\n" + garden;
        String coded = all.length() <= MOST_CODED ? all : all.substring(0, MOST_CODED - 1) + "\u2026";
        return new Label(name, lines, coded);
    }
}
