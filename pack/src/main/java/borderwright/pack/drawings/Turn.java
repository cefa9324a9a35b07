package borderwright.pack.drawings;

import borderwright.engine.buildup.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.SidePlan;
import java.util.List;

/** How far a plan is turned so that fronts look towards the reader and the longest side lies level. */
final class Turn {
    private Turn() {}

    /** Radians anticlockwise. */
    static double towardsReader(List<Box> boxes) {
        Point longest = new Point(1, 0);
        double lengthMm = 0;
        Point outwards = new Point(0, 0);
        for (Box box : boxes) {
            Ring ring = box.plan().outline();
            for (int i = 0; i < ring.size(); i++) {
                SidePlan.Role role = box.plan().sides().get(i).role();
                if (role == SidePlan.Role.FRONT) {
                    outwards = outwards.plus(ring.direction(i).left().times(-ring.sideMm(i)));
                }
                if (role != SidePlan.Role.END && ring.sideMm(i) > lengthMm + 1) {
                    lengthMm = ring.sideMm(i);
                    longest = ring.direction(i);
                }
            }
        }
        double turn = -StrictMath.atan2(longest.yMm(), longest.xMm());
        double away = outwards.xMm() * StrictMath.sin(turn) + outwards.yMm() * StrictMath.cos(turn);
        return away > 1 ? turn + StrictMath.PI : turn;
    }
}
