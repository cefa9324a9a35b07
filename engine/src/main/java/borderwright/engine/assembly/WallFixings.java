package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.From;
import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.StrapLegs;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** The joints of a box that are on one wall, as lines of fixings on its face. */
final class WallFixings {
    private static final double SAME_MM = 0.5;

    private final BoxParts parts;
    private final HomeWalls homes;

    WallFixings(BoxParts parts, HomeWalls homes) {
        this.parts = parts;
        this.homes = homes;
    }

    List<FixingLine> of(SideFrame side, WorkFace face, WallBench.Parts all) {
        List<FixingLine> lines = new ArrayList<>();
        for (BenchUpright upright : all.uprights()) {
            parts.joints(side.side(), Box.Hold.WALL_TO_UPRIGHT).stream()
                    .filter(joint -> joint.into().equals(upright.label()))
                    .forEach(joint -> columns(face, joint.screws())
                            .forEach(column -> lines.add(intoUpright(face, all, joint, column))));
        }
        lap(lines, side, face, all, side.side());
        lap(lines, side, face, all, side.side() + 1);
        parts.box.joints().stream()
                .filter(joint -> joint.hold() == Box.Hold.UPRIGHTS_TOGETHER && homes.isHome(side.side(), joint.into()))
                .forEach(joint -> lines.add(plain(face, joint, From.BACK)));
        for (Box.Hold hold : List.of(Box.Hold.CORNER_STRAP, Box.Hold.STRAP_TO_UPRIGHT)) {
            parts.joints(side.side(), hold).forEach(joint -> strap(lines, side, face, joint));
        }
        for (BenchCrosspiece cross : all.crosspieces()) {
            for (Box.Hold hold : List.of(Box.Hold.TIE_TO_BRACE, Box.Hold.TIE_BRACKET)) {
                parts.joints(side.side(), hold).stream()
                        .filter(joint -> joint.through().equals(cross.label()))
                        .forEach(joint -> lines.add(tie(face, cross, joint)));
            }
        }
        for (BenchCap cap : all.caps()) {
            parts.joints(side.side(), Box.Hold.CAPPING_TO_WALL).stream()
                    .filter(joint -> joint.through().equals(cap.label()))
                    .forEach(joint -> lines.add(cap(face, cap, joint)));
        }
        return lines;
    }

    static List<Mark> marks(WorkFace face, List<ScrewLine> screws) {
        return screws.stream()
                .map(screw -> new Mark(face.x(screw.head()), screw.zMm() - face.bottomMm()))
                .toList();
    }

    /** Screws one above the other, from left to right. */
    private static List<List<ScrewLine>> columns(WorkFace face, List<ScrewLine> screws) {
        TreeMap<Double, List<ScrewLine>> columns = new TreeMap<>();
        for (ScrewLine screw : screws) {
            double x = face.x(screw.head());
            Double near = columns.ceilingKey(x - SAME_MM);
            boolean same = near != null && near <= x + SAME_MM;
            columns.computeIfAbsent(same ? near : x, k -> new ArrayList<>()).add(screw);
        }
        return List.copyOf(columns.values());
    }

    private FixingLine intoUpright(WorkFace face, WallBench.Parts all, Joint joint, List<ScrewLine> column) {
        List<Mark> marks = marks(face, column);
        return new FixingLine(
                parts.fixing(joint),
                From.FACE,
                "",
                joint.into(),
                marks,
                edgeMm(all.boards().get(0), marks),
                endMm(all, marks.get(0)));
    }

    /** Through the boards of this wall at one of its corners, into the ends of the neighbour's. */
    private void lap(List<FixingLine> lines, SideFrame side, WorkFace face, WallBench.Parts all, int corner) {
        int at = StrictMath.floorMod(corner, parts.sides.size());
        for (Joint joint : parts.joints(at, Box.Hold.LAP)) {
            List<ScrewLine> mine = joint.screws().stream()
                    .filter(screw -> side.inwards().dot(screw.planAt(1).minus(screw.head())) > 1 - 1e-6
                            && StrictMath.abs(side.w(screw.head())) < SAME_MM)
                    .toList();
            if (!mine.isEmpty()) {
                List<Mark> marks = marks(face, mine);
                int neighbour = corner == side.side() ? side.side() - 1 : side.side() + 1;
                List<Piece> ends = parts.boards(StrictMath.floorMod(neighbour, parts.sides.size()), 0);
                lines.add(new FixingLine(
                        parts.fixing(joint),
                        From.FACE,
                        "",
                        ends.get(0).label(),
                        marks,
                        edgeMm(all.boards().get(0), marks),
                        endMm(all, marks.get(0))));
            }
        }
    }

