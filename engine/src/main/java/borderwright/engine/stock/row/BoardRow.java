package borderwright.engine.stock.row;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.DemandMaker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The pieces of one board in their order, nested where their ends allow it; those that wait keep the far end, as if they
 * were square.
 *
 * <p>Among rows of one length pieces that touch the ground take the factory end, then come the longest.
 */
public final class BoardRow {
    private final CuttingJob job;
    private final BoardInHand board;
    private final List<Piece> pieces;
    private final BoardNest.Row row;
    private final long waitingTicks;

    private BoardRow(CuttingJob job, BoardInHand board, List<Piece> pieces, BoardNest.Row row, long waitingTicks) {
        this.job = job;
        this.board = board;
        this.pieces = pieces;
        this.row = row;
        this.waitingTicks = waitingTicks;
    }

    /**
     * Lays pieces on a board.
     *
     * @param all pieces that come from it, in any order
     */
    public static BoardRow of(CuttingJob job, BoardInHand board, List<Piece> all) {
        List<Piece> now = new ArrayList<>();
        long waiting = 0;
        for (Piece piece : all) {
            if (piece.waits()) {
                waiting += DemandMaker.boughtTicks(piece, job.rules(), job.kerf())
                        + job.kerf().ticks();
            } else {
                now.add(piece);
            }
        }
        now.sort(Comparator.comparing(Piece::touchesGround, Comparator.reverseOrder())
                .thenComparing(Piece::length, Comparator.reverseOrder())
                .thenComparing(Piece::label));
        List<BoardNest.Shape> shapes = now.stream().map(job::shape).toList();
        BoardNest.Row row = waiting > 0 ? BoardNest.partedOff(shapes) : BoardNest.of(shapes);
        return new BoardRow(job, board, now, row, waiting);
    }

    /** Whether all of it lies between the trims. */
    public boolean fits() {
        return overrunTicks() == 0;
    }

    /** How far the pieces reach beyond the trim at the far end. */
    long overrunTicks() {
        return Math.max(0, endTicks() - board.length().ticks() + board.trim().ticks());
    }

    /** What is left between the last piece and the trim at the far end. */
    long roomTicks() {
        return Math.max(0, board.length().ticks() - board.trim().ticks() - endTicks());
    }

    /** Where the last piece ends, those that wait and the cuts before them included. */
    private long endTicks() {
        long kerf = job.kerf().ticks();
        long before = board.trim().ticks() + row.extent();
        if (waitingTicks == 0) {
            return before;
        }
        return pieces.isEmpty() ? before + waitingTicks - kerf : before + row.lastKerf() - kerf + waitingTicks;
    }

    /** The board. */
    public BoardInHand board() {
        return board;
    }

    /** The pieces that are cut now, in order from the left end. */
    public List<OnBoard> laid() {
        return row.pieces().stream()
                .map(laid -> new OnBoard(
                        pieces.get(laid.index()),
                        laid.way(),
                        board.trim().plus(new Length(laid.start())),
                        laid.sharesCut()))
                .toList();
    }

    /** Length between the last cut of now and the trim at the far end, pieces that wait left out. */
    public Length offcut() {
        long end = board.trim().ticks() + row.extent() + row.lastKerf();
        return new Length(Math.max(0, board.length().ticks() - board.trim().ticks() - end));
    }

    /**
     * A piece on the board.
     *
     * @param piece the piece
     * @param way which way round it lies
     * @param start of its left long point, from the left end of the board
     * @param sharesCut whether one cut makes its left end and the right end of the piece before it
     */
    public record OnBoard(Piece piece, BoardNest.Way way, Length start, boolean sharesCut) {
        /** The end of the piece that lies to the left. */
        public EndCut leftEnd() {
            return way.swapped() ? piece.right() : piece.left();
        }

        /** The end of the piece that lies to the right. */
        public EndCut rightEnd() {
            return way.swapped() ? piece.left() : piece.right();
        }
    }
}
