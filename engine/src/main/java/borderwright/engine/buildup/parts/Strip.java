package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The plan of a straight piece: a strip between two parallel lines, closed by a straight cut at either end.
 *
 * <p>{@code s} runs along the piece from its left end, {@code w} to the left of that direction. The <em>near</em> line
 * lies to the right: it is the marked face of a board on edge, and the lower edge of a board lying flat, so that a
 * reader who faces the mark has the left end at the left hand.
 *
 * @param origin where {@code s} and {@code w} are 0
 * @param along unit vector from the left end to the right end
 * @param nearMm w of the near line
 * @param farMm w of the far line, greater
 * @param left {@code s} of the left end
 * @param right {@code s} of the right end
 */
public record Strip(Point origin, Point along, double nearMm, double farMm, End left, End right) {

    /**
     * Where an end meets the two lines.
     *
     * @param nearMm {@code s} on the near line
     * @param farMm {@code s} on the far line
     */
    public record End(double nearMm, double farMm) {
        public static End square(double s) {
            return new End(s, s);
        }

        End mirrored() {
            return new End(-nearMm, -farMm);
        }
    }

    /** Ends nearer to square than this are cut square: 0.05 mm across a 47 mm board, less than a saw is set to. */
    private static final double SQUARE_DEG = 0.06;

    /** The same with ends that are all but square made square, on the short side. */
    public Strip squared() {
        double hair = StrictMath.tan(StrictMath.toRadians(SQUARE_DEG)) * (farMm - nearMm);
        End first = StrictMath.abs(left.nearMm - left.farMm) >= hair
                ? left
                : End.square(StrictMath.max(left.nearMm, left.farMm));
        End last = StrictMath.abs(right.nearMm - right.farMm) >= hair
                ? right
                : End.square(StrictMath.min(right.nearMm, right.farMm));
        return new Strip(origin, along, nearMm, farMm, first, last);
    }

    public Point at(double s, double w) {
        return origin.plus(along.times(s)).plus(along.left().times(w));
    }

    double nearLengthMm() {
        return right.nearMm - left.nearMm;
    }

    double farLengthMm() {
        return right.farMm - left.farMm;
    }

    public double shortestMm() {
        return StrictMath.min(nearLengthMm(), farLengthMm());
    }

    /** From long point to long point, along the piece. */
    public double overallMm() {
        return StrictMath.max(right.nearMm, right.farMm) - StrictMath.min(left.nearMm, left.farMm);
    }

    /** Square cuts across it. */
    public List<Strip> cutAt(List<Double> joints) {
        List<Strip> parts = new ArrayList<>();
        End from = left;
        for (double joint : joints) {
            parts.add(new Strip(origin, along, nearMm, farMm, from, End.square(joint)));
            from = End.square(joint);
        }
        parts.add(new Strip(origin, along, nearMm, farMm, from, right));
        return parts;
    }

    /** Where an end cut along a line meets this strip's near and far lines. */
    public static End endOn(Point origin, Point along, double nearMm, double farMm, Point onLine, Point lineNormal) {
        double speed = along.dot(lineNormal);
        double across = along.left().dot(lineNormal);
        double reach = onLine.minus(origin).dot(lineNormal);
        return new End((reach - nearMm * across) / speed, (reach - farMm * across) / speed);
    }

    public Ring outline() {
        return new Ring(List.of(
                at(left.nearMm, nearMm), at(right.nearMm, nearMm), at(right.farMm, farMm), at(left.farMm, farMm)));
    }
}
