package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.walls.CappingScrews;
import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fixings of one wall: through its boards into each upright, through its laps, of its corner, of the ties that begin or end
 * on it, and of the capping on it.
 */
final class WallFixings {
    /** A joint of boards as near as this to an upright's middle lies on it: both ends are then screwed to it. */
    private static final double JOINT_MM = 1;

    private final BoxParts parts;
    private final CornerFixings corners;
    private final TieFixings ties;

    WallFixings(BoxParts parts) {
        this.parts = parts;
        this.corners = new CornerFixings(parts);
        this.ties = new TieFixings(parts);
    }

    List<FixingLine> of(SideFrame side, WorkFace face, WallBench.Parts all) {
        List<FixingLine> lines = new ArrayList<>();
        for (BenchUpright upright : all.uprights()) {
            if (parts.bearing(piece(upright.label()), side).isEmpty()) {
                continue;
            }
            for (double x : columns(all, upright)) {
                intoUpright(all, upright, x).ifPresent(lines::add);
            }
        }
        lap(side, face, all, true).ifPresent(lines::add);
        lap(side, face, all, false).ifPresent(lines::add);
        lines.addAll(corners.at(side, face, all));
        lines.addAll(ties.at(side, face, all));
        for (BenchCap cap : all.caps()) {
            cap(cap).ifPresent(lines::add);
        }
        return lines;
    }

    /** One line up the middle of an upright; two where boards are joined on it, each in the middle of its half. */
    private static List<Double> columns(WallBench.Parts all, BenchUpright upright) {
        Span boards = all.boards().stream()
                .map(board -> board.face().within(board.back()))
                .reduce(Span::with)
                .orElseThrow();
        Span face = upright.face();
        double middle = face.middleMm();
        boolean joined = all.joints().stream().anyMatch(joint -> StrictMath.abs(joint - middle) < JOINT_MM);
        if (joined) {
            double half = face.lengthMm() / 4;
            return List.of(middle - half, middle + half);
        }
        return List.of(face.within(boards).middleMm());
    }

    private Optional<FixingLine> intoUpright(WallBench.Parts all, BenchUpright upright, double x) {
        Piece piece = piece(upright.label());
        return parts.fixing(
                        Box.Hold.WALL_TO_UPRIGHT,
                        parts.wallMm,
                        parts.stance(piece).depthMm())
                .map(fixing -> {
                    List<Mark> marks = new ArrayList<>();
                    for (Box.Course course : parts.box.courses()) {
                        BoxParts.quarters(height(course)).forEach(up -> marks.add(new Mark(x, up)));
                    }
                    return new FixingLine(fixing, "", upright.label(), marks, edgeMm(), endMm(all, x));
                });
    }

    private Span height(Box.Course course) {
        return new Span(course.bottomMm() - parts.bottomMm, course.topMm() - parts.bottomMm);
    }

    private double edgeMm() {
        return height(parts.box.courses().get(0)).lengthMm() / 4;
    }

    private static double endMm(WallBench.Parts all, double x) {
        double least = Double.POSITIVE_INFINITY;
        for (BenchBoard board : all.boards()) {
            Span span = board.face();
            if (span.holds(x, 0)) {
                least = StrictMath.min(least, StrictMath.min(x - span.fromMm(), span.toMm() - x));
            }
        }
        return Double.isInfinite(least) ? 0 : least;
    }

    /** Screws through the boards of this wall that run past the end of the neighbour's, at its left or right corner. */
    private Optional<FixingLine> lap(SideFrame side, WorkFace face, WallBench.Parts all, boolean left) {
        double angle = left ? side.startAngle() : side.endAngle();
        Optional<Box.Fixing> fixing = parts.fixing(Box.Hold.LAP, parts.wallMm, Double.POSITIVE_INFINITY);
        if (fixing.isEmpty() || angle >= StrictMath.PI) {
            return Optional.empty();
        }
        int n = parts.sides.size();
        int neighbour = Math.floorMod(side.side() + (left ? -1 : 1), n);
        Point corner = parts.box.plan().outline().corner(left ? side.side() : side.side() + 1);
        double back = StrictMath.max(
                parts.wallMm / 2,
                parts.wallMm * StrictMath.cos(angle) / StrictMath.sin(angle)
                        + parts.wallMm / 2 / StrictMath.sin(angle));
        double x = face.x(corner) + (left ? back : -back);
        List<Mark> marks = new ArrayList<>();
        String into = "";
        for (Box.Course course : parts.box.courses()) {
            List<Piece> mine = parts.boards(side.side(), course.number());
            List<Piece> theirs = parts.boards(neighbour, course.number());
            Piece own = mine.get(left ? 0 : mine.size() - 1);
            Piece other = theirs.get(left ? theirs.size() - 1 : 0);
            if (WallBenchMaker.reaches(own, corner) && !WallBenchMaker.reaches(other, corner)) {
                BoxParts.quarters(height(course)).forEach(up -> marks.add(new Mark(x, up)));
                into = into.isEmpty() ? other.label() : into;
            }
        }
        return marks.isEmpty()
                ? Optional.empty()
                : Optional.of(new FixingLine(fixing.get(), "", into, marks, edgeMm(), endMm(all, x)));
    }

    private Optional<FixingLine> cap(BenchCap cap) {
        Piece piece = piece(cap.label());
        double thick = cap.height().lengthMm();
        return parts.fixing(Box.Hold.CAPPING_TO_WALL, thick, edgeMm() * 4).map(fixing -> {
            double from = cap.outer().with(cap.inner()).fromMm();
            List<Mark> marks = CappingScrews.along(piece.length().mm()).stream()
                    .map(at -> new Mark(from + at, cap.height().toMm()))
                    .toList();
            double aside = parts.wallMm / 2 - cap.behind().fromMm();
            return new FixingLine(
                    fixing,
                    cap.label(),
                    "",
                    marks,
                    StrictMath.min(aside, cap.behind().lengthMm() - aside),
                    marks.get(0).xMm() - from);
        });
    }

    private Piece piece(String label) {
        return parts.where(p -> p.label().equals(label) && p.role() != Role.WALL)
                .get(0);
    }
}
