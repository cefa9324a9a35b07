package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.CourseStack;
import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.Supports;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.measure.UnitSystem;
import java.util.List;

/**
 * Stands uprights on the bed inside the walls, and counts the screws through the walls into them.
 *
 * <p>They end a little below the rim that the dried wall will have, at a length that is easily set, and two screws go
 * through each board into each of them (common practice, no source).
 */
public final class UprightBuilder {
    /** Below the rim of the dried wall. */
    private static final double BELOW_RIM_MM = 20;

    private static final String STRAP = "corner strap";
    private static final double QUARTER_INCH_MM = 6.35;

    private final Draft draft;
    private final Supports supports;
    private final PieceMaker maker;

    public UprightBuilder(Draft draft, Supports supports, PieceMaker maker) {
        this.draft = draft;
        this.supports = supports;
        this.maker = maker;
    }

    Prism solid(UprightPlan upright) {
        return new Prism(upright.plan(), draft.stack.bottomMm() - draft.rules.postFootingMm(), topMm());
    }

    private double topMm() {
        double bottom = draft.stack.bottomMm();
        double most = draft.stack.wallMm() * (1 - CourseStack.SHRINKAGE) - BELOW_RIM_MM;
        double step = draft.means.units() == UnitSystem.IMPERIAL ? QUARTER_INCH_MM : 5;
        return bottom + StrictMath.max(step * StrictMath.floor(most / step), draft.stack.wallMm() / 2);
    }

    boolean fits(List<UprightPlan> uprights) {
        return uprights.stream().allMatch(upright -> draft.clearance.isFree(solid(upright)));
    }

    /**
     * Places an upright and settles the screws from the walls that it bears on.
     *
     * @return its label
     */
    String stand(UprightPlan upright, Role role, int side) {
        Prism solid = solid(upright);
        draft.clearance.take(solid);
        String planter = draft.planterAt(middle(upright));
        String label = draft.labels.next(planter, role);
        PieceMaker.Part part = PieceMaker.Part.builder()
                .label(label)
                .planter(planter)
                .role(role)
                .side(side)
                .section(upright.section())
                .names(SideNames.MARKED)
                .faceOut(FaceMessage.ANY_FACE_OF_UPRIGHT.of())
                .touchesGround(true)
                .build();
        draft.add(maker.upright(part, upright, solid.bottomMm(), solid.topMm()));
        for (SideFrame borne : draft.sides) {
            if (supports.add(borne, upright.plan())) {
                draft.join(new JointPlan(
                        Hold.WALL_TO_UPRIGHT,
                        FixingMessage.WALLS_TO_UPRIGHTS.of(Hold.WALL_TO_UPRIGHT.perJoint()),
                        wallScrew(upright),
                        borne.side(),
                        "",
                        label));
            }
        }
        return label;
    }

    /** A strap in each course over two uprights, or round the inner corner between them, with its screws. */
    void strap(int side, Screw screw, FixingMessage use, List<String> pair) {
        draft.join(new JointPlan(
                Hold.CORNER_STRAP,
                FixingMessage.STRAP_OVER_A_CORNER.of(),
                new Screw(STRAP, 0, 0),
                side,
                pair.get(0),
                pair.get(1)));
        draft.join(new JointPlan(
                Hold.STRAP_TO_UPRIGHT,
                use.of(Hold.STRAP_TO_UPRIGHT.perJoint() / 2),
                screw,
                side,
                pair.get(0),
                pair.get(1)));
    }

    Screw wallScrew(UprightPlan upright) {
        return draft.screws.screw(
                draft.wallMm(), UprightPlan.Stance.of(upright.section()).depthMm(), draft.rules.screws());
    }

    static Point middle(UprightPlan upright) {
        Point sum = new Point(0, 0);
        for (Point p : upright.plan().corners()) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / upright.plan().size());
    }
}
