package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.figures.NameRanges;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Boards that are cut alike, drawn once.
 *
 * @param alike the boards, in the order in which they are cut
 * @param drawing one for all: it names the pieces of a single board, and numbers those of several
 */
public record BoardCard(List<CuttingPlan.BoardCuts> alike, Drawing drawing) {
    public BoardCard {
        alike = List.copyOf(alike);
    }

    /** Whether so many boards are cut alike that it counts them and says in short what they give. */
    public boolean counts() {
        return alike.size() > AlikeBoards.MOST;
    }

    /** Whether any of its cuts is made otherwise than straight on. */
    public boolean hasNotes() {
        return first().cuts().stream().anyMatch(cut -> !notes(cut).isEmpty());
    }

    /** How a cut is made, where not straight on; empty where it is. */
    public String note(int cut, PrintedFigures f) {
        return notes(first().cuts().get(cut)).stream()
                .map(note -> f.text(note.of()))
                .collect(Collectors.joining("; "));
    }

    private static List<SheetMessage> notes(CuttingPlan.Cut cut) {
        List<SheetMessage> notes = new ArrayList<>();
        if (cut.turnedOver()) {
            notes.add(SheetMessage.CUT_FACE_DOWN);
        }
        if (cut.endForEnd() && !(isSquare(cut.left()) && isSquare(cut.right()))) {
            notes.add(SheetMessage.CUT_END_FOR_END);
        }
        // A square cut always separates two pieces.
        if (cut.sharesCut() && !isSquare(cut.left())) {
            notes.add(SheetMessage.CUT_SHARED);
        }
        return notes;
    }

    private static boolean isSquare(CuttingPlan.Slant slant) {
        return slant.equals(CuttingPlan.Slant.SQUARE);
    }

    /** The boards' numbers in short. */
    public String names() {
        return NameRanges.numbers(
                alike.stream().map(CuttingPlan.BoardCuts::number).toList());
    }

    /** What the cuts at one place of all the boards give, in short. */
    public List<String> parts(int cut) {
        return PartLabels.inShort(
                alike.stream().map(board -> board.cuts().get(cut).label()).toList());
    }

    public CuttingPlan.BoardCuts first() {
        return alike.get(0);
    }
}
