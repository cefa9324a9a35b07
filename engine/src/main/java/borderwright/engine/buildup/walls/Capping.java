package borderwright.engine.buildup.walls;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.LapOrMitre;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.PlanterRings;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.Supports;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceWords;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.buildup.parts.PlacedSolids;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Prism;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ring of flat boards on top of the walls.
 *
 * <p>It follows the outline with an overhang outside. Corners are mitred where a saw at hand turns its fence that far,
 * else the end of one board butts on the edge of the next. Long sides are joined over posts and braces.
 */
public final class Capping {
    /** Common practice, no source. */
    private static final double SCALE_DEG = 0.1;

    private final Draft draft;
    private final Supports supports;
    private final double nearMm;
    private final double farMm;

    public Capping(Draft draft, Supports supports) {
        this.draft = draft;
        this.supports = supports;
        double overhang = draft.rules.cappingOverhang().mm();
        this.nearMm = -overhang;
        this.farMm = draft.sections.capping().width().mm() - overhang;
    }

    public void build(PieceMaker maker) {
        List<Strip> ring = new ArrayList<>();
        PlacedSolids apart = new PlacedSolids();
        boolean fits = PlanterRings.inside(draft.sides, farMm).isPresent();
        for (SideFrame side : draft.sides) {
            Strip strip = strip(side);
            fits = fits && strip.shortestMm() > 20;
            if (fits) {
                ring.add(strip);
                fits = apart.takes(List.of(solid(strip)));
            }
        }
        if (!fits || farMm < draft.wallMm()) {
            draft.cannot(tooWide());
            return;
        }
        for (SideFrame side : draft.sides) {
            build(maker, side, ring.get(side.side()));
        }
    }

    private Problem tooWide() {
        SectionSpec section = draft.sections.capping();
        return new Problem(
                "build.capping",
                BuildMessage.CAPPING_DOES_NOT_FIT.of(
                        section.name(), draft.plan.name(), farMm < draft.wallMm() ? "narrow" : "wide"));
    }

    private Strip strip(SideFrame side) {
        Strip.End left = setback(side.startAngle(), LapOrMitre.BUTTING);
        Strip.End right = setback(side.endAngle(), LapOrMitre.THROUGH);
        return new Strip(
                side.start(),
                side.along(),
                nearMm,
                farMm,
                left,
                new Strip.End(side.lengthMm() - right.nearMm(), side.lengthMm() - right.farMm()));
    }

    private Strip.End setback(double angle, LapOrMitre lapped) {
        double greatest = draft.bench.greatestFenceDeg();
        double mitre = LapOrMitre.mitredTiltDeg(angle);
        LapOrMitre cut =
                mitre <= greatest + SCALE_DEG || mitre <= LapOrMitre.lappedTiltDeg(angle) ? LapOrMitre.MITRED : lapped;
        return new Strip.End(
                LapOrMitre.setbackMm(cut, angle, nearMm, nearMm, farMm),
                LapOrMitre.setbackMm(cut, angle, farMm, nearMm, farMm));
    }

    private Prism solid(Strip strip) {
        double bottom = draft.stack.topMm();
        return new Prism(
                strip.outline(),
                bottom,
                bottom + draft.sections.capping().thickness().mm());
    }

    private void build(PieceMaker maker, SideFrame side, Strip whole) {
        SectionSpec section = draft.sections.capping();
        List<Strip> boards = whole.cutAt(joints(side, whole));
        List<String> planters = new ArrayList<>();
        for (Strip board : boards) {
            double s = StrictMath.max(board.left().nearMm(), side.innerStart(draft.wallMm()));
            planters.add(draft.planterAt(side.at(s + 1, draft.wallMm() + 1)));
        }
        List<String> labels = PieceLabels.cappings(planters, side.side());
        for (int i = 0; i < boards.size(); i++) {
            PieceMaker.Part part = PieceMaker.Part.builder()
                    .label(labels.get(i))
                    .planter(planters.get(i))
                    .role(Role.CAPPING)
                    .side(side.side())
                    .section(section)
                    .names(SideNames.RING)
                    .faceOut(FaceWords.up(draft.rules))
                    .waits(draft.waits(side, boards.get(i)))
                    .build();
            Strip board = boards.get(i);
            Prism solid = solid(board);
            draft.add(maker.flat(part, board, solid.bottomMm(), solid.topMm()));
            draft.join(new JointPlan(
                    Hold.CAPPING_TO_WALL,
                    FixingMessage.CAPPING_TO_WALLS.of(CappingScrews.SPACING_MM),
                    draft.screws.screw(
                            section.thickness().mm(),
                            draft.sections.walls().width().mm()),
                    side.side(),
                    labels.get(i),
                    ""));
        }
    }

    private List<Double> joints(SideFrame side, Strip whole) {
        double longest = draft.means.longestMm(draft.sections.capping().name());
        double from = StrictMath.min(whole.left().nearMm(), whole.left().farMm());
        double to = StrictMath.max(whole.right().nearMm(), whole.right().farMm());
        Optional<List<Double>> onSupports = BoardJoining.choose(from, to, longest, supports.middles(side), Set.of());
        if (onSupports.isPresent()) {
            return onSupports.get();
        }
        long pieces = (long) StrictMath.ceil((to - from) / longest);
        List<Double> even = new ArrayList<>();
        for (long k = 1; k < pieces; k++) {
            even.add(from + (to - from) * k / pieces);
        }
        return even;
    }
}
