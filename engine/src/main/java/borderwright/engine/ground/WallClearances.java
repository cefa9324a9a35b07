package borderwright.engine.ground;

import borderwright.engine.ground.SiteClearance.Verdict;
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
    private static final double SAME_MM = 0.5;

    void airBrick(String where, String name, Geometry place, double bottomMm, BoxWork work, List<SiteClearance> rows) {
        double over = work.topMm() - bottomMm;
        double got = work.outline().distance(place);
        boolean below = over <= SAME_MM;
        Verdict verdict = below ? Verdict.HOLDS : SiteClearance.of(openMm(), got);
        rows.add(new SiteClearance(
                work.name(),
                name,
                below ? "wall, whose rim lies below" : "wall in front",
                below ? 0 : openMm(),
                below ? -over : got,
                verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "air-brick",
                    where,
                    work.name() + " stands " + format.length(got) + " in front of " + name + " and "
                            + format.length(over) + " above its lower edge, so air hardly reaches it.",
                    "Leave a gap between planters there, make the wall " + format.length(over) + " lower, or keep it "
                            + format.length(openMm()) + " off; never cover an air brick."));
        }
    }

    void cladding(String where, String name, Geometry place, double bottomMm, BoxWork work, List<SiteClearance> rows) {
        double gap = work.outline().distance(place);
        if (gap >= splashMm()) {
            rows.add(new SiteClearance(work.name(), name, "wall", splashMm(), gap, Verdict.HOLDS));
            return;
        }
        double got = bottomMm - work.soilMm();
        Verdict verdict = SiteClearance.of(belowCladdingMm(), got);
        rows.add(new SiteClearance(work.name(), name, "soil, below", belowCladdingMm(), got, verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "cladding",
                    where,
                    "Soil in " + work.name() + " would stand " + format.length(Math.abs(got))
                            + (got < 0 ? " above" : " below") + " the lower edge of " + name + ", "
                            + format.length(gap) + " from it; " + format.length(belowCladdingMm())
                            + " below it is the usual least.",
                    "Make the wall " + format.length(Math.ceil(belowCladdingMm() - got))
                            + " lower, fill it less, or keep the box " + format.length(splashMm()) + " off."));
        }
        if (work.topMm() > bottomMm + SAME_MM) {
            Verdict air = SiteClearance.of(airMm(), gap);
            rows.add(new SiteClearance(work.name(), name, "air before it", airMm(), gap, air));
            if (air == Verdict.DOES_NOT_HOLD) {
                unmet.add(new Problem(
                        "cladding",
                        where,
                        work.name() + " stands " + format.length(gap) + " before " + name + " and reaches "
                                + format.length(work.topMm() - bottomMm) + " above its lower edge; "
                                + format.length(airMm()) + " of air lets it dry.",
                        "Give that edge a `gap` of " + format.length(airMm()) + ", or make the wall lower."));
            }
        }
    }

    private double openMm() {
        return format.rule(300);
    }

    private double splashMm() {
        return format.rule(500);
    }

    private double belowCladdingMm() {
        return format.rule(150);
    }

    private double airMm() {
        return format.rule(50);
    }
}
