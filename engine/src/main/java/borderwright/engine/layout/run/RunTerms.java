package borderwright.engine.layout.run;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/**
 * What one run asks for, with the defaults filled in.
 *
 * @param wish as resolved
 * @param where its field path in the document
 * @param depthMm depth of its planters, outside, mm
 * @param rules how boxes are built
 */
public record RunTerms(RunSpec wish, String where, double depthMm, LayoutRules rules) {
    /** Defaults where nothing is given (common practice, no source). */
    private static final double BETWEEN_MM = 20;

    private static final double REACH_MM = 600;
    private static final double SAG_MM = 40;

    RunTerms withDepth(double mm) {
        return new RunTerms(wish, where, mm, rules);
    }

    boolean isJoined() {
        return wish.join() != PlanterJoin.SEPARATE;
    }

    /** Whether it is a row that stands away from the edges. */
    public boolean isFree() {
        return wish.isFree();
    }

    /** Distance that later rows and runs keep from its boxes, mm: paths between rows may be narrower than those between boxes. */
    public double aroundMm() {
        return wish.rows() == null
                ? betweenMm()
                : Math.min(betweenMm(), wish.rows().pathsOrHabit().mm());
    }

    public boolean isStepped() {
        return wish.slope() == SlopeForm.STEPPED;
    }

    public boolean isCapped() {
        return Boolean.TRUE.equals(wish.capping());
    }

    /** Distance between neighbouring planters of one stretch, mm: 0 when they share a divider. */
    public double gapMm() {
        return isJoined() ? 0 : betweenMm();
    }

    /** Distance between boxes that do not share a wall, mm. */
    double betweenMm() {
        return mm(wish.between(), BETWEEN_MM);
    }

    public double reachMm() {
        return mm(wish.reach(), REACH_MM);
    }

    double sagMm() {
        return mm(wish.sag(), SAG_MM);
    }

    public double platformMm() {
        return mm(wish.platform(), 0);
    }

    public double heightMm() {
        return wish.height().from().mm();
    }

    /** What was requested at a corner: of that corner itself, else of all. */
    CornerTurn turnAt(String corner) {
        for (RunSpec.CornerSpec said : wish.corners()) {
            if (said.corner().equals(corner)) {
                return said.turn();
            }
        }
        return wish.turn() == null ? CornerTurn.MITRED : wish.turn();
    }

    private static double mm(@Nullable Length said, double habitMm) {
        return said == null ? habitMm : said.mm();
    }
}
