package borderwright.app.plan;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import java.util.List;

/** The ends of a piece as it stands in its box. */
final class StandingPiece {
    private StandingPiece() {}

    /**
     * Where the piece ends at its four long edges, from its place in the box: outer face up, left end left, first its left
     * end and then its right one, at (near, down), (near, up), (far, down), (far, up).
     */
    static double[] ends(Piece piece, SectionSpec section) {
        if (piece.alongMm().z() == 1) {
            double mm = piece.place().heightMm();
            return new double[] {0, 0, 0, 0, mm, mm, mm, mm};
        }
        Point along = piece.alongMm().level();
        List<Point> corners = piece.place().plan().corners();
        double lowW =
                corners.stream().mapToDouble(p -> p.dot(along.left())).min().orElseThrow();
        double highW =
                corners.stream().mapToDouble(p -> p.dot(along.left())).max().orElseThrow();
        double lowS = corners.stream().mapToDouble(p -> p.dot(along)).min().orElseThrow();
        double middleW = (lowW + highW) / 2;
        double[] low =
                ends(corners.stream().filter(p -> p.dot(along.left()) < middleW).toList(), along, lowS);
        double[] high =
                ends(corners.stream().filter(p -> p.dot(along.left()) > middleW).toList(), along, lowS);
        boolean flat = Math.abs(piece.place().heightMm() - section.thickness().mm()) < 1e-6
                && Math.abs(highW - lowW - section.width().mm()) < 1e-6;
        // On edge the outer face is the one with the lower w, up on the saw; flat it is the top, and the lower w lies
        // near.
        return flat
                ? new double[] {low[0], low[0], high[0], high[0], low[1], low[1], high[1], high[1]}
                : new double[] {high[0], low[0], high[0], low[0], high[1], low[1], high[1], low[1]};
    }

    private static double[] ends(List<Point> line, Point along, double from) {
        return new double[] {
            line.stream().mapToDouble(p -> p.dot(along)).min().orElseThrow() - from,
            line.stream().mapToDouble(p -> p.dot(along)).max().orElseThrow() - from
        };
    }
}
