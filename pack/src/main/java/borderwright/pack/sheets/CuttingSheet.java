package borderwright.pack.sheets;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.plan.Plan;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
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
        Function<Piece, String> words =
                piece -> f.text(Objects.requireNonNull(piece.rip()).words());
        List<Piece> ripped = plan.boxes().stream()
                .flatMap(box -> box.pieces().stream())
                .filter(piece -> piece.rip() != null)
                .toList();
        return Alike.group(ripped, Piece::label, words).stream()
                .map(alike -> String.join(", ", alike.names()) + ": " + words.apply(alike.first()))
                .toList();
    }

    /** The cuts of boards that are cut alike, as they are printed. */
    public List<CutText> cuts(BoardCard card, PrintedFigures f) {
        List<CuttingPlan.Cut> cuts = card.first().cuts();
        return IntStream.range(0, cuts.size())
                .mapToObj(i -> CutText.of(i, cuts.get(i), plan.cutting(), f))
                .toList();
    }
}
