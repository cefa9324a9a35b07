package borderwright.engine.cutting;

import borderwright.engine.buildup.Piece;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.Budget;
import borderwright.engine.stock.Demands;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Turns boards in hand and pieces into the order of work at the saw. */
public final class CuttingPlanner {
    private final CuttingJob job;
    private final Allotment allotment;
    private final SetUps setUps;
    private final long kerf;

    private CuttingPlanner(CuttingJob job, Budget budget) {
        this.job = job;
        this.allotment = new Allotment(job, budget);
        this.setUps = new SetUps(job);
        this.kerf = job.kerf().ticks();
    }

    /**
     * Plans the cutting.
     *
     * @param job boards in hand, pieces, saws and habits
     * @param budget how much work may be spent where the boards are not those that the basket meant
     */
    public static CuttingPlan plan(CuttingJob job, Budget budget) {
        return new CuttingPlanner(job, budget).plan();
    }

    private CuttingPlan plan() {
        List<String> waiting = new ArrayList<>();
        List<CuttingPlan.Reserve> reserves = new ArrayList<>();
        allotment.byBoard.forEach((board, pieces) -> {
            for (Piece piece : pieces) {
                if (piece.waits()) {
                    reserves.add(new CuttingPlan.Reserve(
                            board.id(),
                            piece.label(),
                            new Length(Demands.boughtTicks(piece, job.rules(), job.kerf()))));
                } else {
                    setUps.add(piece);
                }
            }
        });
        job.pieces().stream().filter(Piece::waits).map(Piece::label).forEach(waiting::add);
        List<CuttingPlan.BoardCuts> boards = new ArrayList<>();
        List<String> untouched = new ArrayList<>();
        allotment.byBoard.forEach((board, pieces) -> {
            if (pieces.isEmpty()) {
                untouched.add(board.id());
            } else {
                boards.add(cuts(board, pieces));
            }
        });
        boards.sort(Comparator.comparing(CuttingPlan.BoardCuts::section)
                .thenComparing(CuttingPlanner::longestCut, Comparator.reverseOrder())
                .thenComparing(CuttingPlan.BoardCuts::id));
        List<CuttingPlan.Uncut> uncut = new ArrayList<>();
        for (Piece piece : allotment.without) {
            uncut.add(new CuttingPlan.Uncut(
                    piece.label(),
                    "No board of section '" + piece.section() + "' in hand has "
                            + piece.length().mm() + " mm left for it."));
        }
        return new CuttingPlan(boards, setUps.list(), waiting, untouched, uncut, reserves);
    }

    private static Length longestCut(CuttingPlan.BoardCuts board) {
        return board.cuts().stream()
                .map(CuttingPlan.Cut::length)
                .max(Length::compareTo)
                .orElse(Length.ZERO);
    }

    /**
     * Waiting pieces keep the far end. Otherwise ends rise in steepness, which is what the charge for slanted cuts
     * relies on; among equals those that touch the ground take the factory end, then come the longest.
     */
    private CuttingPlan.BoardCuts cuts(BoardInHand board, List<Piece> pieces) {
        List<Piece> order = new ArrayList<>(pieces);
        order.sort(Comparator.comparing(Piece::waits)
                .thenComparing(p -> Demands.extraKerfTicks(p, job.kerf()))
                .thenComparing(Piece::touchesGround, Comparator.reverseOrder())
                .thenComparing(Piece::length, Comparator.reverseOrder())
                .thenComparing(Piece::label));
        Length trim = board.owned() ? Length.ZERO : job.rules().trimOrHabit();
        List<CuttingPlan.Cut> cuts = new ArrayList<>();
        long at = trim.ticks();
        long lastKerf = 0;
        for (Piece piece : order) {
            if (!piece.waits()) {
                long ownKerf = kerf + Demands.extraKerfTicks(piece, job.kerf());
                at += cuts.isEmpty() ? 0 : Math.max(lastKerf, ownKerf);
                cuts.add(new CuttingPlan.Cut(
                        piece.label(), new Length(at), piece.length(), setUps.indexOf(piece), false));
                at += piece.length().ticks();
                lastKerf = ownKerf;
            }
        }
        at += lastKerf;
        Length offcut = new Length(Math.max(0, board.length().ticks() - trim.ticks() - at));
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
}
