package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import java.util.ArrayList;
import java.util.List;

/**
 * The solids placed so far, to ask whether another one has room.
 *
 * <p>Convex plans only. Two convex polygons are apart when a line along a side of one of them separates them (separating
 * axes); touching counts as apart.
 */
public final class PlacedSolids {
    /** Overlaps thinner than this are rounding, mm. */
    private static final double TOUCH_MM = 0.02;

    private final List<Taken> taken = new ArrayList<>();
    private final PlanGrid grid = new PlanGrid();

    private record Taken(Prism prism, PlanGrid.Bounds bounds) {
        boolean mayMeet(Taken o) {
            return bounds.overlaps(o.bounds)
                    && prism.bottomMm() < o.prism.topMm() - TOUCH_MM
                    && o.prism.bottomMm() < prism.topMm() - TOUCH_MM;
        }
    }

    public void take(Prism prism) {
        PlanGrid.Bounds bounds = PlanGrid.Bounds.of(prism.plan());
        grid.add(taken.size(), bounds);
        taken.add(new Taken(prism, bounds));
    }

    /** Takes solids in turn; whether none meets another. */
    public boolean takes(List<Prism> prisms) {
        boolean apart = true;
        for (Prism prism : prisms) {
            apart &= isFree(prism);
            take(prism);
        }
        return apart;
    }

    public boolean isFree(Prism wanted) {
        return meeting(wanted).isEmpty();
    }

    /** The solids already placed that would overlap {@code wanted}, in order of placing. */
    public List<Prism> meeting(Prism wanted) {
        Taken asked = new Taken(wanted, PlanGrid.Bounds.of(wanted.plan()));
        List<Prism> met = new ArrayList<>();
        for (int number : grid.near(asked.bounds)) {
            Taken other = taken.get(number);
            if (asked.mayMeet(other) && overlap(wanted, other.prism)) {
                met.add(other.prism);
            }
        }
        return met;
    }

    private static boolean overlap(Prism a, Prism b) {
        List<Point> ours = a.plan().corners();
        List<Point> theirs = b.plan().corners();
        return !separated(ours, theirs) && !separated(theirs, ours);
    }

    /** Whether a side of {@code a} has all of {@code b} on its outside. */
    private static boolean separated(List<Point> a, List<Point> b) {
        for (int i = 0; i < a.size(); i++) {
            Point from = a.get(i);
            Point side = a.get((i + 1) % a.size()).minus(from);
            double inside = TOUCH_MM * side.lengthMm();
            boolean apart = true;
            for (int k = 0; k < b.size() && apart; k++) {
                apart = side.cross(b.get(k).minus(from)) <= inside;
            }
            if (apart) {
                return true;
            }
        }
        return false;
    }
}
