package borderwright.engine.strength;

import borderwright.engine.strength.box.Board;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.Foot;
import borderwright.engine.strength.box.ScrewGroup;
import borderwright.engine.strength.box.Stem;
import borderwright.engine.strength.box.Strap;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.MemberAnswer;
import borderwright.engine.strength.loads.LoadCase;
import borderwright.engine.strength.timber.Effects;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.worked.StepMessage;
import java.util.List;

/** How much of boards, uprights, ties and screws one load case uses. */
final class FrameUses {
    private final BoxFrame frame;
    private final WorstUses worst;
    private final double strapN;

    FrameUses(BoxFrame frame, WorstUses worst, double strapN) {
        this.frame = frame;
        this.worst = worst;
        this.strapN = strapN;
    }

    void take(LoadCase loadCase, FrameAnswer answer) {
        boards(PartKind.WALL_BOARDS, frame.walls(), loadCase, answer);
        boards(PartKind.DIVIDER_BOARDS, frame.dividers(), loadCase, answer);
        for (Board board : frame.capping()) {
            capping(board, loadCase, answer);
        }
        for (Board tie : frame.ties()) {
            tie(tie, loadCase, answer);
        }
        for (Stem stem : frame.stems()) {
            stem(stem, loadCase, answer);
        }
        for (ScrewGroup screws : frame.holds()) {
            screws(screws, loadCase, answer);
        }
        for (Foot foot : frame.feet()) {
            foot(foot, loadCase, answer);
        }
        for (Strap strap : frame.straps()) {
            strap(strap, loadCase, answer);
        }
    }

    private void boards(PartKind parts, List<Board> boards, LoadCase loadCase, FrameAnswer answer) {
        LoadDuration duration = loadCase.duration();
        for (Board board : boards) {
            Timber timber = frame.materials().timber(board.sectionName());
            double moment = 0;
            double shear = 0;
            double axial = 0;
            for (Board.Part part : board.parts()) {
                MemberAnswer bar = answer.member(part.member());
                for (double at : bar.peaksAboutZ()) {
                    moment = Math.max(moment, Math.abs(bar.momentAboutZ(at)));
                    shear = Math.max(shear, Math.abs(bar.shearY(at)));
                }
                axial = Math.max(axial, bar.axial(0));
            }
            Effects effects = new Effects(moment, 0, axial);
            double force = shear;
            worst.take(
                    parts,
                    CheckKind.BENDING,
                    () -> PartMessage.PIECE.of(board.label()),
                    loadCase::name,
                    working -> timber.bending(board.section(), effects, duration, working));
            worst.take(
                    parts,
                    CheckKind.SHEAR,
                    () -> PartMessage.PIECE.of(board.label()),
                    loadCase::name,
                    working -> timber.shear(board.section(), force, duration, working));
        }
    }

    private void tie(Board tie, LoadCase loadCase, FrameAnswer answer) {
        Timber timber = frame.materials().timber(tie.sectionName());
        Effects effects =
                new Effects(0, 0, answer.member(tie.parts().get(0).member()).axial(0));
        worst.take(
                PartKind.TIES,
                CheckKind.TENSION,
                () -> PartMessage.PIECE.of(tie.label()),
                loadCase::name,
                working -> timber.bending(tie.section(), effects, loadCase.duration(), working));
    }

    private void stem(Stem stem, LoadCase loadCase, FrameAnswer answer) {
        Timber timber = frame.materials().timber(stem.sectionName());
        double along = 0;
        double outward = 0;
        double shear = 0;
        for (int member : stem.members()) {
            MemberAnswer bar = answer.member(member);
            for (double at : new double[] {0, bar.lengthMm()}) {
                along = Math.max(along, Math.abs(bar.momentAboutZ(at)));
                outward = Math.max(outward, Math.abs(bar.momentAboutY(at)));
            }
            shear = Math.max(shear, StrictMath.hypot(bar.shearY(0), bar.shearZ(0)));
        }
        Effects effects = new Effects(along, outward, 0);
        double force = shear;
        worst.take(
                PartKind.POSTS_AND_BRACES,
                CheckKind.BENDING,
                () -> PartMessage.PIECE.of(stem.label()),
                loadCase::name,
                working -> timber.bending(stem.section(), effects, loadCase.duration(), working));
        worst.take(
                PartKind.POSTS_AND_BRACES,
                CheckKind.SHEAR,
                () -> PartMessage.PIECE.of(stem.label()),
                loadCase::name,
                working -> timber.shear(stem.section(), force, loadCase.duration(), working));
    }

