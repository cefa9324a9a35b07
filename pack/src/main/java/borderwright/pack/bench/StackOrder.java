package borderwright.pack.bench;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * In which order upright solids are painted so that the nearer covers the farther, the eye being above: what lies below comes
 * before what lies on it; else an edge of one that has the other wholly outside tells which is nearer.
 */
final class StackOrder {
    /** Solids may touch or overlap by this, mm. */
    private static final double TOUCH_MM = 0.6;

    private final List<Prism> solids;
    private final Point away;
    private final boolean[] done;
    private final boolean[] open;
    private final List<Integer> order = new ArrayList<>();
    private final double[] left;
    private final double[] right;

    StackOrder(List<Prism> solids, Point away) {
        Point across = away.left().times(-1);
        this.left = solids.stream().mapToDouble(s -> least(s.plan(), across)).toArray();
        this.right = solids.stream().mapToDouble(s -> most(s.plan(), across)).toArray();
        this.solids = solids;
        this.away = away;
        this.done = new boolean[solids.size()];
        this.open = new boolean[solids.size()];
    }

    List<Integer> farthestFirst() {
        for (int i = 0; i < solids.size(); i++) {
            visit(i);
        }
        return order;
    }

    private void visit(int i) {
        if (done[i] || open[i]) {
            return;
        }
        open[i] = true;
        for (int k = 0; k < solids.size(); k++) {
            if (k != i && !done[k] && meetOnPaper(i, k) && isBefore(solids.get(k), solids.get(i))) {
                visit(k);
            }
        }
        open[i] = false;
        done[i] = true;
        order.add(i);
    }

    /** Whether they could cover each other at all: their reach across the view overlaps. */
    private boolean meetOnPaper(int a, int b) {
        return left[a] < right[b] && left[b] < right[a];
    }

    private static double least(Ring ring, Point way) {
        return ring.corners().stream().mapToDouble(p -> p.dot(way)).min().orElseThrow();
    }

    private static double most(Ring ring, Point way) {
        return ring.corners().stream().mapToDouble(p -> p.dot(way)).max().orElseThrow();
    }

    /** Whether a is painted before b. */
    private boolean isBefore(Prism a, Prism b) {
        int plan = onPlan(a.plan(), b.plan());
        if (plan != 0) {
            return plan < 0;
        }
        return a.topMm() <= b.bottomMm() + TOUCH_MM;
    }

    /** -1 where a is the farther, 1 where it is the nearer, 0 where no edge parts them, or one that is seen end on. */
    private int onPlan(Ring a, Ring b) {
        int found = parted(a, b);
        return found != 0 ? found : -parted(b, a);
    }

    /** By the edges of a. */
    private int parted(Ring a, Ring b) {
        for (int i = 0; i < a.size(); i++) {
            Point outward = a.direction(i).left().times(-1);
            double limit = a.corner(i).dot(outward);
            double side = outward.dot(away);
            if (StrictMath.abs(side) > 1e-6
                    && least(b, outward) >= limit - TOUCH_MM
                    && most(a, outward) <= limit + TOUCH_MM) {
                return side < 0 ? -1 : 1;
            }
        }
        return 0;
    }
}
