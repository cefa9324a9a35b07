package borderwright.pack.sheets;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Every board with its pieces.
 *
 * @param boards in the order in which they are cut
 * @param plan the plan
 */
public record CuttingSheet(List<BoardCard> boards, Plan plan) implements Sheet {
    public CuttingSheet {
        boards = List.copyOf(boards);
    }

    @Override
    public String title() {
        return "Cutting sheets";
    }

    @Override
    public Part part() {
        return Part.SAW;
    }

    /** What is read before the first board. */
    public String intro(PrintedFigures f) {
        return f.text(SheetMessage.CUTTING_INTRO.of(plan.cutting().waiting().isEmpty() ? "no" : "yes"));
    }

    /** Pieces that are ripped along an edge, those that are ripped alike in a sentence. */
    public List<String> rips(PrintedFigures f) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (Box box : plan.boxes()) {
            for (Piece piece : box.pieces()) {
                if (piece.rip() != null) {
                    alike.computeIfAbsent(f.text(piece.rip().words()), words -> new ArrayList<>())
                            .add(piece.label());
                }
            }
        }
        List<String> sentences = new ArrayList<>();
        alike.forEach((words, labels) -> sentences.add(String.join(", ", labels) + ": " + words));
        return sentences;
    }

    /** The cuts of boards that are cut alike, as they are printed. */
    public List<CutText> cuts(BoardCard card, PrintedFigures f) {
        List<CuttingPlan.Cut> cuts = card.first().cuts();
        return IntStream.range(0, cuts.size())
                .mapToObj(i -> CutText.of(i, cuts.get(i), plan.cutting(), f))
                .toList();
    }
}
