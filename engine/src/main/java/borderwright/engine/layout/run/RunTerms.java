package borderwright.engine.layout.run;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.layout.plan.LayoutRules;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One run as it is laid out.
 *
 * <p>See docs/decisions/0025.
 *
 * @param spec as resolved
 * @param where its field path in the document
 * @param depthMm depth of its planters, outside, mm
 * @param rules how boxes are built
 */
public record RunTerms(RunSpec spec, String where, double depthMm, LayoutRules rules) {
    RunTerms withDepth(double mm) {
        return new RunTerms(spec, where, mm, rules);
    }

    boolean isJoined() {
        return spec.bays().join() != PlanterJoin.SEPARATE;
    }

    /** Whether it is a row that stands away from the edges. */
    public boolean isFree() {
        return spec.isFree();
    }

    /** Planters on each edge; nothing where their length decides. */
    OptionalInt planters() {
        return spec.bays().planters();
    }

    /** Length of a planter; nothing where their number decides. */
    Optional<LengthRange> length() {
        return spec.bays().length();
    }

    /** Distance that later rows and runs keep from its boxes, mm: paths between rows may be narrower than those between boxes. */
    public double aroundMm() {
        return spec.standing()
                .rows()
                .map(rows -> Math.min(betweenMm(), rows.paths().mm()))
                .orElse(betweenMm());
    }

    public boolean isStepped() {
        return spec.standing().slope() == SlopeForm.STEPPED;
    }

    public boolean isCapped() {
        return spec.size().rim() == RunSpec.Rim.CAPPED;
    }

    /** Distance between neighbouring planters of one stretch, mm: 0 when they share a divider. */
    public double gapMm() {
        return isJoined() ? 0 : betweenMm();
    }

    /** Distance between boxes that do not share a wall, mm. */
    double betweenMm() {
        return spec.gaps().between().mm();
    }

    public double reachMm() {
        return spec.standing().reach().mm();
    }

    double sagMm() {
        return spec.turning().offTheCurve().mm();
    }

    public double platformMm() {
        return spec.size().falseFloor().mm();
    }

    public double heightMm() {
        return spec.size().height().from().mm();
    }

    /** What is requested at a corner: for that corner itself, else for all. */
    CornerTurn turnAt(String corner) {
        return spec.turning().others().stream()
                .filter(other -> other.corner().equals(corner))
                .map(RunSpec.CornerSpec::turn)
                .findFirst()
                .orElse(spec.turning().turn());
    }
}
