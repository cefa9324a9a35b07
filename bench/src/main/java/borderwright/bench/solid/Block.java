package borderwright.bench.solid;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece as bricks: {@code i} along the first edge of its plan, {@code j} to the left of that, {@code k} upwards.
 *
 * <p>Lines of bricks stand square to the first edge but for the two ends, which follow the piece's cuts.
 */
final class Block {
    private static final double HIT = 1e-9;
    private static final int NEWTON_STEPS = 12;

    final Piece piece;
    final int along;
    final int across;
    final int up;
    final boolean upright;
    private final int firstNode;
    private final int firstBrick;
    private final List<Point> near = new ArrayList<>();
    private final List<Point> far = new ArrayList<>();

    /**
     * Divides a piece.
     *
     * @param direction that the first edge of its plan is to have, as nearly as it can
     * @param firstNode number of its first node
     * @param firstBrick number of its first brick
     * @throws IllegalArgumentException where its plan has other than four corners, or of an upright five
     */
    Block(Piece piece, Point direction, Mesh mesh, int firstNode, int firstBrick) {
        this.piece = piece;
        this.firstNode = firstNode;
        this.firstBrick = firstBrick;
        Ring ring = piece.place().plan();
        upright = piece.role() == Piece.Role.POST || piece.role() == Piece.Role.BRACE;
        if (ring.size() != 4 && !(upright && ring.size() == 5)) {
            throw new IllegalArgumentException(piece.label() + " has " + ring.size() + " corners on the plan");
        }
        int first = 0;
        for (int i = 1; i < ring.size(); i++) {
            first = ring.direction(i).dot(direction) > ring.direction(first).dot(direction) ? i : first;
        }
        along = upright ? 2 : Math.max(4, (int) Math.ceil(ring.sideMm(first) / mesh.alongMm()));
        across = mesh.through();
        up = upright ? (int) Math.ceil(piece.place().heightMm() / mesh.alongMm()) : mesh.upwards();
        if (ring.size() == 5) {
            clipped(ring);
        } else {
            lines(ring, first);
        }
    }

    private void lines(Ring ring, int first) {
        Point axis = ring.direction(first);
        line(ring.corner(first), ring.corner(first + 3));
        for (int i = 1; i < along; i++) {
            double from = Math.max(
                    ring.corner(first).dot(axis), ring.corner(first + 3).dot(axis));
            double to = Math.min(
                    ring.corner(first + 1).dot(axis), ring.corner(first + 2).dot(axis));
            double at = from + (to - from) * i / along;
            line(
                    on(ring.corner(first), ring.corner(first + 1), axis, at),
                    on(ring.corner(first + 3), ring.corner(first + 2), axis, at));
        }
        line(ring.corner(first + 1), ring.corner(first + 2));
    }

    /** A batten with a corner off: its flattest corner is the middle of one face. */
    private void clipped(Ring ring) {
        int flat = 0;
        for (int i = 1; i < ring.size(); i++) {
            flat = ring.insideAngle(i) > ring.insideAngle(flat) ? i : flat;
        }
        line(ring.corner(flat + 4), ring.corner(flat + 3));
        line(ring.corner(flat), ring.corner(flat + 3).towards(ring.corner(flat + 2), 0.5));
        line(ring.corner(flat + 1), ring.corner(flat + 2));
    }

    private void line(Point nearEnd, Point farEnd) {
        near.add(nearEnd);
        far.add(farEnd);
    }

    private static Point on(Point from, Point to, Point axis, double at) {
        return from.towards(to, (at - from.dot(axis)) / (to.dot(axis) - from.dot(axis)));
    }

    int nodes() {
        return (along + 1) * (across + 1) * (up + 1);
    }

    int bricks() {
        return along * across * up;
    }

    int node(int i, int j, int k) {
        return firstNode + i + (along + 1) * (j + (across + 1) * k);
    }

    int brick(int i, int j, int k) {
        return firstBrick + i + along * (j + across * k);
    }

    Point plan(int i, int j) {
        return near.get(i).towards(far.get(i), (double) j / across);
    }

    double heightMm(int k) {
        return piece.place().bottomMm() + piece.place().heightMm() * k / up;
    }

    /** How deep the piece is in a level direction. */
    double depthMm(Point direction) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point corner : piece.place().plan().corners()) {
            least = Math.min(least, corner.dot(direction));
            most = Math.max(most, corner.dot(direction));
        }
        return most - least;
    }

    /** How a place on or near the piece moves with its nodes, by the bricks' own linear functions. */
    List<Weight> at(Point place, double zMm) {
        double best = Double.POSITIVE_INFINITY;
        int line = 0;
        double[] local = {0, 0};
        for (int i = 0; i < along; i++) {
            double[] found = local(i, place);
            double off = Math.max(outside(found[0]), outside(found[1]));
            if (off < best - HIT) {
                best = off;
                line = i;
                local = found;
            }
        }
        double v = local[1] * across;
        double w = (zMm - piece.place().bottomMm()) / piece.place().heightMm() * up;
        int j = (int) Math.max(0, Math.min(across - 1, Math.floor(v)));
        int k = (int) Math.max(0, Math.min(up - 1, Math.floor(w)));
        List<Weight> weights = new ArrayList<>();
        for (int corner = 0; corner < 8; corner++) {
            int di = corner & 1;
            int dj = corner >> 1 & 1;
            int dk = corner >> 2 & 1;
            double share = part(di, local[0]) * part(dj, v - j) * part(dk, w - k);
            if (Math.abs(share) > HIT) {
                weights.add(new Weight(node(line + di, j + dj, k + dk), share));
            }
        }
        return weights;
    }

    private static double part(int end, double at) {
        return end == 1 ? at : 1 - at;
    }

    private static double outside(double share) {
        return Math.max(0, Math.max(-share, share - 1));
    }

    /** Where a place lies between line i and the next (0 to 1) and from near to far (0 to 1), by Newton's method. */
    private double[] local(int i, Point place) {
        double u = 0.5;
        double v = 0.5;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            Point low = near.get(i).towards(near.get(i + 1), u);
            Point high = far.get(i).towards(far.get(i + 1), u);
            Point miss = place.minus(low.towards(high, v));
            Point byU = near.get(i + 1)
                    .minus(near.get(i))
                    .times(1 - v)
                    .plus(far.get(i + 1).minus(far.get(i)).times(v));
            Point byV = high.minus(low);
            double det = byU.cross(byV);
            u += miss.cross(byV) / det;
            v += byU.cross(miss) / det;
        }
        return new double[] {u, v};
    }
}
