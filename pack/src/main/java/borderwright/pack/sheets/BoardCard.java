package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.figures.NameRanges;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.List;

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
        return first().cuts().stream().anyMatch(cut -> !note(cut).isEmpty());
    }

    /** How a cut is made, where not straight on; empty where it is. */
    public String note(int cut) {
        return note(first().cuts().get(cut));
    }

    private static String note(CuttingPlan.Cut cut) {
        List<String> notes = new ArrayList<>();
        if (cut.turnedOver()) {
            notes.add("face down");
        }
        if (cut.endForEnd() && !(isSquare(cut.left()) && isSquare(cut.right()))) {
            notes.add("end for end");
        }
        // A square cut always parts two pieces.
        if (cut.sharesCut() && !isSquare(cut.left())) {
            notes.add("shares the cut before it");
        }
        return String.join("; ", notes);
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
