package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.strength.box.BowLine;
import java.util.Comparator;
import java.util.List;

/**
 * How far each place of a box moves as its sides bow for good.
 *
 * <p>Boards follow the line of their course, what stands against a side follows the courses at its own height. Dividers and
 * ties are left where they are.
 */
public final class BowShift {
    private final Box box;
    private final List<BowLine> lines;

    public BowShift(Box box, StrengthReport report) {
        this.box = box;
        this.lines = report.lines();
    }

    /** Whether a piece belongs to a side that has lines to follow. */
    public boolean moves(Piece piece) {
        return piece.role() != Piece.Role.DIVIDER
                && piece.role() != Piece.Role.TIE
                && lines.stream().anyMatch(line -> line.side() == piece.side());
    }

    /** Movement of a place of a piece that moves, on the plan, mm. */
    public Point at(Piece piece, Point place, double heightMm) {
        Ring outline = box.plan().outline();
        Point along = outline.direction(piece.side());
        double alongMm = place.minus(outline.corner(piece.side())).dot(along);
        return along.left().times(-outMm(piece, alongMm, heightMm));
    }

    private double outMm(Piece piece, double alongMm, double heightMm) {
        List<BowLine> upwards = lines.stream()
                .filter(line -> line.side() == piece.side())
                .filter(line -> piece.role() != Piece.Role.WALL || line.course() == piece.course())
                .sorted(Comparator.comparingDouble(BowLine::heightMm))
                .toList();
        for (int i = 1; i < upwards.size(); i++) {
            BowLine low = upwards.get(i - 1);
            BowLine high = upwards.get(i);
            if (heightMm <= high.heightMm() || i == upwards.size() - 1) {
                return between(heightMm, low.heightMm(), outMm(low, alongMm), high.heightMm(), outMm(high, alongMm));
            }
        }
        return upwards.isEmpty() ? 0 : outMm(upwards.get(0), alongMm);
    }

    private static double outMm(BowLine line, double alongMm) {
        List<BowLine.At> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            BowLine.At a = points.get(i - 1);
            BowLine.At b = points.get(i);
            if (alongMm <= b.alongMm()) {
                return between(alongMm, a.alongMm(), a.outMm(), b.alongMm(), b.outMm());
            }
        }
        return points.get(points.size() - 1).outMm();
    }

    /** Straight between two places, and as at the nearer one beyond them. */
    private static double between(double x, double x0, double y0, double x1, double y1) {
        if (x1 <= x0) {
            return y1;
        }
        double share = StrictMath.max(0, StrictMath.min(1, (x - x0) / (x1 - x0)));
        return y0 + share * (y1 - y0);
    }
}
