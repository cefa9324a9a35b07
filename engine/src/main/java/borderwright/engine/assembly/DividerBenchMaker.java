package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lays the dividers of a box out, their marked face up, with the uprights beside their ends. */
final class DividerBenchMaker {
    private final BoxParts parts;

    DividerBenchMaker(BoxParts parts) {
        this.parts = parts;
    }

    List<WallBench> dividers() {
        List<WallBench> dividers = new ArrayList<>();
        for (int i = 0; i < parts.box.plan().dividers().size(); i++) {
            List<Piece> boards = parts.dividerBoards(i);
            if (!boards.isEmpty()) {
                dividers.add(divider(i, boards));
            }
        }
        return dividers;
    }

    private WallBench divider(int index, List<Piece> pieces) {
        Piece first = pieces.get(0);
        Point along = first.alongMm().level();
        Ring plan = first.place().plan();
        WorkFace rough = new WorkFace(plan.corner(0), along, parts.bottomMm);
        double near = rough.across(plan).fromMm();
        double start =
                rough.alongAt(plan, near, BoxParts.STAND_OFF_MM).orElseThrow().fromMm();
        WorkFace face = new WorkFace(rough.at(start, near), along, parts.bottomMm);
        List<BenchBoard> boards = pieces.stream()
                .map(piece -> WallBenchMaker.board(piece, face))
                .sorted(Comparator.comparingInt(BenchBoard::course))
                .toList();
        double thickness = face.across(plan).lengthMm();
        List<BenchUpright> uprights = new ArrayList<>();
        List<FixingLine> lines = new ArrayList<>();
        for (Joint joint : parts.joints(index, Box.Hold.DIVIDER_TO_UPRIGHT)) {
            BenchUpright upright = upright(face, parts.piece(joint.into()), thickness);
            uprights.add(upright);
            lines.add(line(face, boards.get(0), upright, joint));
        }
        uprights.sort(Comparator.comparingDouble(u -> u.face().fromMm()));
        WallBench.Parts all = new WallBench.Parts(thickness, boards, uprights, List.of(), List.of());
        return new WallBench(
                parts.box.plan().name(),
                WallBench.Kind.DIVIDER,
                index,
                face,
                WallBenchMaker.hook(boards.get(0)),
                all,
                lines);
    }

    private static BenchUpright upright(WorkFace face, Piece upright, double thickness) {
        Ring plan = upright.place().plan();
        Span across = face.across(plan);
        boolean farSide = across.middleMm() > thickness / 2;
        double touches = farSide ? across.fromMm() : across.toMm();
        double deepest = farSide ? across.toMm() : across.fromMm();
        return new BenchUpright(
                upright.label(),
                upright.role(),
                face.alongAt(plan, touches, BoxParts.STAND_OFF_MM).orElseGet(() -> face.along(plan)),
                face.alongAt(plan, deepest, BoxParts.STAND_OFF_MM).orElseGet(() -> face.along(plan)),
                face.heights(upright.place().bottomMm(), upright.place().topMm()),
                across.lengthMm(),
                farSide ? BenchUpright.Place.FAR_SIDE : BenchUpright.Place.NEAR_SIDE);
    }

    /** Through the boards into the upright; where another upright covers their far face, through the upright into them. */
    private FixingLine line(WorkFace face, BenchBoard board, BenchUpright upright, Joint joint) {
        List<Mark> marks = WallFixings.marks(face, joint.screws());
        ScrewLine first = joint.screws().get(0);
        boolean fromFace = face.behind(first.planAt(1)) > face.behind(first.head());
        boolean throughUpright = fromFace == (upright.place() == BenchUpright.Place.NEAR_SIDE);
        Span span = board.face().with(board.back());
        double x = marks.get(0).xMm();
        return new FixingLine(
                parts.fixing(joint),
                fromFace ? FixingLine.From.FACE : FixingLine.From.BACK,
                throughUpright ? upright.label() : "",
                throughUpright ? "" : upright.label(),
                marks,
                WallFixings.edgeMm(board, marks),
                StrictMath.min(x - span.fromMm(), span.toMm() - x));
    }
}
