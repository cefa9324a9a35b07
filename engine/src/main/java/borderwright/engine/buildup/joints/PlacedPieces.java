package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PlanGrid;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The pieces of a draft by what joints ask for. */
final class PlacedPieces {
    private static final double INSIDE_MM = 0.05;

    final Draft draft;
    private final List<Solid> solids = new ArrayList<>();
    private final PlanGrid grid = new PlanGrid();
    private final Map<String, List<JointPlan>> joints = new HashMap<>();
    private final Map<String, Piece> byLabel = new HashMap<>();
    private final Map<String, List<Piece>> walls = new HashMap<>();
    private final Map<String, List<Piece>> dividers = new HashMap<>();

    private record Solid(Prism prism, PlanGrid.Bounds bounds) {
        boolean holds(Point at, double zMm) {
            return zMm > prism.bottomMm()
                    && zMm < prism.topMm()
                    && bounds.contains(at)
                    && prism.plan().contains(at, INSIDE_MM);
        }
    }

    PlacedPieces(Draft draft) {
        this.draft = draft;
        for (Piece piece : draft.pieces()) {
            PlanGrid.Bounds bounds = PlanGrid.Bounds.of(piece.place().plan());
            grid.add(solids.size(), bounds);
            solids.add(new Solid(piece.place(), bounds));
            byLabel.put(piece.label(), piece);
            if (piece.role() == Role.WALL) {
                walls.computeIfAbsent(piece.side() + "/" + piece.course(), k -> new ArrayList<>())
                        .add(piece);
            } else if (piece.role() == Role.DIVIDER) {
                dividers.computeIfAbsent(piece.planter(), k -> new ArrayList<>())
                        .add(piece);
            }
        }
        draft.joints()
                .forEach(joint -> joints.computeIfAbsent(joint.into(), k -> new ArrayList<>())
                        .add(joint));
        walls.values().forEach(boards -> {
            SideFrame side = side(boards.get(0).side());
            boards.sort(Comparator.comparingDouble(board -> middleMm(side, board)));
        });
    }

    Piece piece(String label) {
        return Objects.requireNonNull(byLabel.get(label), label);
    }

    /** Boards of a side in one course, from its left end. */
    List<Piece> boards(SideFrame side, int course) {
        return walls.getOrDefault(side.side() + "/" + course, List.of());
    }

    /** Those of them that may lie over a stretch of the side, in order; none that does is left out. */
    List<Piece> boardsOver(SideFrame side, int course, Reach stretch) {
        List<Piece> all = boards(side, course);
        int low = 0;
        int high = all.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (middleMm(side, all.get(middle)) < stretch.fromMm()) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        // Boards of a course lie end to end, so a neighbour's middle is beyond the ends of all that are farther.
        int from = StrictMath.max(0, low - 2);
        int to = low;
        while (to < all.size() && middleMm(side, all.get(to)) <= stretch.toMm()) {
            to++;
        }
        return all.subList(from, StrictMath.min(all.size(), to + 2));
    }

    private static double middleMm(SideFrame side, Piece board) {
        return side.s(board.place().plan().meanCorner());
    }

    /** Whether wood lies at a place. */
    boolean isWood(Point at, double zMm) {
        for (int near : grid.near(PlanGrid.Bounds.of(at))) {
            if (solids.get(near).holds(at, zMm)) {
                return true;
            }
        }
        return false;
    }

    /** Joints that end in a piece, in the order of the draft. */
    List<JointPlan> into(String label) {
        return joints.getOrDefault(label, List.of());
    }

    /** Boards of the divider at the end of a planter. */
    List<Piece> divider(String planter) {
        return dividers.getOrDefault(planter, List.of());
    }

    SideFrame side(int index) {
        return draft.sides.get(StrictMath.floorMod(index, draft.sides.size()));
    }

    /**
     * Where a board of a side lies at a depth behind its outer face, along the side.
     *
     * @param fromMm its left end there
     * @param toMm its right end
     */
    record Reach(double fromMm, double toMm) {
        double lengthMm() {
            return toMm - fromMm;
        }

        Reach and(Reach other) {
            return new Reach(StrictMath.max(fromMm, other.fromMm), StrictMath.min(toMm, other.toMm));
        }
    }

    /** What of a flat board lies over or on a line along a side. */
    static Reach reach(Piece board, SideFrame side, double behindMm) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        List<Point> corners = board.place().plan().corners();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double wa = side.w(a) - behindMm;
            double wb = side.w(b) - behindMm;
            if (StrictMath.min(wa, wb) > 1e-3 || StrictMath.max(wa, wb) < -1e-3) {
                continue;
            }
            double share = StrictMath.abs(wa - wb) < 1e-9 ? 0 : StrictMath.max(0, StrictMath.min(1, wa / (wa - wb)));
            double s = side.s(a.towards(b, share));
            double other = StrictMath.abs(wa - wb) < 1e-9 ? side.s(b) : s;
            from = StrictMath.min(from, StrictMath.min(s, other));
            to = StrictMath.max(to, StrictMath.max(s, other));
        }
        return new Reach(from, to);
    }
}
