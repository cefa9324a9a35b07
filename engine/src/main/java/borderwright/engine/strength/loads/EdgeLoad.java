package borderwright.engine.strength.loads;

import borderwright.engine.strength.box.Board;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.frame.Loads;
import java.util.ArrayList;
import java.util.List;

/**
 * A person on the edge of a wall: a sideways push at the top course, where the supports are furthest apart.
 *
 * <p>What stands against it is the fill behind the walls opposite.
 */
final class EdgeLoad {
    /** Gaps within a thousandth of the widest are as wide. */
    private static final double ALIKE = 0.999;

    private final BoxFrame frame;

    EdgeLoad(BoxFrame frame) {
        this.frame = frame;
    }

    /** The middle of a gap, on its board. */
    private record Spot(Board board, double alongMm, double gapMm) {
        Loads push(double pushN) {
            for (Board.Part part : board.parts()) {
                if (alongMm <= part.toMm()) {
                    double at = Math.min(alongMm - part.fromMm(), part.lengthMm());
                    return new Loads().point(part.member(), board.outward(), at, pushN);
                }
            }
            throw new IllegalStateException(board.label() + " has no bar at " + alongMm + " mm");
        }
    }

    /** One case for each equally wide gap nearest to the middle of a side: one, or two that mirror each other. */
    List<Loads> on(int side, double pushN) {
        int top = frame.box().courses().size();
        List<Board> boards = frame.walls().stream()
                .filter(b -> b.side() == side && b.course() == top)
                .toList();
        List<Spot> gaps = new ArrayList<>();
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Board board : boards) {
            List<Double> held = board.heldMm();
            for (int i = 1; i < held.size(); i++) {
                gaps.add(new Spot(board, (held.get(i - 1) + held.get(i)) / 2, held.get(i) - held.get(i - 1)));
            }
            from = Math.min(from, held.get(0));
            to = Math.max(to, held.get(held.size() - 1));
        }
        double widest = gaps.stream().mapToDouble(Spot::gapMm).max().orElse(0);
        List<Spot> spots =
                gaps.stream().filter(gap -> gap.gapMm >= ALIKE * widest).toList();
        double middle = (from + to) / 2;
        double nearest = spots.stream()
                .mapToDouble(s -> Math.abs(s.alongMm - middle))
                .min()
                .orElse(0);
        return spots.stream()
                .filter(s -> Math.abs(s.alongMm - middle) <= nearest + 1)
                .map(s -> s.push(pushN))
                .toList();
    }
}
