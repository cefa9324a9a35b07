package borderwright.pack;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** A box put together by hand for tests of the pack: lapped at square corners, mitred at all others. */
final class SampleBox {
    private static final double T = 25;
    private static final double W = 150;
    private static final double POST = 47;
    private static final int COURSES = 3;

    private final String name;
    private final Ring outline;
    private final List<Double> dividersAt;
    private final double bedMm;
    private final List<Piece> pieces = new ArrayList<>();
    private int serial;

    /** A box whose side 0 is its back; dividers stand square to it at the distances given from its first corner. */
    SampleBox(String name, Ring outline, List<Double> dividersAt, double bedMm) {
        this.name = name;
        this.outline = outline;
        this.dividersAt = dividersAt;
        this.bedMm = bedMm;
    }

    Box build(int firstPlanter) {
        Ring inner = inset(T);
        walls(inner);
        List<DividerLine> lines = dividers(inner);
        posts(inner);
        braces(inner);
        List<String> planters = new ArrayList<>();
        for (int i = 0; i <= dividersAt.size(); i++) {
            planters.add("F" + (firstPlanter + i));
        }
        FootprintPlan plan = FootprintPlan.builder()
                .name(name)
                .run("fence run")
                .outline(outline)
                .sides(sides())
                .dividers(lines)
                .planters(planters)
                .bedMm(bedMm)
                .heightMm(COURSES * W)
                .build();
        return Box.builder()
                .plan(plan)
                .courses(courses())
                .pieces(pieces)
                .fixings(List.of(Box.Fixing.builder()
                        .item("screw 5 x 70")
                        .hold(Box.Hold.WALL_TO_UPRIGHT)
                        .use(FixingMessage.WALLS_TO_UPRIGHTS.of(2))
                        .count(84)
                        .diameterMm(5)
                        .lengthMm(70)
                        .pilotMm(3)
                        .clearanceMm(5.5)
                        .countersinkMm(10)
                        .build()))
                .inside(List.of(inner))
                .soilDepthMm(COURSES * W)
                .notes(List.of(BuildMessage.TIES_BEFORE_SOIL.of(75)))
                .build();
    }

    private List<SidePlan> sides() {
        List<SidePlan> sides = new ArrayList<>();
        int n = outline.size();
        for (int i = 0; i < n; i++) {
            boolean back = n == 4 ? i == 0 : i < 2;
            boolean front = n == 4 ? i == 2 : i == 3 || i == 4;
            sides.add(new SidePlan(
                    back ? SidePlan.Role.BACK : front ? SidePlan.Role.FRONT : SidePlan.Role.END,
                    back ? EdgeKind.FENCE : front ? EdgeKind.LAWN : EdgeKind.OPEN,
                    i == 1 && n == 4,
                    bedMm - 20));
        }
        return sides;
    }

    private List<Box.Course> courses() {
        List<Box.Course> courses = new ArrayList<>();
        for (int c = 1; c <= COURSES; c++) {
            courses.add(new Box.Course(c, bedMm + (c - 1) * W, bedMm + c * W, bedMm + c * (W - 4)));
        }
        return courses;
    }

    private void walls(Ring inner) {
        for (int c = 1; c <= COURSES; c++) {
            for (int side = 0; side < outline.size(); side++) {
                wall(inner, c, side);
            }
        }
    }

    private void wall(Ring inner, int course, int side) {
        Point along = outline.direction(side);
        boolean square0 = square(side);
        boolean square1 = square(side + 1);
        boolean through = (side + course) % 2 == 0;
        Point o0 = outline.corner(side);
        Point o1 = outline.corner(side + 1);
        Point i0 = inner.corner(side);
        Point i1 = inner.corner(side + 1);
        if (square0) {
            o0 = through ? o0 : o0.plus(along.times(T));
            i0 = through ? o0.plus(along.left().times(T)) : i0;
        }
        if (square1) {
            o1 = through ? o1 : o1.minus(along.times(T));
            i1 = through ? o1.plus(along.left().times(T)) : i1;
        }
        Prism place = new Prism(new Ring(List.of(o0, o1, i1, i0)), bedMm + (course - 1) * W, bedMm + course * W);
        EndCut left = cut(square0, outline.insideAngle(side));
        EndCut right = cut(square1, outline.insideAngle(side + 1));
        double longest =
                StrictMath.max(o0.distanceMm(o1), StrictMath.max(i0.distanceMm(i1), longSpan(o0, o1, i0, i1, along)));
        add(Piece.Role.WALL, course, side, "larch 25 x 150", longest, left, right, place, along, side == 1 && square0);
    }

    private static double longSpan(Point o0, Point o1, Point i0, Point i1, Point along) {
        double low = StrictMath.min(o0.dot(along), i0.dot(along));
        double high = StrictMath.max(o1.dot(along), i1.dot(along));
        return high - low;
    }

    private boolean square(int corner) {
        return StrictMath.abs(outline.insideAngle(corner) - StrictMath.PI / 2) < 1e-6;
    }

