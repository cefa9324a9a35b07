package borderwright.engine.assembly;

import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.EndCut.LongPoint;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Lays the floors of a box out, planter by planter, those parts together whose slats run the same way. */
final class FloorBenchMaker {
    private static final double SAME_WAY = 1e-6;
    private static final double SAME_MM = 0.01;

    /** Between two screws of a crossing and the slat's edges, as a share of its width (common practice, no source). */
    private static final double FROM_EDGE = 0.25;

    private final BoxParts parts;

    FloorBenchMaker(BoxParts parts) {
        this.parts = parts;
    }

    List<FloorBench> floors() {
        Map<String, List<Piece>> groups = new LinkedHashMap<>();
        List<Point> ways = new ArrayList<>();
        for (Piece piece : parts.where(p -> p.role() == Role.SLAT || p.role() == Role.BEARER)) {
            groups.computeIfAbsent(piece.planter() + "/" + way(slatWay(piece), ways), k -> new ArrayList<>())
                    .add(piece);
        }
        return groups.values().stream().map(this::floor).toList();
    }

    /** Which way the slats run over a bearer, or a slat itself. */
    private static Point slatWay(Piece piece) {
        return piece.role() == Role.SLAT ? along(piece) : along(piece).left();
    }

    private static int way(Point along, List<Point> ways) {
        for (int i = 0; i < ways.size(); i++) {
            if (StrictMath.abs(ways.get(i).cross(along)) < SAME_WAY) {
                return i;
            }
        }
        ways.add(along);
        return ways.size() - 1;
    }

    private FloorBench floor(List<Piece> group) {
        Piece first = group.get(0);
        WorkFace face = face(first);
        List<FloorStrip> laid = new ArrayList<>();
        List<Piece> bearers =
                group.stream().filter(p -> p.role() == Role.BEARER).toList();
        List<FloorStrip> under = bearers.stream()
                .map(p -> across(p, face))
                .sorted(Comparator.comparingDouble((FloorStrip s) -> s.edges().fromMm())
                        .thenComparingDouble(s -> s.overall().fromMm()))
                .toList();
        List<FloorStrip> legs = parts.of(Role.LEG).stream()
                .filter(leg -> bearers.stream().anyMatch(b -> stands(leg, b)))
                .map(leg -> leg(leg, face))
                .sorted(Comparator.comparingDouble((FloorStrip s) -> s.edges().fromMm())
                        .thenComparingDouble(s -> s.low().fromMm()))
                .toList();
        List<FloorStrip> over = group.stream()
                .filter(p -> p.role() == Role.SLAT)
                .map(p -> slat(p, face))
                .sorted(Comparator.comparingDouble((FloorStrip s) -> s.edges().fromMm())
                        .thenComparingDouble(s -> s.overall().fromMm()))
                .toList();
        laid.addAll(legs);
        laid.addAll(under);
        laid.addAll(over);
        List<FixingLine> lines = new ArrayList<>();
        legs.forEach(leg -> intoLeg(leg, under).ifPresent(lines::add));
        over.forEach(slat -> intoBearers(slat, under).ifPresent(lines::add));
        return new FloorBench(parts.box.plan().name(), first.planter(), hook(face), face, laid, lines);
    }

    private static Point along(Piece piece) {
        return piece.alongMm().level();
    }

    private static boolean stands(Piece leg, Piece bearer) {
        return bearer.place().plan().contains(BoxParts.middle(leg), -SAME_MM);
    }

