package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.BoardRow;
import borderwright.engine.stock.row.BoardSwaps;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Which piece comes from which board in hand.
 *
 * <p>What the basket meant is kept where it still fits; the rest is solved anew over the boards that are left, the least
 * length of board first; what then has no board goes on the list of uncut pieces. In the end pieces that are cut alike change
 * places to lie on one board, so that each board is lifted to fewer settings.
 */
final class Allotment {
    /** Work for putting pieces that are cut alike on one board: a second at most. */
    private static final long TIDY_WORK = 50_000;

    final Map<BoardInHand, List<Piece>> byBoard = new LinkedHashMap<>();
    final List<Piece> without = new ArrayList<>();
    private final CuttingJob job;
    private final Length kerf;

    Allotment(CuttingJob job, Budget budget) {
        this.job = job;
        this.kerf = job.kerf();
        job.boards().forEach(board -> byBoard.put(board, new ArrayList<>()));
        List<Piece> open = keepWhatWasMeant();
        if (!open.isEmpty()) {
            solve(open, budget);
        }
        new BoardSwaps(job, byBoard, budget.part(TIDY_WORK)).tidy();
    }

    private List<Piece> keepWhatWasMeant() {
        Map<String, Piece> byLabel = new LinkedHashMap<>();
        job.pieces().forEach(piece -> byLabel.put(piece.label(), piece));
        for (BoardInHand board : job.boards()) {
            for (String label : board.meantFor()) {
                Piece piece = byLabel.get(label);
                if (piece != null && piece.section().equals(board.section()) && fits(board, piece)) {
                    put(board, piece);
                    byLabel.remove(label);
                }
            }
        }
        return new ArrayList<>(byLabel.values());
    }

    private void put(BoardInHand board, Piece piece) {
        byBoard.computeIfAbsent(board, b -> new ArrayList<>()).add(piece);
    }

    /** Whether a board can give one piece more: by lengths alone where all ends are square, by their row otherwise. */
    private boolean fits(BoardInHand board, Piece piece) {
        List<Piece> all = new ArrayList<>(byBoard.getOrDefault(board, List.of()));
        all.add(piece);
        if (all.stream().allMatch(p -> p.left().isSquare() && p.right().isSquare())) {
            return all.stream().mapToLong(this::sizeOf).sum() <= usable(board) + kerf.ticks();
        }
        return BoardRow.of(job, board, all).fits();
    }

    private long sizeOf(Piece piece) {
        return DemandMaker.boughtTicks(piece, job.rules(), kerf) + kerf.ticks();
    }

    /** Length between the trims. */
    private long usable(BoardInHand board) {
        return board.length().ticks() - 2 * board.trim().ticks();
    }

    private void solve(List<Piece> open, Budget budget) {
        Map<String, Piece> byLabel = new HashMap<>();
        List<Demand> demands = new ArrayList<>();
        for (Piece piece : open) {
            byLabel.put(piece.label(), piece);
            demands.add(
                    new Demand(piece.section(), DemandMaker.boughtTicks(piece, job.rules(), kerf), 1, piece.label()));
        }
        List<BoardInHand> free = job.boards().stream()
                .filter(b -> byBoard.getOrDefault(b, List.of()).isEmpty() && !b.isHeldBack())
                .toList();
        ShoppingAnswer answer = Shopper.buy(problem(demands, free), budget);
        Map<String, BoardInHand> byName = new HashMap<>();
        free.forEach(board -> byName.put(name(board), board));
        Set<String> placed = new HashSet<>();
        for (LaidBoard laid : answer.boards()) {
            for (LaidBoard.LaidPiece piece : laid.pieces()) {
                Piece whole = byLabel.get(piece.label());
                BoardInHand board = byName.get(laid.supplier());
                if (whole != null && board != null && placed.add(piece.label())) {
                    put(board, whole);
                }
            }
        }
        placeOneByOne(open.stream().filter(p -> !placed.contains(p.label())).toList());
    }

    /** The boards that are free, each to be had once: what is there as owned, what is ordered as an offer at its length. */
    private ShoppingProblem problem(List<Demand> demands, List<BoardInHand> free) {
        List<BoardOffer> offers = new ArrayList<>();
        List<OwnedStock> owned = new ArrayList<>();
        for (BoardInHand board : free) {
            long length = board.length().ticks();
            if (board.owned()) {
                owned.add(new OwnedStock(
                        board.section(), length, 1, name(board), board.trim().ticks()));
            } else {
                offers.add(new BoardOffer(name(board), board.section(), length, length, 1, 1));
            }
        }
        return ShoppingProblem.builder(demands)
                .boards(offers)
                .owned(owned)
                .kerfTicks(kerf.ticks())
                .trimTicks(job.rules().trim().ticks())
                .build();
    }

    /** What a board is called in the list to be solved: names in the order of the numbers. */
    private static String name(BoardInHand board) {
        return String.format(Locale.ROOT, "board %06d", board.number());
    }

    /** The longest piece first, each on the board with the least room that still takes it. */
    private void placeOneByOne(List<Piece> open) {
        List<Piece> sorted = new ArrayList<>(open);
        sorted.sort(Comparator.comparingLong(this::sizeOf).reversed());
        for (Piece piece : sorted) {
            BoardInHand best = null;
            for (BoardInHand board : job.boards()) {
                if (board.section().equals(piece.section())
                        && !board.isHeldBack()
                        && fits(board, piece)
                        && (best == null || room(board) < room(best))) {
                    best = board;
                }
            }
            if (best == null) {
                without.add(piece);
            } else {
                put(best, piece);
            }
        }
    }

    private long room(BoardInHand board) {
        long used = 0;
        for (Piece piece : byBoard.getOrDefault(board, List.of())) {
            used += sizeOf(piece);
        }
        return usable(board) - used;
    }
}