    private static EndCut cut(boolean square, double inside) {
        if (square) {
            return new EndCut(
                    0,
                    0,
                    EndCut.LongPoint.NONE,
                    0,
                    CutMessage.SQUARE_CUT.of(),
                    CutMessage.SAW_SET_SQUARE.of("mitre saw"),
                    true);
        }
        double tilt = StrictMath.abs(90 - StrictMath.toDegrees(inside) / 2);
        boolean outer = inside < StrictMath.PI;
        return new EndCut(
                tilt,
                0,
                outer ? EndCut.LongPoint.MARKED_FACE : EndCut.LongPoint.HIDDEN_FACE,
                T * StrictMath.tan(StrictMath.toRadians(tilt)),
                CutMessage.BEVELLED_END.of(
                        tilt,
                        "left",
                        (outer ? CutMessage.OUTSIDE_FACE : CutMessage.INSIDE_FACE).of(),
                        T * StrictMath.tan(StrictMath.toRadians(tilt)),
                        (outer ? CutMessage.INSIDE_FACE : CutMessage.OUTSIDE_FACE).of()),
                CutMessage.SAW_BLADE_TILTED.of("table saw with sled", tilt, 90 - tilt),
                true);
    }

    private List<DividerLine> dividers(Ring inner) {
        List<DividerLine> lines = new ArrayList<>();
        Point along = outline.direction(0);
        for (double at : dividersAt) {
            Point from = outline.corner(0).plus(along.times(at));
            Point to = from.plus(along.left().times(outline.sideMm(1)));
            lines.add(new DividerLine(2, to, 0, from));
            for (int c = 1; c <= COURSES; c++) {
                Point a = from.plus(along.left().times(T)).minus(along.times(T / 2));
                Point b = to.minus(along.left().times(T)).minus(along.times(T / 2));
                Ring plan = new Ring(List.of(a, a.plus(along.times(T)), b.plus(along.times(T)), b));
                Prism place = new Prism(plan, bedMm + (c - 1) * W, bedMm + c * W);
                add(
                        Piece.Role.DIVIDER,
                        c,
                        -1,
                        "larch 25 x 150",
                        a.distanceMm(b),
                        cut(true, 0),
                        cut(true, 0),
                        place,
                        along.left(),
                        false);
            }
        }
        return lines;
    }

    private void posts(Ring inner) {
        for (int i = 0; i < inner.size(); i++) {
            if (square(i)) {
                Point p = inner.corner(i);
                Point u = outline.direction(i).times(POST);
                Point v = outline.direction(i).left().times(POST);
                upright(
                        Piece.Role.POST,
                        new Ring(List.of(p, p.plus(u), p.plus(u).plus(v), p.plus(v))),
                        i);
            }
        }
    }

    private void braces(Ring inner) {
        for (int side = 0; side < inner.size(); side++) {
            double length = inner.sideMm(side);
            int bays = (int) StrictMath.ceil(length / 620);
            for (int k = 1; k < bays; k++) {
                Point at = inner.corner(side).towards(inner.corner(side + 1), (double) k / bays);
                Point u = outline.direction(side).times(POST);
                Point v = outline.direction(side).left().times(50);
                Point p = at.minus(u.times(0.5));
                upright(
                        Piece.Role.BRACE,
                        new Ring(List.of(p, p.plus(u), p.plus(u).plus(v), p.plus(v))),
                        side);
            }
        }
    }

    private void upright(Piece.Role role, Ring plan, int side) {
        Prism place = new Prism(plan, bedMm, bedMm + COURSES * W - 10);
        pieces.add(piece(
                role,
                0,
                side,
                "batten 47 x 50",
                COURSES * W - 10,
                cut(true, 0),
                cut(true, 0),
                place,
                new Piece.Axis(0, 0, 1),
                false));
    }

    private void add(
            Piece.Role role,
            int course,
            int side,
            String section,
            double lengthMm,
            EndCut left,
            EndCut right,
            Prism place,
            Point along,
            boolean waits) {
        pieces.add(piece(
                role,
                course,
                side,
                section,
                lengthMm,
                left,
                right,
                place,
                new Piece.Axis(along.xMm(), along.yMm(), 0),
                waits));
    }

    private Piece piece(
            Piece.Role role,
            int course,
            int side,
            String section,
            double lengthMm,
            EndCut left,
            EndCut right,
            Prism place,
            Piece.Axis axis,
            boolean waits) {
        serial++;
        return Piece.builder()
                .label(name + "-" + serial)
                .box(name)
                .planter(name)
                .role(role)
                .course(course)
                .side(side)
                .section(section)
                .length(Length.ofMm(lengthMm))
                .left(left)
                .right(right)
                .faceOut(FaceMessage.HEART_SIDE_OUT.of())
                .waits(waits)
                .touchesGround(course == 1)
                .place(place)
                .alongMm(axis)
                .build();
    }

    /** The same outline moved inwards. */
    private Ring inset(double distanceMm) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point d0 = outline.direction(i - 1);
            Point d1 = outline.direction(i);
            Point n0 = d0.left().times(distanceMm);
            Point n1 = d1.left().times(distanceMm);
            double s = n1.minus(n0).cross(d1) / d0.cross(d1);
            corners.add(outline.corner(i).plus(n0).plus(d0.times(s)));
        }
        return new Ring(corners);
    }
}