    /** Along the longest inner face that the slats are parallel to, from its left corner; else from the nearest corner. */
    private WorkFace face(Piece any) {
        int planter = parts.box.plan().planters().indexOf(any.planter());
        Ring ring = parts.box.inside().get(Math.max(0, planter));
        Point along = slatWay(any);
        int best = -1;
        for (int i = 0; i < ring.size(); i++) {
            boolean parallel = StrictMath.abs(ring.direction(i).cross(along)) < SAME_WAY;
            if (parallel && (best < 0 || ring.sideMm(i) > ring.sideMm(best) + SAME_MM)) {
                best = i;
            }
        }
        if (best >= 0) {
            return new WorkFace(ring.corner(best), ring.direction(best), parts.bottomMm);
        }
        Point corner = ring.corners().stream()
                .min(Comparator.comparingDouble(p -> p.dot(along) + p.dot(along.left())))
                .orElseThrow();
        return new WorkFace(corner, along, parts.bottomMm);
    }

    private Message hook(WorkFace face) {
        List<Message> faces = new ArrayList<>();
        for (SideFrame side : parts.sides) {
            double s = side.s(face.hook());
            if (StrictMath.abs(side.w(face.hook()) - parts.wallMm) < BoxParts.STAND_OFF_MM
                    && s > -SAME_MM
                    && s < side.lengthMm() + SAME_MM) {
                faces.add(AssemblyMessage.BENCH_SIDE.of(PieceLabels.letter(side.side())));
            }
        }
        List<String> planters = parts.box.plan().planters();
        for (Piece divider : parts.where(p -> p.role() == Role.DIVIDER && p.course() == 1)) {
            if (divider.place().plan().contains(face.hook(), -BoxParts.STAND_OFF_MM)) {
                faces.add(AssemblyMessage.BENCH_DIVIDER.of(planters.indexOf(divider.planter()) + 1));
            }
        }
        return faces.size() == 2
                ? AssemblyMessage.TAPE_HOOKS_IN_FLOOR.of(faces.get(0), faces.get(1))
                : AssemblyMessage.TAPE_HOOKS_IN_CORNER.of();
    }

    private FloorStrip slat(Piece piece, WorkFace face) {
        List<Span> ends = ends(piece, along(piece));
        boolean turned = along(piece).dot(face.rightwards()) < 0;
        Span edges = face.across(piece.place().plan());
        Span near = onFace(ends.get(0), face, turned);
        Span far = onFace(ends.get(1), face, turned);
        return new FloorStrip(
                piece.label(),
                piece.role(),
                edges,
                turned ? far : near,
                turned ? near : far,
                heights(piece, face),
                notches(piece, face, ends, turned));
    }

    private static List<FloorStrip.Notch> notches(Piece piece, WorkFace face, List<Span> ends, boolean turned) {
        double left = StrictMath.min(ends.get(0).fromMm(), ends.get(1).fromMm());
        return piece.notches().stream()
                .map(notch -> {
                    double from = left + notch.fromLeft().mm();
                    boolean isUpper = notch.edge().code() == CutMessage.UPPER_EDGE;
                    return new FloorStrip.Notch(
                            onFace(new Span(from, from + notch.width().mm()), face, turned),
                            isUpper == turned ? FloorStrip.Edge.NEAR : FloorStrip.Edge.FAR,
                            notch.depth().mm());
                })
                .toList();
    }

    private static Span onFace(Span ofPiece, WorkFace face, boolean turned) {
        double zero = face.hook().dot(face.rightwards());
        return turned
                ? new Span(-ofPiece.toMm() - zero, -ofPiece.fromMm() - zero)
                : new Span(ofPiece.fromMm() - zero, ofPiece.toMm() - zero);
    }

    /**
     * Ends of a lying piece on its lower and its upper edge, along its own direction from the plan's origin. A notch at an end
     * may have taken its long point, so they follow from its length and cuts.
     */
    private static List<Span> ends(Piece piece, Point along) {
        Ring plan = piece.place().plan();
        double from =
                plan.corners().stream().mapToDouble(p -> p.dot(along)).min().orElseThrow();
        double to = plan.corners().stream().mapToDouble(p -> p.dot(along)).max().orElseThrow();
        double length = piece.length().mm();
        boolean leftCut = piece.notches().stream().anyMatch(n -> n.fromLeft().mm() < SAME_MM);
        if (to - from < length - SAME_MM && leftCut) {
            from = to - length;
        } else {
            to = from + length;
        }
        return List.of(
                new Span(
                        from + back(piece.left(), LongPoint.UPPER_EDGE),
                        to - back(piece.right(), LongPoint.UPPER_EDGE)),
                new Span(
                        from + back(piece.left(), LongPoint.LOWER_EDGE),
                        to - back(piece.right(), LongPoint.LOWER_EDGE)));
    }

