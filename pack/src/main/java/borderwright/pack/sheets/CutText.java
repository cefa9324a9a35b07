package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.SawSetting;
import borderwright.engine.message.Message;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One cut of a board as it is printed.
 *
 * @param number its place on the board
 * @param length long point to long point
 * @param start from the left end of the board to the left long point
 * @param cards the set-up of its left end, where the cut before has not made it, and that of its right end
 * @param how how it lies where not as usual, and where a slanted left end has its long point; empty for nothing
 */
public record CutText(String number, String length, String start, String cards, String how) {
    /** A cut of a plan. */
    public static CutText of(int index, CuttingPlan.Cut cut, CuttingPlan cutting, PrintedFigures f) {
        Optional<CuttingPlan.SetUp> left = cutting.leftSetUp(cut);
        return new CutText(
                Integer.toString(index + 1),
                f.piece(cut.length()),
                f.text(SheetMessage.CUT_AT.of(cut.start().mm())),
                cutting.rightSetUp(cut).map(right -> f.text(cards(left, right))).orElse(""),
                notes(cut, left).stream().map(f::text).collect(Collectors.joining("; ")));
    }

    private static Message cards(Optional<CuttingPlan.SetUp> left, CuttingPlan.SetUp right) {
        return left.map(fresh -> SheetMessage.CUT_CARDS.of(fresh.number(), right.number()))
                .orElseGet(() -> SheetMessage.CUT_CARD.of(right.number()));
    }

    private static List<Message> notes(CuttingPlan.Cut cut, Optional<CuttingPlan.SetUp> left) {
        List<Message> notes = new ArrayList<>();
        boolean slants = !isSquare(cut.left()) || !isSquare(cut.right());
        if (cut.turnedOver() && slants) {
            notes.add(SheetMessage.CUT_FACE_DOWN.of());
        }
        if (cut.endForEnd() && slants) {
            notes.add(SheetMessage.CUT_END_FOR_END.of());
        }
        if (!isSquare(cut.left())) {
            left.ifPresent(setUp -> notes.add(SheetMessage.CUT_STARTS_ON.of(point(cut.left(), setUp.setting()))));
        }
        return notes;
    }

    /** Where the long point of a slanted left end lies on the board as it is drawn. */
    private static String point(CuttingPlan.Slant left, SawSetting setting) {
        boolean upper = left.upper().compareTo(left.lower()) < 0;
        return setting.tiltDeg() > 0 ? upper ? "top" : "bottom" : upper ? "far" : "near";
    }

    private static boolean isSquare(CuttingPlan.Slant slant) {
        return slant.equals(CuttingPlan.Slant.SQUARE);
    }
}