    private void screws(ScrewGroup screws, LoadCase loadCase, FrameAnswer answer) {
        double moment = screws.turn() >= 0 ? answer.springForce(screws.turn()) : 0;
        double upright = moment == 0 ? 0 : screws.count() * moment / screws.leverMm();
        double lateral = StrictMath.hypot(answer.springForce(screws.across()), upright);
        double pull = Math.max(0, answer.springForce(screws.along()));
        PartKind parts = switch (screws.kind()) {
            case WALL_TO_UPRIGHT -> PartKind.WALL_SCREWS;
            case TIE_TO_BRACE -> PartKind.TIE_SCREWS;
            case DIVIDER_TO_UPRIGHT -> PartKind.DIVIDER_SCREWS;
            case UPRIGHTS_TOGETHER, CORNER_STRAP, STRAP_TO_UPRIGHT, LAP, CAPPING_TO_WALL, TIE_BRACKET, OTHER ->
                PartKind.CORNER_SCREWS;
        };
        worst.take(
                parts,
                CheckKind.SCREWS,
                () -> PartMessage.SCREWS.of(screws.fixed(), screws.receiver(), screws.item()),
                loadCase::name,
                working -> screws.joint().utilisation(lateral, pull, screws.count(), loadCase.duration(), working));
    }

    private void strap(Strap strap, LoadCase loadCase, FrameAnswer answer) {
        double force = StrictMath.hypot(answer.springForce(strap.first()), answer.springForce(strap.second()));
        int corner = strap.corner() + 1;
        if (strapN > 0) {
            worst.take(
                    PartKind.STRAPS, CheckKind.STRAP, () -> PartMessage.CORNER.of(corner), loadCase::name, working -> {
                        working.step("F", StrengthStep.STRAP_FORCE, force, "N", "");
                        working.step("F,declared", "", strapN, "N", StepMessage.DECLARED_BY_ITS_MAKER);
                        return working.step("use", "F / F,declared", force / strapN, "", "");
                    });
        } else {
            worst.take(
                    PartKind.STRAP_SCREWS,
                    CheckKind.STRAP_SCREWS,
                    () -> PartMessage.CORNER_SCREWS.of(corner, strap.count(), strap.item()),
                    loadCase::name,
                    working -> strap.leg().utilisation(force, 0, strap.count(), loadCase.duration(), working));
        }
    }

    private void foot(Foot foot, LoadCase loadCase, FrameAnswer answer) {
        if (foot.footing().ground().lateralKnPerM3() == 0) {
            return;
        }
        double[] push = new double[2];
        double[] moment = new double[2];
        for (Foot.Spring spring : foot.springs()) {
            int axis = spring.isAcross() ? 1 : 0;
            double force = answer.springForce(spring.index());
            push[axis] += force;
            moment[axis] += force * spring.depthMm();
        }
        double kn = StrictMath.hypot(push[0], push[1]) / 1e3;
        double knM = StrictMath.hypot(moment[0], moment[1]) / 1e6;
        worst.take(
                PartKind.FOOTINGS,
                CheckKind.FOOTING,
                () -> PartMessage.PIECE.of(foot.label()),
                loadCase::name,
                working -> foot.footing().use(kn, knM, working));
    }

    /** The capping bends through its width. */
    private void capping(Board board, LoadCase loadCase, FrameAnswer answer) {
        double moment = 0;
        double axial = 0;
        for (Board.Part part : board.parts()) {
            MemberAnswer bar = answer.member(part.member());
            moment = Math.max(
                    moment, Math.max(Math.abs(bar.momentAboutZ(0)), Math.abs(bar.momentAboutZ(bar.lengthMm()))));
            axial = Math.max(axial, bar.axial(0));
        }
        Timber timber = frame.materials().timber(board.sectionName());
        Effects effects = new Effects(0, moment, axial);
        worst.take(
                PartKind.CAPPING,
                CheckKind.BENDING,
                () -> PartMessage.PIECE.of(board.label()),
                loadCase::name,
                working -> timber.bending(board.section(), effects, loadCase.duration(), working));
    }
}
