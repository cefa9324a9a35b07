package borderwright.engine.strength;

import borderwright.engine.strength.box.Board;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.Foot;
import borderwright.engine.strength.box.LoadCase;
import borderwright.engine.strength.box.ScrewGroup;
import borderwright.engine.strength.box.Stem;
import borderwright.engine.strength.box.Strap;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.MemberAnswer;
import borderwright.engine.strength.timber.Effects;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.Timber;
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
        boards("wall boards", frame.walls(), loadCase, answer);
        boards("divider boards", frame.dividers(), loadCase, answer);
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

    private void boards(String parts, List<Board> boards, LoadCase loadCase, FrameAnswer answer) {
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
                    Clauses.BENDING,
                    board.label(),
                    loadCase.words(),
                    working -> timber.bending(board.section(), effects, duration, working));
            worst.take(
                    parts,
                    Clauses.SHEAR,
                    board.label(),
                    loadCase.words(),
                    working -> timber.shear(board.section(), force, duration, working));
        }
    }

    private void tie(Board tie, LoadCase loadCase, FrameAnswer answer) {
        Timber timber = frame.materials().timber(tie.sectionName());
        Effects effects =
                new Effects(0, 0, answer.member(tie.parts().get(0).member()).axial(0));
        worst.take(
                "ties",
                Clauses.PULL,
                tie.label(),
                loadCase.words(),
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
                "posts and braces",
                Clauses.BENDING,
                stem.label(),
                loadCase.words(),
                working -> timber.bending(stem.section(), effects, loadCase.duration(), working));
        worst.take(
                "posts and braces",
                Clauses.SHEAR,
                stem.label(),
                loadCase.words(),
                working -> timber.shear(stem.section(), force, loadCase.duration(), working));
    }

    private void screws(ScrewGroup screws, LoadCase loadCase, FrameAnswer answer) {
        double moment = screws.turn() >= 0 ? answer.springForce(screws.turn()) : 0;
        double upright = moment == 0 ? 0 : screws.count() * moment / screws.leverMm();
        double lateral = StrictMath.hypot(answer.springForce(screws.across()), upright);
        double pull = Math.max(0, answer.springForce(screws.along()));
        String parts = switch (screws.kind()) {
            case WALL_TO_UPRIGHT -> "screws of walls";
            case TIE_TO_BRACE -> "screws of ties";
            case DIVIDER_TO_UPRIGHT -> "screws of dividers";
            case UPRIGHTS_TOGETHER, CORNER_STRAP, STRAP_TO_UPRIGHT, LAP, CAPPING_TO_WALL, TIE_BRACKET, OTHER ->
                "screws of corner uprights";
        };
        worst.take(
                parts,
                Clauses.SCREWS,
                screws.words() + " (" + screws.item() + ")",
                loadCase.words(),
                working -> screws.joint().utilisation(lateral, pull, screws.count(), loadCase.duration(), working));
    }

    private void strap(Strap strap, LoadCase loadCase, FrameAnswer answer) {
        double force = StrictMath.hypot(answer.springForce(strap.first()), answer.springForce(strap.second()));
        String corner = "corner " + (strap.corner() + 1);
        if (strapN > 0) {
            worst.take("straps", Clauses.STRAP, corner, loadCase.words(), working -> {
                working.given("F", "design force in the strap", force, "N", "");
                working.given("F,declared", "", strapN, "N", "declared by its maker");
                return working.step("use", "F / F,declared", force / strapN, "", "");
            });
        } else {
            worst.take(
                    "screws of straps",
                    Clauses.STRAP_SCREWS,
                    corner + " (" + strap.count() + " " + strap.item() + " in each leg)",
                    loadCase.words(),
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
                "posts in the ground",
                Clauses.FOOTING,
                foot.label(),
                loadCase.words(),
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
                "capping",
                Clauses.BENDING,
                board.label(),
                loadCase.words(),
                working -> timber.bending(board.section(), effects, loadCase.duration(), working));
    }
}
