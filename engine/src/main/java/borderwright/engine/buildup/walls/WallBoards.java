package borderwright.engine.buildup.walls;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.LapOrMitre;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceWords;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * The boards of the walls.
 *
 * <p>Laps turn with the courses like a pinwheel: in odd courses every board butts at its left end and runs through at
 * its right, in even courses the other way round. So laps alternate at any number of corners, odd or even, and at a
 * square box all courses have boards of the same lengths, which needs fewer stops at the saw.
 *
 * <p>See docs/decisions/0030.
 */
public final class WallBoards {
    private final Draft draft;
    private final List<CornerChoice> corners = new ArrayList<>();

    public WallBoards(Draft draft) {
        this.draft = draft;
        CornerStyle requested = draft.rules.corners();
        double greatest = draft.bench.greatestTiltDeg(draft.sections.walls());
        for (SideFrame side : draft.sides) {
            CornerChoice choice = CornerChoice.of(side.startAngle(), requested, greatest);
            corners.add(choice);
            report(side, requested, choice);
        }
    }

    /** One whole board of a course, before joints. */
    public Strip strip(int course, SideFrame side) {
        double wall = draft.wallMm();
        return new Strip(
                side.start(),
                side.along(),
                0,
                wall,
                end(course, side.startAngle(), corners.get(side.side()), true, wall),
                endAt(
                        side.lengthMm(),
                        end(course, side.endAngle(), corners.get((side.side() + 1) % corners.size()), false, wall)));
    }

    /** Screws go through the laps; those into the end grain of a mitre would split it. */
    public void fixLaps() {
        Screw screw = draft.screws.screw(
                draft.wallMm(), Stance.of(draft.sections.posts()).depthMm(), draft.rules.screws());
        for (SideFrame side : draft.sides) {
            boolean lapped = corners.get(side.side()).style() == CornerStyle.LAPPED;
            if (lapped && side.startAngle() < StrictMath.PI) {
                draft.join(new JointPlan(
                        Hold.LAP, FixingMessage.THROUGH_LAPS.of(Hold.LAP.perJoint()), screw, side.side(), "", ""));
            }
        }
    }

    /**
     * The boards of one course on one side.
     *
     * @param joints where the board is joined, {@code s} in order
     */
    public void build(PieceMaker maker, SideFrame side, Course course, List<Double> joints) {
        List<Strip> boards = strip(course.number(), side).cutAt(joints);
        List<String> planters = new ArrayList<>();
        for (Strip board : boards) {
            double s = StrictMath.max(board.left().nearMm(), board.left().farMm());
            double inner = StrictMath.max(s, side.innerStart(draft.wallMm()));
            planters.add(draft.planterAt(side.at(inner + 1, draft.wallMm() + 1)));
        }
        List<String> labels = PieceLabels.walls(planters, course.number(), side.side());
        for (int i = 0; i < boards.size(); i++) {
            PieceMaker.Part part = PieceMaker.Part.builder()
                    .label(labels.get(i))
                    .planter(planters.get(i))
                    .role(Role.WALL)
                    .course(course.number())
                    .side(side.side())
                    .section(draft.sections.walls())
                    .names(SideNames.WALL)
                    .faceOut(FaceWords.out(draft.rules))
                    .waits(draft.waits(side, boards.get(i)))
                    .touchesGround(course.number() == 1)
                    .build();
            draft.add(maker.onEdge(part, boards.get(i), course.bottomMm(), course.topMm()));
        }
    }

    /** How far behind its corner a board ends, on its outer and inner face. */
    private static Strip.End end(int course, double angle, CornerChoice choice, boolean leftEnd, double wall) {
        LapOrMitre cut = choice.style() == CornerStyle.MITRED
                ? LapOrMitre.MITRED
                : leftEnd == (course % 2 == 1) ? LapOrMitre.BUTTING : LapOrMitre.THROUGH;
        return new Strip.End(
                LapOrMitre.setbackMm(cut, angle, 0, 0, wall), LapOrMitre.setbackMm(cut, angle, wall, 0, wall));
    }

    private static Strip.End endAt(double lengthMm, Strip.End setback) {
        return new Strip.End(lengthMm - setback.nearMm(), lengthMm - setback.farMm());
    }

    private void report(SideFrame side, CornerStyle requested, CornerChoice choice) {
        double angleDeg = StrictMath.toDegrees(side.startAngle());
        if (!choice.inRange()) {
            draft.cannot(new Problem(
                    "saws",
                    BuildMessage.CORNER_BEYOND_SAWS.of(
                            side.side() + 1, draft.plan.name(), angleDeg, word(choice.style()), choice.tiltDeg())));
        } else if (choice.style() != requested) {
            draft.note(BuildMessage.CORNER_OF_OTHER_STYLE.of(
                    side.side() + 1,
                    draft.plan.name(),
                    angleDeg,
                    word(choice.style()),
                    word(requested),
                    choice.tiltDeg()));
        }
    }

    private static String word(CornerStyle style) {
        return style == CornerStyle.MITRED ? "mitred" : "lapped";
    }
}
