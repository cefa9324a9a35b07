package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.BoardRow;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Turns boards in hand and pieces into the order of work at the saw. */
public final class CuttingPlanner {
    private final CuttingJob job;
    private final Allotment allotment;
    private final SetUps setUps;

    private CuttingPlanner(CuttingJob job, Budget budget) {
        this.job = job;
        this.allotment = new Allotment(job, budget);
        this.setUps = new SetUps(job);
    }

    /**
     * Plans the cutting.
     *
     * @param job boards in hand, pieces, saws and how the person cuts
     * @param budget how much work may be spent where the boards are not those that the basket meant
     */
    public static CuttingPlan plan(CuttingJob job, Budget budget) {
        return new CuttingPlanner(job, budget).plan();
    }

    private CuttingPlan plan() {
        List<CuttingPlan.Reserve> reserves = new ArrayList<>();
        List<RowCuts> rows = new ArrayList<>();
        List<Integer> untouched = new ArrayList<>();
        allotment.byBoard.forEach((board, pieces) -> {
            for (Piece piece : pieces) {
                if (piece.waits()) {
                    reserves.add(new CuttingPlan.Reserve(
                            board.number(),
                            piece.label(),
                            new Length(DemandMaker.boughtTicks(piece, job.rules(), job.kerf()))));
                }
            }
            if (pieces.isEmpty()) {
                untouched.add(board.number());
            } else {
                rows.add(new RowCuts(job, BoardRow.of(job, board, pieces)));
            }
        });
        rows.forEach(row -> row.addTo(setUps));
        List<String> waiting =
                job.pieces().stream().filter(Piece::waits).map(Piece::label).toList();
        List<CuttingPlan.BoardCuts> boards = new ArrayList<>();
        rows.forEach(row -> boards.add(row.cuts(setUps)));
        boards.sort(Comparator.comparing(CuttingPlan.BoardCuts::section)
                .thenComparing(CuttingPlanner::longestCut, Comparator.reverseOrder())
                .thenComparingInt(CuttingPlan.BoardCuts::number));
        List<CuttingPlan.Uncut> uncut = new ArrayList<>();
        for (Piece piece : allotment.without) {
            uncut.add(new CuttingPlan.Uncut(
                    piece.label(),
                    CuttingMessage.PIECE_NOT_CUT.of(
                            piece.label(), piece.section(), piece.length().mm())));
        }
        return new CuttingPlan(boards, setUps.list(), waiting, untouched, uncut, reserves, List.of());
    }

    private static Length longestCut(CuttingPlan.BoardCuts board) {
        return board.cuts().stream()
                .map(CuttingPlan.Cut::length)
                .max(Length::compareTo)
                .orElse(Length.ZERO);
    }
}
