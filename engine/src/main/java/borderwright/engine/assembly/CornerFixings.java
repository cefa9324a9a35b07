package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What holds the two uprights of a corner to each other: screws where they touch, else a strap at each course. It is listed
 * with the wall that begins at the corner.
 */
final class CornerFixings {
    /** A face that stands off less bears, as the builder has it. */
    private static final double STAND_OFF_MM = 1;

    private final BoxParts parts;

    CornerFixings(BoxParts parts) {
        this.parts = parts;
    }

    List<FixingLine> at(SideFrame side, WorkFace face, WallBench.Parts all) {
        List<Piece> pair = parts.where(p -> p.role() == Role.POST && p.side() == side.side());
        if (pair.size() < 2) {
            return List.of();
        }
        Piece first = pair.get(0);
        Piece second = pair.get(1);
        Stance stance = parts.stance(first);
        double x = all.uprights().stream()
                .filter(u -> u.label().equals(second.label()) || u.label().equals(first.label()))
                .mapToDouble(u -> u.face().fromMm())
                .min()
                .orElse(0);
        boolean touch = side.startAngle() < StrictMath.PI
                && StrictMath.abs(stance.depthMm() * UprightPlan.cot(side.startAngle())) <= STAND_OFF_MM;
        List<FixingLine> lines = new ArrayList<>();
        if (touch) {
            add(lines, parts.fixing(Box.Hold.UPRIGHTS_TOGETHER, stance.depthMm(), stance.faceMm()), second, first, x);
        } else {
            add(lines, parts.fixing(Box.Hold.CORNER_STRAP, 0, 0), second, first, x);
            add(lines, parts.fixing(Box.Hold.STRAP_TO_UPRIGHT, 0, stance.depthMm()), second, first, x);
        }
        return lines;
    }

    /** As many as a joint has, evenly up each course. */
    private void add(List<FixingLine> lines, Optional<Box.Fixing> found, Piece through, Piece into, double x) {
        found.ifPresent(fixing -> {
            int each = fixing.hold().perJoint();
            List<Mark> marks = new ArrayList<>();
            for (Box.Course course : parts.box.courses()) {
                double low = course.bottomMm() - parts.bottomMm;
                double high = course.topMm() - course.bottomMm();
                for (int k = 0; k < each; k++) {
                    marks.add(new Mark(x, low + high * (2 * k + 1) / (2 * each)));
                }
            }
            Box.Course first = parts.box.courses().get(0);
            double apart = (first.topMm() - first.bottomMm()) / (2 * each);
            lines.add(new FixingLine(fixing, through.label(), into.label(), marks, apart, apart));
        });
    }
}
