package borderwright.engine.cutting;

import borderwright.engine.measure.Length;
import borderwright.engine.stock.row.BoardRow;
import borderwright.engine.stock.row.CuttingJob;
import borderwright.engine.stock.row.EndShape;
import java.util.ArrayList;
import java.util.List;

/** Turns the pieces on one board into cuts, each at its set-up. */
final class RowCuts {
    private final CuttingJob job;
    private final BoardRow row;

    RowCuts(CuttingJob job, BoardRow row) {
        this.job = job;
        this.row = row;
    }

    /** Adds every cut to the set-ups; {@link #cuts} needs them all. */
    void addTo(SetUps setUps) {
        for (BoardRow.OnBoard laid : row.laid()) {
            setUps.add(laid.piece(), laid.sharesCut() ? null : left(laid), right(laid));
        }
    }

    CuttingPlan.BoardCuts cuts(SetUps setUps) {
        List<CuttingPlan.Cut> cuts = new ArrayList<>();
        for (BoardRow.OnBoard laid : row.laid()) {
            cuts.add(CuttingPlan.Cut.of(laid.piece().label(), laid.piece().length())
                    .start(laid.start())
                    .setUp(setUps.indexOf(laid.piece(), right(laid)))
                    .way(laid.way())
                    .sharesCut(laid.sharesCut())
                    .slants(slantOfLeft(laid), slantOfRight(laid))
                    .build());
        }
        return CuttingPlan.BoardCuts.of(row.board())
                .cuts(cuts)
                .offcut(row.offcut())
                .keep(row.offcut().compareTo(job.keepFrom()) >= 0)
                .build();
    }

    private SetUps.EndOnBoard left(BoardRow.OnBoard laid) {
        return new SetUps.EndOnBoard(laid.leftEnd(), slantOfLeft(laid).ofLeftEnd(), faceUp(laid));
    }

    private SetUps.EndOnBoard right(BoardRow.OnBoard laid) {
        return new SetUps.EndOnBoard(laid.rightEnd(), slantOfRight(laid).ofRightEnd(), faceUp(laid));
    }

    private static SawSetting.FaceUp faceUp(BoardRow.OnBoard laid) {
        return laid.way().turned() ? SawSetting.FaceUp.INNER : SawSetting.FaceUp.OUTER;
    }

    private CuttingPlan.Slant slantOfLeft(BoardRow.OnBoard laid) {
        return slant(job.shape(laid.piece()).leftAs(laid.way()));
    }

    private CuttingPlan.Slant slantOfRight(BoardRow.OnBoard laid) {
        return slant(job.shape(laid.piece()).rightAs(laid.way()));
    }

    private static CuttingPlan.Slant slant(EndShape end) {
        boolean acrossFace = end.faceUpper() != end.faceLower();
        return new CuttingPlan.Slant(
                new Length(end.faceUpper()), new Length(acrossFace ? end.faceLower() : end.backUpper()));
    }
}
