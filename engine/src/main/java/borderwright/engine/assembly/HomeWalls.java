package borderwright.engine.assembly;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.SidePlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which wall carries each upright at the bench.
 *
 * <p>The wall that it stands square to and bears on well; of two such walls the longer, of two equally long ones a front or
 * back rather than an end: so the long walls are built lying down and the short ones close the box.
 */
final class HomeWalls {
    private static final double PARALLEL = 1e-6;

    /** A bearing of less than half another one's is the upright's end, not its face. */
    private static final double WELL = 0.5;

    private static final double SAME_MM = 1;

    private final BoxParts parts;
    private final Map<String, Integer> homes = new TreeMap<>();

    HomeWalls(BoxParts parts) {
        this.parts = parts;
        for (Piece upright : parts.uprights()) {
            home(upright).ifPresent(side -> homes.put(upright.label(), side));
        }
        // Two uprights that are screwed to each other go on one wall: the heads lie behind the other one's boards.
        for (Joint joint : parts.box.joints()) {
            Integer home = homes.get(joint.into());
            if (joint.hold() == Box.Hold.UPRIGHTS_TOGETHER && home != null) {
                homes.put(joint.through(), home);
            }
        }
    }

    /** The wall that carries an upright. */
    boolean isHome(int side, String upright) {
        Integer home = homes.get(upright);
        return home != null && home == side;
    }

    private record Choice(SideFrame side, double bearsMm, boolean parallel, boolean isEnd) {}

    private Optional<Integer> home(Piece upright) {
        List<Choice> choices = new ArrayList<>();
        for (SideFrame side : parts.sides) {
            boolean parallel = isParallel(upright.place().plan(), side);
            boolean isEnd = parts.box.plan().sides().get(side.side()).role() == SidePlan.Role.END;
            if (parts.holds(side.side(), upright)) {
                WorkFace face = new WorkFace(side.at(0, 0), side.along(), parts.bottomMm);
                Span bears = face.alongAt(upright.place().plan(), parts.wallMm, BoxParts.STAND_OFF_MM)
                        .orElseThrow();
                choices.add(new Choice(side, bears.lengthMm(), parallel, isEnd));
            }
        }
        boolean someParallel = choices.stream().anyMatch(Choice::parallel);
        double most = choices.stream()
                .filter(choice -> choice.parallel || !someParallel)
                .mapToDouble(Choice::bearsMm)
                .max()
                .orElse(0);
        return choices.stream()
                .filter(choice -> choice.parallel || !someParallel)
                .filter(choice -> choice.bearsMm >= WELL * most)
                .min(Comparator.comparingLong((Choice c) -> -StrictMath.round(c.side.lengthMm() / SAME_MM))
                        .thenComparing(Choice::isEnd)
                        .thenComparingInt(c -> c.side.side() == upright.side() ? 0 : 1))
                .map(choice -> choice.side.side());
    }

    private static boolean isParallel(Ring ring, SideFrame side) {
        for (int i = 0; i < ring.size(); i++) {
            Point edge = ring.direction(i);
            if (StrictMath.abs(edge.cross(side.along())) < PARALLEL) {
                return true;
            }
        }
        return false;
    }
}