    /** How far an edge stands back at an end whose long point lies on the other edge. */
    private static double back(EndCut cut, LongPoint other) {
        return cut.longPoint() == other ? cut.offsetMm() : 0;
    }

    private FloorStrip across(Piece bearer, WorkFace face) {
        Ring plan = bearer.place().plan();
        WorkFace turned = new WorkFace(face.hook(), face.rightwards().left(), face.bottomMm());
        Span edges = face.along(plan);
        return new FloorStrip(
                bearer.label(),
                bearer.role(),
                edges,
                turned.alongAt(plan, -edges.fromMm(), SAME_MM).orElseThrow(),
                turned.alongAt(plan, -edges.toMm(), SAME_MM).orElseThrow(),
                heights(bearer, face),
                List.of());
    }

    private static FloorStrip leg(Piece leg, WorkFace face) {
        Ring plan = leg.place().plan();
        Span across = face.across(plan);
        return new FloorStrip(leg.label(), leg.role(), face.along(plan), across, across, heights(leg, face), List.of());
    }

    private static Span heights(Piece piece, WorkFace face) {
        return face.heights(piece.place().bottomMm(), piece.place().topMm());
    }

    private Optional<FixingLine> intoLeg(FloorStrip leg, List<FloorStrip> bearers) {
        return parts.fixing(FixingMessage.BEARERS_TO_LEGS).map(fixing -> {
            Span along = leg.edges();
            double v = leg.low().middleMm();
            double third = leg.low().lengthMm() / 4;
            List<Mark> marks = List.of(new Mark(along.middleMm(), v - third), new Mark(along.middleMm(), v + third));
            FloorStrip bearer = bearers.stream()
                    .filter(b -> b.edges().holds(along.middleMm(), SAME_MM)
                            && b.overall().holds(v, SAME_MM))
                    .findFirst()
                    .orElseThrow();
            double end = StrictMath.min(
                    v - third - bearer.overall().fromMm(), bearer.overall().toMm() - v - third);
            return new FixingLine(
                    fixing, FixingLine.From.ABOVE, bearer.label(), leg.label(), marks, along.lengthMm() / 2, end);
        });
    }

    /** Two screws where a slat crosses a bearer, in its middle line. */
    private Optional<FixingLine> intoBearers(FloorStrip slat, List<FloorStrip> bearers) {
        Span overall = slat.overall();
        double middle = slat.edges().middleMm();
        TreeSet<Double> at = new TreeSet<>((a, b) -> StrictMath.abs(a - b) < SAME_MM ? 0 : Double.compare(a, b));
        for (FloorStrip bearer : bearers) {
            double x = bearer.edges().middleMm();
            if (overall.holds(x, SAME_MM) && bearer.whole().holds(middle, SAME_MM)) {
                at.add(x);
            }
        }
        double aside = slat.edges().lengthMm() * FROM_EDGE;
        List<Mark> marks = new ArrayList<>();
        for (double x : at) {
            marks.add(new Mark(x, slat.edges().fromMm() + aside));
            marks.add(new Mark(x, slat.edges().toMm() - aside));
        }
        if (marks.isEmpty()) {
            return Optional.empty();
        }
        double end = StrictMath.min(at.first() - overall.fromMm(), overall.toMm() - at.last());
        return parts.fixing(FixingMessage.SLATS_TO_BEARERS)
                .map(fixing -> new FixingLine(fixing, FixingLine.From.ABOVE, slat.label(), "", marks, aside, end));
    }
}
