package borderwright.engine.strength.box;

import borderwright.engine.strength.frame.Loads;
import borderwright.engine.strength.frame.Vector;
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

    /** Where the push stands: a bar and a distance from its start. */
    private record Spot(Board.Part part, double fromStartMm, double alongMm) {}

    /** One case for each equally wide gap nearest to the middle of a side: one, or two that mirror each other. */
    List<Loads> on(int side, double pushN) {
        int top = frame.box().courses().size();
        List<Board> boards = frame.walls().stream()
                .filter(b -> b.side() == side && b.course() == top)
                .toList();
        double widest = 0;
        for (Board board : boards) {
            for (Board.Part part : board.parts()) {
                widest = Math.max(widest, part.lengthMm());
            }
        }
        List<Spot> spots = new ArrayList<>();
        for (Board board : boards) {
            for (Board.Part part : board.parts()) {
                if (part.lengthMm() >= ALIKE * widest) {
                    spots.add(new Spot(part, part.lengthMm() / 2, (part.fromMm() + part.toMm()) / 2));
                }
            }
        }
        double middle = (boards.get(0).parts().get(0).fromMm()
                        + boards.get(boards.size() - 1)
                                .parts()
                                .get(boards.get(boards.size() - 1).parts().size() - 1)
                                .toMm())
                / 2;
        double nearest = spots.stream()
                .mapToDouble(s -> Math.abs(s.alongMm - middle))
                .min()
                .orElse(0);
        Vector outward = boards.get(0).outward();
        return spots.stream()
                .filter(s -> Math.abs(s.alongMm - middle) <= nearest + 1)
                .map(s -> new Loads().point(s.part.member(), outward, s.fromStartMm, pushN))
                .toList();
    }
}
