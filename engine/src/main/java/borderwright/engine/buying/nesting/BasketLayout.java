package borderwright.engine.buying.nesting;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.BoardNest;
import borderwright.engine.stock.row.BoardRow;
import borderwright.engine.stock.row.BoardSwaps;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The boards of a basket with the pieces on them. */
final class BasketLayout {
    /** Labels of pieces on boards that cannot give them, however they are laid. */
    private final Set<String> open = new HashSet<>();

    private final CuttingJob job;
    private final ShoppingAnswer answer;
    private final Map<BoardInHand, List<Piece>> laid = new LinkedHashMap<>();
    private final Map<BoardInHand, LaidBoard> source = new HashMap<>();
    private final List<LaidBoard> others = new ArrayList<>();

    /**
     * The boards of a basket.
     *
     * @param job sections and saws
     * @param pieces pieces by label
     * @param answer the basket
     */
    BasketLayout(CuttingJob job, Map<String, Piece> pieces, ShoppingAnswer answer) {
        this.job = job;
        this.answer = answer;
        for (LaidBoard board : answer.boards()) {
            List<Piece> on = board.pieces().stream()
                    .flatMap(piece -> Optional.ofNullable(pieces.get(piece.label())).stream())
                    .toList();
            if (on.size() < board.pieces().size()) {
                // Something else is kept on it, which the full list alone counts right.
                others.add(board);
                on.stream().filter(p -> !isFull(p)).forEach(p -> open.add(p.label()));
            } else {
                BoardInHand hand = inHand(board);
                laid.put(hand, on);
                source.put(hand, board);
            }
        }
    }

    private BoardInHand inHand(LaidBoard board) {
        return new BoardInHand(
                laid.size() + 1,
                board.section(),
                new Length(board.lengthTicks()),
                board.supplier(),
                board.owned(),
                new Length(board.trimTicks()),
                List.of());
    }

    /** Whether a piece lies on a board that cannot give it. */
    boolean isOpen(String label) {
        return open.contains(label);
    }

    /** Whether all pieces can be cut from these boards, if need be after moving some. */
    boolean fits(Budget swaps) {
        if (!new BoardSwaps(job, laid, swaps).makeFit()) {
            laid.forEach((board, on) -> {
                if (!BoardRow.of(job, board, on).fits()) {
                    on.forEach(piece -> open.add(piece.label()));
                }
            });
        }
        return open.isEmpty();
    }

    List<LaidBoard> boards() {
        List<LaidBoard> boards = new ArrayList<>(others);
        laid.forEach((hand, on) -> {
            LaidBoard board = source.getOrDefault(hand, answer.boards().get(0));
            boards.add(board.with(on.stream()
                    .map(p -> new LaidBoard.LaidPiece(
                            p.label(),
                            p.waits()
                                    ? DemandMaker.boughtTicks(p, job.rules(), job.kerf())
                                    : p.length().ticks()))
                    .toList()));
        });
        return boards;
    }

    private boolean isFull(Piece piece) {
        BoardNest.Shape shape = job.shape(piece);
        return shape.left().isFull() && shape.right().isFull();
    }
}
