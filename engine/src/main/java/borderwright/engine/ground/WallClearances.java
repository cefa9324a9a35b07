package borderwright.engine.ground;

import borderwright.engine.ground.Clearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * What keeps clear of a wall's air bricks and cladding. Air bricks: open for 300 mm in front of them above their lower edge.
 * Cladding: soil 150 mm below it within 500 mm of it (as for damp-proof courses), and 50 mm of air before it where the box reaches
 * above its lower edge. All are common practice, no source.
 *
 * @param unmet where what does not hold is added
 */
record WallClearances(LengthFormat format, List<Problem> unmet) {
    private static final double OPEN_MM = 300;
    private static final double BELOW_CLADDING_MM = 150;
    private static final double AIR_MM = 50;
    private static final double SPLASH_MM = 500;
    private static final double SAME_MM = 0.5;

    void airBrick(String where, String name, Geometry place, double bottomMm, BoxWork work, List<Clearance> rows) {
        double over = work.topMm() - bottomMm;
        double got = work.outline().distance(place);
        boolean below = over <= SAME_MM;
        Verdict verdict = below ? Verdict.HOLDS : Clearance.of(OPEN_MM, got);
        rows.add(new Clearance(
                work.name(),
                name,
                below ? "wall, whose rim lies below" : "wall in front",
                below ? 0 : OPEN_MM,
                below ? -over : got,
                verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "air-brick",
                    where,
                    work.name() + " stands " + format.length(got) + " in front of " + name + " and "
                            + format.length(over) + " above its lower edge, so air hardly reaches it.",
                    "Leave a gap between planters there, make the wall " + format.length(over) + " lower, or keep it "
                            + format.length(OPEN_MM) + " off; never cover an air brick."));
        }
    }

    void cladding(String where, String name, Geometry place, double bottomMm, BoxWork work, List<Clearance> rows) {
        double gap = work.outline().distance(place);
        if (gap >= SPLASH_MM) {
            rows.add(new Clearance(work.name(), name, "wall", SPLASH_MM, gap, Verdict.HOLDS));
            return;
        }
        double got = bottomMm - work.soilMm();
        Verdict verdict = Clearance.of(BELOW_CLADDING_MM, got);
        rows.add(new Clearance(work.name(), name, "soil, below", BELOW_CLADDING_MM, got, verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "cladding",
                    where,
                    "Soil in " + work.name() + " would stand " + format.length(Math.abs(got))
                            + (got < 0 ? " above" : " below") + " the lower edge of " + name + ", "
                            + format.length(gap) + " from it; " + format.length(BELOW_CLADDING_MM)
                            + " below it is the usual least.",
                    "Make the wall " + format.length(Math.ceil(BELOW_CLADDING_MM - got))
                            + " lower, fill it less, or keep the box " + format.length(SPLASH_MM) + " off."));
        }
        if (work.topMm() > bottomMm + SAME_MM) {
            Verdict air = Clearance.of(AIR_MM, gap);
            rows.add(new Clearance(work.name(), name, "air before it", AIR_MM, gap, air));
            if (air == Verdict.DOES_NOT_HOLD) {
                unmet.add(new Problem(
                        "cladding",
                        where,
                        work.name() + " stands " + format.length(gap) + " before " + name + " and reaches "
                                + format.length(work.topMm() - bottomMm) + " above its lower edge; "
                                + format.length(AIR_MM) + " of air lets it dry.",
                        "Give that edge a `gap` of " + format.length(AIR_MM) + ", or make the wall lower."));
            }
        }
    }
}