    /** Over the two uprights of a corner; round an inner corner, where they stand away, over its boards course by course. */
    private void strap(List<FixingLine> lines, SideFrame side, WorkFace face, Joint joint) {
        if (!isOnBoards(joint)) {
            lines.add(plain(face, joint, From.BACK));
            return;
        }
        int before = StrictMath.floorMod(side.side() - 1, parts.sides.size());
        // Outside the walls turn back, so inside their faces meet further out.
        double past = -parts.wallMm / StrictMath.tan(side.startAngle() / 2);
        for (Box.Course course : parts.box.courses()) {
            List<ScrewLine> mine = joint.screws().stream()
                    .filter(screw -> screw.zMm() > course.bottomMm() && screw.zMm() < course.topMm())
                    .toList();
            if (!mine.isEmpty()) {
                String last = parts.boards(before, course.number()).stream()
                        .reduce((a, b) -> b)
                        .orElseThrow()
                        .label();
                String first = parts.boards(side.side(), course.number()).get(0).label();
                lines.add(new FixingLine(
                        parts.fixing(joint),
                        From.BACK,
                        last,
                        first,
                        marks(face, mine),
                        past + StrapLegs.FIRST_MM,
                        past + StrapLegs.SECOND_MM));
            }
        }
    }

    private boolean isOnBoards(Joint strap) {
        return parts.joints(strap.side(), Box.Hold.STRAP_TO_UPRIGHT).stream()
                .anyMatch(joint -> joint.use().code() == FixingMessage.STRAPS_TO_BOARDS
                        && joint.through().equals(strap.through())
                        && joint.into().equals(strap.into()));
    }

    private FixingLine plain(WorkFace face, Joint joint, From from) {
        return new FixingLine(
                parts.fixing(joint), from, joint.through(), joint.into(), marks(face, joint.screws()), 0, 0);
    }

    private FixingLine tie(WorkFace face, BenchCrosspiece cross, Joint joint) {
        List<Mark> marks = marks(face, joint.screws());
        double edge = marks.stream()
                .mapToDouble(mark -> StrictMath.min(
                        mark.upMm() - cross.height().fromMm(), cross.height().toMm() - mark.upMm()))
                .min()
                .orElse(0);
        double off = face.behind(joint.screws().get(0).head()) - parts.wallMm;
        return new FixingLine(parts.fixing(joint), From.ALONG, joint.through(), joint.into(), marks, edge, off);
    }

    private FixingLine cap(WorkFace face, BenchCap cap, Joint joint) {
        List<Mark> marks = marks(face, joint.screws());
        double behind = face.behind(joint.screws().get(0).head());
        double end = StrictMath.min(
                marks.get(0).xMm()
                        - StrictMath.max(cap.outer().fromMm(), cap.inner().fromMm()),
                StrictMath.min(cap.outer().toMm(), cap.inner().toMm())
                        - marks.get(marks.size() - 1).xMm());
        return new FixingLine(
                parts.fixing(joint),
                From.ABOVE,
                cap.label(),
                "",
                marks,
                behind - cap.behind().fromMm(),
                end);
    }

    /** From the screws of the bottom board to its nearer edge. */
    static double edgeMm(BenchBoard bottom, List<Mark> marks) {
        return marks.stream()
                .mapToDouble(Mark::upMm)
                .filter(up -> bottom.height().holds(up, 0))
                .map(up -> StrictMath.min(
                        up - bottom.height().fromMm(), bottom.height().toMm() - up))
                .min()
                .orElse(bottom.height().lengthMm() / 4);
    }

    private static double endMm(WallBench.Parts all, Mark mark) {
        double least = Double.POSITIVE_INFINITY;
        for (BenchBoard board : all.boards()) {
            if (board.face().holds(mark.xMm(), 0) && board.height().holds(mark.upMm(), 0)) {
                least = StrictMath.min(
                        least,
                        StrictMath.min(
                                mark.xMm() - board.face().fromMm(), board.face().toMm() - mark.xMm()));
            }
        }
        return Double.isInfinite(least) ? 0 : least;
    }
}
