package borderwright.engine.ground;

import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_DUG_GROUND;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_POST_HOLES;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_SOIL_ON_ROOTS;

import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * What keeps out of the ground that a tree's roots need: nothing is dug within 12 trunks of the trunk's middle, 15 m at most (BS
 * 5837:2012 4.6.1, from memory). The same standard asks for no change of level there, so soil that only stands on roots is not
 * shown to be right. On hard ground nothing is dug, and there is no row.
 *
 * @param notes where what should be known is added
 * @param unmet where what does not hold is added
 */
record RootClearances(List<Message> notes, List<Problem> unmet) {
    /** Straight lines to a quarter of a circle when its area inside the dug ground is measured. */
    private static final int QUADRANT_PARTS = 64;

    private static final double MM2_PER_M2 = 1e6;

    void measure(double rootsMm, String where, Message name, Geometry trunk, BoxWork work, List<SiteClearance> rows) {
        if (rootsMm == 0 || work.surface().isHard()) {
            return;
        }
        boolean digs =
                !work.dug().isEmpty() && take(rootsMm, name, CLEARANCE_OF_DUG_GROUND, work, work.dug(), trunk, rows);
        if (digs) {
            double insideM2 = work.dug()
                            .intersection(trunk.buffer(rootsMm, QUADRANT_PARTS))
                            .getArea()
                    / MM2_PER_M2;
            stop(
                    where,
                    NearbyFinding.DUG_AMONG_ROOTS.of(work.name(), work.dug().distance(trunk), name, rootsMm, insideM2));
        }
        if (!work.holes().isEmpty() && take(rootsMm, name, CLEARANCE_OF_POST_HOLES, work, work.holes(), trunk, rows)) {
            stop(
                    where,
                    NearbyFinding.POST_HOLE_AMONG_ROOTS.of(
                            work.name(), work.holes().distance(trunk), name, rootsMm));
        }
        double over = work.outline().distance(trunk);
        if (over < rootsMm && !digs) {
            rows.add(new SiteClearance(
                    work.name(), name, CLEARANCE_OF_SOIL_ON_ROOTS.of(), rootsMm, over, Verdict.NOT_SHOWN));
            notes.add(NearbyFinding.SOIL_ON_ROOTS.of(work.name(), name));
        }
    }

    /** Adds a row; whether it does not hold. */
    private static boolean take(
            double rootsMm,
            Message name,
            ClearanceMessage part,
            BoxWork work,
            Geometry what,
            Geometry trunk,
            List<SiteClearance> rows) {
        double got = what.distance(trunk);
        Verdict verdict = SiteClearance.of(rootsMm, got);
        rows.add(new SiteClearance(work.name(), name, part.of(), rootsMm, got, verdict));
        return verdict == Verdict.DOES_NOT_HOLD;
    }

    private void stop(String where, Message finding) {
        unmet.add(new Problem(where, NearbyFinding.TREE_ROOTS.of(finding)));
    }
}
