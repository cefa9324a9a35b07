package borderwright.engine.ground;

import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_AIR;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_SOIL_BELOW;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_WALL;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_WALL_BELOW;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_WALL_IN_FRONT;

import borderwright.engine.ground.NearbyFinding.Way;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Message;
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

    void airBrick(String where, Message name, Geometry place, double bottomMm, BoxWork work, List<SiteClearance> rows) {
        double over = work.levels().topMm() - bottomMm;
        double got = work.outline().distance(place);
        boolean below = over <= SAME_MM;
        Verdict verdict = below ? Verdict.HOLDS : SiteClearance.of(openMm(), got);
        rows.add(new SiteClearance(
                work.name(),
                name,
                (below ? CLEARANCE_OF_WALL_BELOW : CLEARANCE_OF_WALL_IN_FRONT).of(),
                below ? 0 : openMm(),
                below ? -over : got,
                verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(where, NearbyFinding.AIR_BRICK.of(work.name(), got, name, over, openMm())));
        }
    }

    void cladding(String where, Message name, Geometry place, double bottomMm, BoxWork work, List<SiteClearance> rows) {
        double gap = work.outline().distance(place);
        if (gap >= splashMm()) {
            rows.add(new SiteClearance(work.name(), name, CLEARANCE_OF_WALL.of(), splashMm(), gap, Verdict.HOLDS));
            return;
        }
        double got = bottomMm - work.levels().soilMm();
        Verdict verdict = SiteClearance.of(belowCladdingMm(), got);
        rows.add(new SiteClearance(work.name(), name, CLEARANCE_OF_SOIL_BELOW.of(), belowCladdingMm(), got, verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    where,
                    NearbyFinding.CLADDING.of(
                            work.name(),
                            Math.abs(got),
                            Way.of(got),
                            name,
                            gap,
                            belowCladdingMm(),
                            Math.ceil(belowCladdingMm() - got),
                            splashMm())));
        }
        if (work.levels().topMm() > bottomMm + SAME_MM) {
            Verdict air = SiteClearance.of(airMm(), gap);
            rows.add(new SiteClearance(work.name(), name, CLEARANCE_OF_AIR.of(), airMm(), gap, air));
            if (air == Verdict.DOES_NOT_HOLD) {
                unmet.add(new Problem(
                        where,
                        NearbyFinding.CLADDING_AIR.of(
                                work.name(), gap, name, work.levels().topMm() - bottomMm, airMm())));
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
