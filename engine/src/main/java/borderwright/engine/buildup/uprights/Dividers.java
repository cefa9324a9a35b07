package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.DividerStrip;
import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Nook;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The walls between planters: boards that butt between the inner faces of front and back, their ends bevelled to the
 * sides that they meet, screwed to an upright at each end that is also screwed to the wall.
 *
 * <p>One upright at each end, on the side of the divider where it bears best; a second one on the other side where the
 * wall's boards are joined at the divider, so that each of them has its own.
 */
public final class Dividers {
    /** Between a divider and the second of two uprights, taken up by its screws (common practice, no source). */
    private static final double PLAY_MM = 2;

    private final Draft draft;
    private final UprightBuilder uprights;
    private final NookUprights nooks;
    private final List<End> ends = new ArrayList<>();

    public Dividers(Draft draft, UprightBuilder uprights, NookUprights nooks) {
        this.draft = draft;
        this.uprights = uprights;
        this.nooks = nooks;
    }

    /**
     * One end of a divider at a wall.
     *
     * @param onRight the corner on its right-hand face, seen from the wall and from the divider
     * @param onLeft the corner on its left-hand face
     */
    private record End(DividerStrip divider, SideFrame side, Corner onRight, Corner onLeft, double middleMm) {}

    private record Corner(Nook fromWall, Nook fromDivider) {
        /** The same corner with the upright a little off the divider, so that this slides in between two uprights. */
        Corner withPlay() {
            Point apex = fromWall.apex().plus(fromWall.along().times(PLAY_MM));
            return new Corner(
                    new Nook(apex, fromWall.along(), fromWall.inwards(), fromWall.angle()),
                    new Nook(apex, fromDivider.along(), fromDivider.inwards(), fromDivider.angle()));
        }
    }

    /** Keeps the room that the boards take. */
    public void reserve() {
        for (DividerStrip divider : draft.dividers) {
            draft.clearance.take(draft.wallHigh(divider.strip().outline()));
        }
    }

    /** The first upright at each end. */
    public void standFirst() {
        for (DividerStrip divider : draft.dividers) {
            ends.add(end(divider, divider.fromSide(), divider.fromRight(), divider.fromLeft(), true));
            ends.add(end(divider, divider.toSide(), divider.toRight(), divider.toLeft(), false));
        }
        for (End end : ends) {
            if (!stand(end, end.onRight) && !stand(end, end.onLeft)) {
                draft.note(BuildMessage.DIVIDER_WITHOUT_UPRIGHT.of(
                        end.divider.index() + 1, draft.plan.name(), PieceLabels.letter(end.side.side())));
            }
        }
    }

    /** Where boards of a side may be joined at dividers, {@code s}. */
    List<Double> middles(SideFrame side) {
        return ends.stream()
                .filter(end -> end.side.side() == side.side())
                .map(End::middleMm)
                .toList();
    }

    /** A second upright at ends where the wall is joined. */
    void standAtJoints(SideFrame side, Set<Double> joints) {
        for (End end : ends) {
            if (end.side.side() == side.side() && joints.contains(end.middleMm)) {
                stand(end, end.onRight.withPlay());
                stand(end, end.onLeft.withPlay());
            }
        }
    }

    /** Where one upright stands on the wall and one on the divider, straps hold them to each other. */
    private void strap(End end, List<String> pair) {
        if (!pair.isEmpty()) {
            uprights.strap(end.side.side(), draft.screws.strapScrew(), FixingMessage.STRAPS_TO_UPRIGHTS, pair);
        }
    }

    private boolean stand(End end, Corner corner) {
        for (List<UprightPlan> choice : nooks.choices(corner.fromWall, corner.fromDivider, draft.sections.braces())) {
            if (uprights.fits(choice)) {
                List<String> labels = new ArrayList<>();
                for (UprightPlan upright : choice) {
                    String label = uprights.stand(upright, Role.BRACE, -1);
                    labels.add(label);
                    draft.join(new JointPlan(
                            Hold.DIVIDER_TO_UPRIGHT,
                            FixingMessage.DIVIDERS_TO_UPRIGHTS.of(Hold.DIVIDER_TO_UPRIGHT.perJoint()),
                            draft.screws.screw(
                                    draft.sections.dividers().thickness().mm(),
                                    UprightPlan.Stance.of(draft.sections.braces())
                                            .faceMm(),
                                    draft.rules.screws()),
                            end.divider.index(),
                            draft.plan.planters().get(end.divider.index()),
                            label));
                }
                strap(end, choice.size() == 2 ? labels : List.of());
                return true;
            }
        }
        return false;
    }

    private End end(DividerStrip divider, int sideIndex, Point right, Point left, boolean start) {
        SideFrame side = draft.sides.get(sideIndex);
        Point along = divider.strip().along();
        Point face = start ? along : along.times(-1);
        Point toRight = along.left().times(-1);
        return new End(
                divider,
                side,
                corner(side, right, face, toRight),
                corner(side, left, face, along.left()),
                side.s(right.towards(left, 0.5)));
    }

    private static Corner corner(SideFrame side, Point apex, Point face, Point away) {
        Point wall = side.along().dot(away) > 0 ? side.along() : side.along().times(-1);
        double angle = StrictMath.acos(StrictMath.max(-1, StrictMath.min(1, wall.dot(face))));
        return new Corner(new Nook(apex, wall, side.inwards(), angle), new Nook(apex, face, away, angle));
    }

    /** Boards in a divider: of the walls' width as many as the wall has, of another width as many as fit under its rim. */
    private int dividerCourses() {
        double width = draft.sections.dividers().width().mm();
        return (int) StrictMath.max(1, StrictMath.floor(draft.stack.wallMm() / width + 1e-6));
    }

    public void build(PieceMaker maker) {
        SectionSpec section = draft.sections.dividers();
        double longest = draft.means.longestMm(section.name());
        for (DividerStrip divider : draft.dividers) {
            String planter = draft.plan.planters().get(divider.index());
            if (divider.strip().overallMm() > longest) {
                draft.cannot(new Problem(
                        "sections",
                        BuildMessage.DIVIDER_LONGER_THAN_BOARDS.of(
                                divider.index() + 1,
                                draft.plan.name(),
                                divider.strip().overallMm(),
                                section.name(),
                                longest)));
            }
            for (int course = 1; course <= dividerCourses(); course++) {
                double bottom =
                        draft.stack.bottomMm() + (course - 1) * section.width().mm();
                PieceMaker.Part part = PieceMaker.Part.builder()
                        .label(PieceLabels.divider(planter, course))
                        .planter(planter)
                        .role(Role.DIVIDER)
                        .course(course)
                        .section(section)
                        .names(SideNames.MARKED)
                        .faceOut(FaceMessage.MARKED_FACE_TOWARDS.of(towards(divider)))
                        .touchesGround(course == 1)
                        .build();
                draft.add(maker.onEdge(
                        part, divider.strip(), bottom, bottom + section.width().mm()));
            }
        }
    }

    /** The planter on the divider's right, which its marked face looks at. */
    private String towards(DividerStrip divider) {
        Strip strip = divider.strip();
        double s = (strip.left().nearMm() + strip.right().nearMm()) / 2;
        return draft.planterAt(strip.at(s, strip.nearMm() - 1));
    }
}
