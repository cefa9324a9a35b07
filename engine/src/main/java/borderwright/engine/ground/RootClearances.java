package borderwright.engine.ground;

import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * What keeps out of the ground that a tree's roots need: nothing is dug within 12 trunks of the trunk's middle, 15 m at most (BS
 * 5837:2012 4.6.1, from memory). The same standard asks for no change of level there, so soil that only stands on roots is not
 * shown to be right. On hard ground nothing is dug, and nothing is said.
 *
 * @param notes where what should be known is added
 * @param unmet where what does not hold is added
 */
record RootClearances(LengthFormat format, List<String> notes, List<Problem> unmet) {
    /** Straight lines to a quarter of a circle when its area inside the dug ground is told. */
    private static final int QUADRANT_PARTS = 64;

    private static final double MM2_PER_M2 = 1e6;

    void measure(double rootsMm, String where, String name, Geometry trunk, BoxWork work, List<SiteClearance> rows) {
        if (rootsMm == 0 || work.hard()) {
            return;
        }
        boolean digs = !work.dug().isEmpty() && take(rootsMm, name, "ground dug", work, work.dug(), trunk, rows);
        if (digs) {
            double insideM2 = work.dug()
                            .intersection(trunk.buffer(rootsMm, QUADRANT_PARTS))
                            .getArea()
                    / MM2_PER_M2;
            stop(
                    where,
                    "The ground of " + work.name() + " is dug "
                            + format.length(work.dug().distance(trunk))
                            + " from the trunk of " + name + "; its main roots are taken to reach "
                            + format.length(rootsMm) + ", and " + format.area(insideM2)
                            + " of the digging lies among them.");
        }
        if (!work.holes().isEmpty() && take(rootsMm, name, "holes for posts", work, work.holes(), trunk, rows)) {
            stop(
                    where,
                    "A hole for a post of " + work.name() + " is dug "
                            + format.length(work.holes().distance(trunk)) + " from the trunk of " + name
                            + "; its main roots are taken to reach " + format.length(rootsMm) + ".");
        }
        double over = work.outline().distance(trunk);
        if (over < rootsMm && !digs) {
            rows.add(new SiteClearance(work.name(), name, "soil on its roots", rootsMm, over, Verdict.NOT_SHOWN));
            notes.add("Not shown to hold: soil in " + work.name() + " stands on roots of " + name
                    + ". Keep it off the trunk, lay no sheet there, and ask somebody licensed to work on trees.");
        }
    }

    /** Adds a row; whether it does not hold. */
    private static boolean take(
            double rootsMm,
            String name,
            String part,
            BoxWork work,
            Geometry what,
            Geometry trunk,
            List<SiteClearance> rows) {
        double got = what.distance(trunk);
        Verdict verdict = SiteClearance.of(rootsMm, got);
        rows.add(new SiteClearance(work.name(), name, part, rootsMm, got, verdict));
        return verdict == Verdict.DOES_NOT_HOLD;
    }

    private void stop(String where, String sentence) {
        unmet.add(new Problem(
                "tree-roots",
                where,
                sentence,
                "Move the planter, or dig nothing there (`bed: none`, walls on levelled soil), and ask somebody licensed to"
                        + " work on trees first."));
    }
}
