package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.Opening;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.language.Language;
import borderwright.pack.paper.Dimension;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Hatch;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;

/**
 * The garden from above: the border, the boxes in it, and the dimensions to set them out by.
 *
 * <p>Fronts carry running dimensions from their left end, backs and ends plain ones. Where other boxes stand so near that
 * a dimension would run over them it is left out: the peg list gives every corner.
 */
public final class PlanDrawing {
    private static final double LEFT_MM = 24;
    private static final double RIGHT_MM = 24;
    private static final double ABOVE_MM = 18;
    private static final double BELOW_MM = 32;
    /** With more boxes than this fronts say no dimensions, and need no room for them: strings of the peg list do. */
    private static final int MOST_SAID = 24;

    private static final double MARGIN_MM = 10;
    private static final double FRONT_OFFSET_MM = 7;
    private static final double BACK_OFFSET_MM = 7.5;
    /** Room beside a front for its running dimensions. */
    private static final double FRONT_ROOM_MM = 26;

    private static final double LEAST_SHARE_OVER = 0.02;

    private final Plan plan;
    private final LengthFormat lengths;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final View view;

    private PlanDrawing(Plan plan, DrawingBuilder sketch, View view) {
        this.plan = plan;
        this.lengths = new LengthFormat(plan.garden().units());
        this.f = PrintedFigures.in(plan.garden().units());
        this.sketch = sketch;
        this.view = view;
    }

    /** Whether the sides and dividers of the boxes are named on it. */
    public static boolean namesSides(Plan plan) {
        return plan.boxes().size() <= MOST_SAID;
    }

    /** The plan at the largest scale that fits the room, mm; no higher than it needs. */
    public static Drawing draw(Plan plan, double widthMm, double heightMm) {
        UnitSystem units = plan.garden().units();
        double roomWidth = widthMm - LEFT_MM - RIGHT_MM;
        boolean many = plan.boxes().size() > MOST_SAID;
        double above = many ? MARGIN_MM : ABOVE_MM;
        double below = many ? MARGIN_MM : BELOW_MM;
        double roomHeight = heightMm - above - below - ScaleBar.HEIGHT_MM;
        double turn = Turn.largest(units, plan.boxes(), places(plan), roomWidth, roomHeight);
        View.Extent extent = View.extent(places(plan), turn);
        Scale scale = Scale.fitting(units, extent.width(), extent.height(), roomWidth, roomHeight);
        double needed = scale.paper(extent.height()) + above + below + ScaleBar.HEIGHT_MM;
        double left = (widthMm - scale.paper(extent.width())) / 2;
        View view = View.of(scale, turn, extent, new Spot(left, above));
        return ScaleBar.underTheLowest(
                StrictMath.min(heightMm, needed), height -> sketched(plan, view, widthMm, height));
    }

    private static Drawing sketched(Plan plan, View view, double widthMm, double heightMm) {
        DrawingBuilder sketch = new DrawingBuilder(widthMm, heightMm);
        PlanDrawing drawing = new PlanDrawing(plan, sketch, view);
        drawing.everything();
        return sketch.finish(drawing.f.text(
                DrawingMessage.DRAWN_PLAN.of(plan.garden().name(), view.scale().words())));
    }

    private static List<Point> places(Plan plan) {
        List<Point> places = new ArrayList<>(plan.outline().ring().corners());
        for (int i = 0; i < plan.outline().ring().size(); i++) {
            places.addAll(plan.outline().placesAlong(i));
        }
        plan.boxes().forEach(b -> places.addAll(b.plan().outline().corners()));
        places.addAll(NearbyDrawing.places(plan.site().ground().near(), plan.outline()));
        return places;
    }

    private void everything() {
        sketch.layer("open-ground");
        plan.layout().openings().forEach(this::opening);
        sketch.layer("border");
        EdgeDrawing.draw(sketch, view, plan.outline(), f);
        sketch.layer("boxes");
        plan.boxes().forEach(this::box);
        sketch.layer("names");
        plan.boxes().forEach(this::names);
        if (namesSides(plan)) {
            SideMarks marks = new SideMarks(sketch, view, f);
            plan.boxes().forEach(marks::draw);
        }
        sketch.layer("dimensions");
        frontsBacksAndEnds();
        sketch.layer("angles");
        plan.boxes().forEach(this::angles);
        sketch.layer("near");
        NearbyDrawing near = new NearbyDrawing(
                sketch, view, Language.english().in(plan.garden().units()));
        plan.site().ground().near().forEach(near::draw);
        sketch.layer("corners");
        corners();
        GapDrawing gaps = new GapDrawing(sketch, view, f);
        sketch.layer("dimensions");
        gaps.gaps(plan);
        sketch.layer("diagonals");
        gaps.diagonals(plan);
        ScaleBar.draw(sketch, view.scale(), lengths.units(), new Spot(0, sketch.heightMm()));
    }

    private void frontsBacksAndEnds() {
        if (plan.boxes().size() <= MOST_SAID) {
            FrontLine.of(plan.boxes()).forEach(this::front);
        }
        Set<String> drawn = new TreeSet<>();
        plan.boxes().forEach(b -> backsAndEnds(b, drawn));
    }

    private void opening(Opening opening) {
        List<Spot> shape = view.at(opening.ring());
        sketch.hatch(shape, Hatch.WASTE);
        sketch.shape(shape, Pen.HIDDEN, null);
        int number = plan.layout().openings().indexOf(opening) + 1;
        sketch.label(
                f.text(DrawingMessage.DRAWN_OPENING.of(Integer.toString(number))),
                view.at(inside(opening.ring())),
                TextSize.NORMAL,
                TypeFace.REGULAR,
                Tone.BLACK);
    }

