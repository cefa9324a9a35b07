package borderwright.engine.assembly.order;

import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * In which order the walls of a box are stood up: the heaviest laden first, then round the box. A fixing between two walls is
 * driven when the later of them is up.
 */
final class WallOrder {
    private final List<WallBench> walls;
    private final Map<String, Piece> pieces;
    private final int first;

    WallOrder(List<WallBench> walls, Map<String, Piece> pieces) {
        this.walls = walls;
        this.pieces = pieces;
        int best = 0;
        for (int i = 1; i < walls.size(); i++) {
            best = ladenMm(walls.get(i)) > ladenMm(walls.get(best)) + 1 ? i : best;
        }
        this.first = best;
    }

    private static double ladenMm(WallBench wall) {
        return wall.carried().size() < 2 ? 0 : wall.faceSpan().lengthMm();
    }

    /** When a side is stood up, 0 first. */
    int turn(int side) {
        return Math.floorMod(side - first, walls.size());
    }

    WallBench wall(int turn) {
        return walls.get((first + turn) % walls.size());
    }

    /** Sides that stand already when a turn comes and that meet its side. */
    SortedSet<Integer> joinedBy(int turn) {
        int side = wall(turn).index();
        SortedSet<Integer> joined = new TreeSet<>();
        for (int step = -1; step <= 1; step += 2) {
            int neighbour = Math.floorMod(side + step, walls.size());
            if (turn(neighbour) < turn) {
                joined.add(neighbour);
            }
        }
        return joined;
    }

    /** Whether a line is driven while its wall lies on the bench. */
    boolean isAtBench(WallBench wall, FixingLine line) {
        boolean intoUpright = line.hold() == Box.Hold.WALL_TO_UPRIGHT || line.hold() == Box.Hold.UPRIGHTS_TOGETHER;
        return intoUpright && wall.carried().stream().anyMatch(u -> u.label().equals(line.into()));
    }

    /** The turn in which a line of a wall is driven; -1 for one that is driven at the bench or after the walls. */
    int joinTurn(WallBench wall, FixingLine line) {
        return switch (line.hold()) {
            case WALL_TO_UPRIGHT ->
                isAtBench(wall, line) ? -1 : later(wall.index(), carrier(line.into(), wall.index()));
            case LAP ->
                later(
                        wall.index(),
                        Objects.requireNonNull(pieces.get(line.into()), line.into())
                                .side());
            case CORNER_STRAP, STRAP_TO_UPRIGHT ->
                isAtDivider(line) ? -1 : later(wall.index(), Math.floorMod(wall.index() - 1, walls.size()));
            default -> -1;
        };
    }

    /** Whether one of the uprights under a strap goes in with its divider. */
    boolean isAtDivider(FixingLine line) {
        boolean isStrap = line.hold() == Box.Hold.CORNER_STRAP || line.hold() == Box.Hold.STRAP_TO_UPRIGHT;
        return isStrap && !(isCarried(line.through()) && isCarried(line.into()));
    }

    private boolean isCarried(String piece) {
        return walls.stream()
                .anyMatch(
                        wall -> wall.carried().stream().anyMatch(u -> u.label().equals(piece))
                                || wall.parts().boards().stream()
                                        .anyMatch(b -> b.label().equals(piece)));
    }

    private int later(int side, int other) {
        return Math.max(turn(side), turn(other));
    }

    private int carrier(String upright, int otherwise) {
        return walls.stream()
                .filter(wall -> wall.carried().stream().anyMatch(u -> u.label().equals(upright)))
                .map(WallBench::index)
                .findFirst()
                .orElse(otherwise);
    }
}
