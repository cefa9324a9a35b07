package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays the dividers of a box out, their marked face up, with the uprights beside their ends. */
final class DividerBenchMaker {
    private final BoxParts parts;

    DividerBenchMaker(BoxParts parts) {
        this.parts = parts;
    }

    List<WallBench> dividers() {
        Map<String, List<Piece>> byPlanter = new LinkedHashMap<>();
        for (Piece board : parts.of(Role.DIVIDER)) {
            byPlanter.computeIfAbsent(board.planter(), k -> new ArrayList<>()).add(board);
        }
        List<WallBench> dividers = new ArrayList<>();
        for (int i = 0; i < parts.box.plan().dividers().size(); i++) {
            List<Piece> boards = byPlanter.get(parts.box.plan().planters().get(i));
            if (boards != null) {
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
        Span span = boards.get(0).face().with(boards.get(0).back());
        for (boolean farSide : new boolean[] {false, true}) {
            for (boolean right : new boolean[] {false, true}) {
                Span half = right
                        ? new Span(span.middleMm(), Double.POSITIVE_INFINITY)
                        : new Span(Double.NEGATIVE_INFINITY, span.middleMm());
                beside(face, farSide ? thickness : 0, farSide, half).ifPresent(upright -> {
                    uprights.add(upright);
                    line(boards, upright, span, thickness).ifPresent(lines::add);
                });
            }
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

    /** The upright that touches one face of a divider in one half of its length: the one that bears on it most. */
    private Optional<BenchUpright> beside(WorkFace face, double behindMm, boolean farSide, Span half) {
        return parts.uprights().stream()
                .filter(upright -> touches(face, upright.place().plan(), behindMm, farSide))
                .filter(upright -> half.holds(face.along(upright.place().plan()).middleMm(), 0))
                .map(upright -> upright(face, upright, behindMm, farSide))
                .max(Comparator.comparingDouble(u -> u.face().lengthMm()));
    }

    private static boolean touches(WorkFace face, Ring plan, double behindMm, boolean farSide) {
        Span across = face.across(plan);
        return StrictMath.abs((farSide ? across.fromMm() : across.toMm()) - behindMm) <= BoxParts.STAND_OFF_MM;
    }

    private BenchUpright upright(WorkFace face, Piece upright, double behindMm, boolean farSide) {
        Ring plan = upright.place().plan();
        Span across = face.across(plan);
        double deepest = farSide ? across.toMm() : across.fromMm();
        return new BenchUpright(
                upright.label(),
                upright.role(),
                face.alongAt(plan, behindMm, BoxParts.STAND_OFF_MM).orElseGet(() -> {
                    double middle = face.along(plan).middleMm();
                    return new Span(middle, middle);
                }),
                face.alongAt(plan, deepest, BoxParts.STAND_OFF_MM).orElseGet(() -> face.along(plan)),
                face.heights(upright.place().bottomMm(), upright.place().topMm()),
                across.lengthMm(),
                farSide ? BenchUpright.Place.FAR_SIDE : BenchUpright.Place.NEAR_SIDE);
    }

    private Optional<FixingLine> line(List<BenchBoard> boards, BenchUpright upright, Span span, double thickness) {
        Piece piece = parts.where(p -> p.label().equals(upright.label())).get(0);
        return parts.fixing(
                        Box.Hold.DIVIDER_TO_UPRIGHT,
                        thickness,
                        parts.stance(piece).faceMm())
                .map(fixing -> {
                    double x = upright.face().within(span).middleMm();
                    List<Mark> marks = new ArrayList<>();
                    for (BenchBoard board : boards) {
                        BoxParts.quarters(board.height()).forEach(up -> marks.add(new Mark(x, up)));
                    }
                    double edge = boards.get(0).height().lengthMm() / 4;
                    double end = StrictMath.min(x - span.fromMm(), span.toMm() - x);
                    return new FixingLine(fixing, "", upright.label(), marks, edge, StrictMath.max(0, end));
                });
    }
}
