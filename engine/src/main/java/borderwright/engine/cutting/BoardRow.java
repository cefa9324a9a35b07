package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.BoardNest;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.EndShape;
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
        return new BoardRow(
                job, board, now, BoardNest.of(now.stream().map(job::shape).toList(), waiting > 0), waiting);
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

    void note(SetUps setUps) {
        for (BoardNest.Laid laid : row.pieces()) {
            Piece piece = pieces.get(laid.index());
            setUps.add(piece, laid.sharesCut() ? null : end(piece, laid, true), end(piece, laid, false));
        }
    }

    private static EndCut end(Piece piece, BoardNest.Laid laid, boolean left) {
        return left == laid.way().swapped() ? piece.right() : piece.left();
    }

    CuttingPlan.BoardCuts cuts(SetUps setUps) {
        Length trim = board.trim();
        List<CuttingPlan.Cut> cuts = new ArrayList<>();
        for (BoardNest.Laid laid : row.pieces()) {
            Piece piece = pieces.get(laid.index());
            BoardNest.Shape shape = job.shape(piece);
            cuts.add(new CuttingPlan.Cut(
                    piece.label(),
                    trim.plus(new Length(laid.start())),
                    piece.length(),
                    setUps.indexOf(piece, end(piece, laid, false)),
                    laid.way().turned(),
                    laid.way().swapped(),
                    laid.sharesCut(),
                    slant(shape.leftAs(laid.way())),
                    slant(shape.rightAs(laid.way()))));
        }
        long end = trim.ticks() + row.extent() + row.lastKerf();
        Length offcut = new Length(Math.max(0, board.length().ticks() - trim.ticks() - end));
        return new CuttingPlan.BoardCuts(
                board.id(),
                board.section(),
                board.length(),
                board.from(),
                board.owned(),
                trim,
                cuts,
                offcut,
                offcut.compareTo(job.keepFrom()) >= 0);
    }

    private static CuttingPlan.Slant slant(EndShape end) {
        boolean acrossFace = end.faceUpper() != end.faceLower();
        return new CuttingPlan.Slant(
                new Length(end.faceUpper()), new Length(acrossFace ? end.faceLower() : end.backUpper()));
    }
}