    private void box(Box box) {
        sketch.shape(view.at(box.plan().outline()), Pen.BOLD, Tone.LIGHT);
        box.inside().forEach(ring -> sketch.shape(view.at(ring), Pen.EDGE, Tone.WHITE));
    }

    private void names(Box box) {
        for (int i = 0; i < box.inside().size(); i++) {
            String name = i < box.plan().planters().size()
                    ? box.plan().planters().get(i)
                    : box.plan().name();
            Spot middle = view.at(inside(box.inside().get(i)));
            NameFit fit = NameFit.of(name, view.at(box.inside().get(i)));
            sketch.label(
                    name,
                    middle,
                    fit.size(),
                    TypeFace.BOLD,
                    Tone.BLACK,
                    centred(middle, fit.size(), fit.turnDeg()),
                    fit.turnDeg());
        }
    }

    private static List<DrawingBuilder.Place> centred(Spot middle, TextSize size, double turnDeg) {
        double off = 0.27 * size.emMm();
        Spot at = turnDeg == 0 ? middle.plus(0, off) : middle.plus(off, 0);
        return List.of(new DrawingBuilder.Place(at, Mark.Anchor.MIDDLE));
    }

    /** A place inside a ring that is not near its edge. */
    private static Point inside(Ring ring) {
        Coordinate c = ring.toJts().getInteriorPoint().getCoordinate();
        return new Point(c.x, c.y);
    }

    private void front(FrontLine line) {
        List<Point> stations = line.stations();
        if (runsOverAnother(line)) {
            return;
        }
        List<Spot> spots = stations.stream().map(view::at).toList();
        if (stations.size() == 2) {
            Dimension.between(sketch, spots.get(0), spots.get(1), -FRONT_OFFSET_MM, lengths.length(line.lengthMm()));
            return;
        }
        List<String> texts = stations.stream()
                .skip(1)
                .map(p -> lengths.length(p.distanceMm(stations.get(0))))
                .toList();
        Dimension.running(sketch, spots, texts, -FRONT_OFFSET_MM);
    }

    /** Whether the dimensions in front of a line would come over a box; a box round a corner only touches their end. */
    private boolean runsOverAnother(FrontLine line) {
        Point out = line.along().left().times(-view.scale().ratio());
        Point from = line.from().plus(out.times(1));
        Point to = from.plus(line.along().times(line.lengthMm()));
        Ring room = new Ring(List.of(from.plus(out.times(FRONT_ROOM_MM)), to.plus(out.times(FRONT_ROOM_MM)), to, from));
        double mostMm2 = LEAST_SHARE_OVER * room.areaMm2();
        return plan.boxes().stream()
                .anyMatch(b ->
                        b.plan().outline().toJts().intersection(room.toJts()).getArea() > mostMm2);
    }

    /** Backs longer or shorter than their fronts, and depths; of many boxes fronts too: each length drawn once for all like boxes of a run. */
    private void backsAndEnds(Box box, Set<String> drawn) {
        Ring ring = box.plan().outline();
        for (int i = 0; i < ring.size(); i++) {
            SidePlan.Role role = box.plan().sides().get(i).role();
            String text = lengths.length(ring.sideMm(i));
            boolean back = role == SidePlan.Role.BACK && ring.size() != 4;
            boolean front = role == SidePlan.Role.FRONT && plan.boxes().size() > MOST_SAID;
            if ((back || front || role == SidePlan.Role.END)
                    && clear(ring, i)
                    && drawn.add(box.plan().run() + "/" + role + "/" + text)) {
                Dimension.between(sketch, view.at(ring.corner(i)), view.at(ring.corner(i + 1)), -BACK_OFFSET_MM, text);
            }
        }
    }

    /** Whether there is room for a dimension outside a side: no other box stands there. */
    private boolean clear(Ring ring, int side) {
        Point out = ring.direction(side).left().times(-view.scale().ratio());
        Point a = ring.corner(side).plus(out.times(0.5));
        Point b = ring.corner(side + 1).plus(out.times(0.5));
        Ring room =
                new Ring(List.of(a.plus(out.times(BACK_OFFSET_MM + 3)), b.plus(out.times(BACK_OFFSET_MM + 3)), b, a));
        return plan.boxes().stream()
                .noneMatch(other -> other.plan().outline().toJts().intersects(room.toJts()));
    }

    /** Inside angles that are not square. */
    private void angles(Box box) {
        Ring ring = box.inside().size() == 1 ? box.inside().get(0) : box.plan().outline();
        for (int i = 0; i < ring.size(); i++) {
            Angle angle = new Angle(ring.insideAngle(i));
            if (StrictMath.abs(angle.degrees() - 90) > 0.05) {
                sketch.label(
                        lengths.angle(angle), view.at(ring.corner(i)), TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
            }
        }
    }

    private void corners() {
        for (int i = 0; i < plan.outline().ring().size(); i++) {
            String name = plan.outline().cornerNames().get(i);
            Spot at = view.at(plan.outline().ring().corner(i));
            if (!name.endsWith("'")) {
                sketch.dot(at, 0.9, Pen.EDGE, Tone.WHITE);
                sketch.label(name, at, TextSize.NAME, TypeFace.BOLD, Tone.BLACK);
            }
        }
    }
}
