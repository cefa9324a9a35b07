package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The screws of a tie into the brace beside its end, or the bracket where they meet askew. */
final class TieFixings {
    /** Nearer to square than this a tie's flank and its brace bear without a rip, radians, as the builder has it. */
    private static final double SQUARE_RAD = 0.02;

    private static final double STAND_OFF_MM = 1;

    private final BoxParts parts;

    TieFixings(BoxParts parts) {
        this.parts = parts;
    }

    List<FixingLine> at(SideFrame side, WorkFace face, WallBench.Parts all) {
        List<FixingLine> lines = new ArrayList<>();
        for (BenchCrosspiece cross : all.crosspieces()) {
            if (cross.role() == Piece.Role.TIE) {
                Piece tie = parts.where(p -> p.label().equals(cross.label())).get(0);
                end(side, tie, cross).ifPresent(lines::add);
            }
        }
        return lines;
    }

    private Optional<FixingLine> end(SideFrame side, Piece tie, BenchCrosspiece cross) {
        Optional<Piece> brace = brace(side, tie);
        double faceMm = brace.map(b -> parts.stance(b).faceMm()).orElse(0.0);
        double tieMm = parts.section(tie).thickness().mm();
        boolean askew = tie.side() != side.side()
                && brace.map(b -> isAskew(side, tie, b)).orElse(false);
        Optional<Box.Fixing> fixing =
                askew ? parts.fixing(Box.Hold.TIE_BRACKET, 0, 0) : parts.fixing(Box.Hold.TIE_TO_BRACE, tieMm, faceMm);
        return fixing.map(found -> {
            int count = found.hold().perJoint();
            List<Mark> marks = new ArrayList<>();
            Span height = cross.height();
            for (int k = 1; k <= count; k++) {
                double up = height.fromMm() + height.lengthMm() * k / (count + 1);
                marks.add(new Mark(cross.inner().middleMm(), up));
            }
            double edge = height.lengthMm() / (count + 1);
            double depth = brace.map(b -> parts.stance(b).depthMm()).orElse(0.0);
            return new FixingLine(found, tie.label(), brace.map(Piece::label).orElse(""), marks, edge, depth / 2);
        });
    }

    /** The upright that bears on this side and touches the tie's flank there; of several the one that touches it most. */
    private Optional<Piece> brace(SideFrame side, Piece tie) {
        WorkFace flank = flank(tie);
        Span tieAcross = flank.across(tie.place().plan());
        return parts.uprights().stream()
                .filter(upright -> parts.bearing(upright, side).isPresent())
                .filter(upright -> gapMm(flank.across(upright.place().plan()), tieAcross) <= BoxParts.STAND_OFF_MM)
                .min(Comparator.comparingDouble(upright ->
                        BoxParts.middle(upright).distanceMm(side.at(side.s(BoxParts.middle(tie)), parts.wallMm))));
    }

    private static WorkFace flank(Piece tie) {
        Point along = tie.alongMm().level();
        return new WorkFace(BoxParts.middle(tie), along, 0);
    }

    private static double gapMm(Span a, Span b) {
        return StrictMath.max(a.fromMm() - b.toMm(), b.fromMm() - a.toMm());
    }

    /** Whether the brace's flank does not lie on the tie's, as the builder judges it. */
    private boolean isAskew(SideFrame side, Piece tie, Piece brace) {
        Point along = tie.alongMm().level();
        Point toBrace = BoxParts.middle(brace).minus(BoxParts.middle(tie));
        Point onWall = side.along().times(side.along().dot(along.left()) * toBrace.dot(along.left()) > 0 ? 1 : -1);
        double angle = StrictMath.acos(StrictMath.max(-1, StrictMath.min(1, -onWall.dot(along))));
        Stance stance = parts.stance(brace);
        boolean square = stance.isStout() && StrictMath.abs(stance.depthMm() * UprightPlan.cot(angle)) <= STAND_OFF_MM;
        return brace.rip() == null && !square && StrictMath.abs(angle - StrictMath.PI / 2) >= SQUARE_RAD;
    }
}
