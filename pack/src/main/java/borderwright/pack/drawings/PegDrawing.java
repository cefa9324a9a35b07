package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.settingout.PegList;
import borderwright.engine.settingout.SettingOut;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
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

/** Which peg or mark is which: the boxes' outlines, numbers at their corners, and the known points. */
public final class PegDrawing {
    /** Its numbers are read, not its lengths. */
    private static final double MOST_HIGH_MM = 66;

    private static final double SIDE_MM = 14;
    private static final double ABOVE_MM = 9;
    private static final double BELOW_MM = 9;
    private static final double ROOM_HIGH_MM = MOST_HIGH_MM - ABOVE_MM - BELOW_MM - ScaleBar.HEIGHT_MM;

    /** With more pegs than this each box has its range instead, its first peg ringed. */
    private static final int MOST_SINGLE = 60;

    private PegDrawing() {}

    /** How far the plan is turned on it, radians anticlockwise, so that other pictures of the boxes can be turned alike. */
    public static double turn(Plan plan, double widthMm) {
        return Turn.largest(plan.garden().units(), plan.boxes(), places(plan), roomWidth(widthMm), ROOM_HIGH_MM);
    }

    private static List<Point> places(Plan plan) {
        List<Point> places = new ArrayList<>(plan.outline().ring().corners());
        plan.boxes().forEach(b -> places.addAll(b.plan().outline().corners()));
        return places;
    }

    private static double roomWidth(double widthMm) {
        return widthMm - 2 * SIDE_MM;
    }

    public static Drawing draw(Plan plan, PrintedFigures f, double widthMm) {
        SettingOut pegs = plan.site().settingOut();
        String mark = f.text(pegs.markName());
        UnitSystem units = plan.garden().units();
        double turn = turn(plan, widthMm);
        View.Extent extent = View.extent(places(plan), turn);
        Scale scale = Scale.fitting(units, extent.width(), extent.height(), roomWidth(widthMm), ROOM_HIGH_MM);
        DrawingBuilder sketch =
                new DrawingBuilder(widthMm, scale.paper(extent.height()) + ABOVE_MM + BELOW_MM + ScaleBar.HEIGHT_MM);
        double left = (widthMm - scale.paper(extent.width())) / 2;
        View view = View.of(scale, turn, extent, new Spot(left, ABOVE_MM));
        EdgeDrawing.draw(sketch, view, plan.outline(), f);
        plan.boxes().forEach(b -> sketch.shape(view.at(b.plan().outline()), Pen.EDGE, Tone.PALE));
        pegs.pegs().forEach(p -> sketch.dot(view.at(p.at()), 0.6, null, Tone.BLACK));
        if (pegs.pegs().size() <= MOST_SINGLE) {
            pegs.pegs()
                    .forEach(p -> label(
                            sketch,
                            f.text(DrawingMessage.DRAWN_PEG.of(mark, Integer.toString(p.number()))),
                            view.at(p.at())));
        } else {
            Set<String> inside = new TreeSet<>();
            pegs.strings()
                    .forEach(s -> inside.addAll(s.boxes().subList(1, s.boxes().size() - 1)));
            plan.boxes().stream()
                    .filter(b -> !inside.contains(b.plan().name()))
                    .forEach(b -> numbers(sketch, view, b, pegs));
        }
        plan.survey().points().stream()
                .filter(p -> !plan.outline().isMade(p.name()))
                .forEach(p -> {
                    Spot at = view.at(p.at());
                    sketch.dot(at, 0.9, Pen.EDGE, Tone.WHITE);
                    sketch.label(p.name(), at, TextSize.NAME, TypeFace.BOLD, Tone.BLACK);
                });
        ScaleBar.draw(sketch, scale, units, new Spot(0, sketch.heightMm()));
        return sketch.finish(f.text(DrawingMessage.DRAWN_PEGS.of(mark)));
    }

    private static void numbers(DrawingBuilder sketch, View view, Box box, SettingOut pegs) {
        List<PegList.Peg> own = pegs.pegs().stream()
                .filter(p -> p.box().equals(box.plan().name()))
                .toList();
        if (own.isEmpty()) {
            return;
        }
        sketch.dot(view.at(own.get(0).at()), 1, Pen.EDGE, null);
        Coordinate middle = box.plan().outline().toJts().getInteriorPoint().getCoordinate();
        Spot at = view.at(new Point(middle.x, middle.y));
        String range = own.get(0).number() + "-" + own.get(own.size() - 1).number();
        // The middle of the box first; a little beside it where the name of a known point stands there.
        double em = TextSize.FINE.emMm();
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (double acrossMm : List.of(0.0, 1.5 * em, -1.5 * em, 3 * em, -3 * em)) {
            for (double downMm : List.of(0.0, em, -em)) {
                places.add(new DrawingBuilder.Place(at.plus(acrossMm, downMm + 0.27 * em), Mark.Anchor.MIDDLE));
            }
        }
        sketch.label(range, at, TextSize.FINE, TypeFace.REGULAR, Tone.BLACK, places, 0);
    }

    private static void label(DrawingBuilder sketch, String text, Spot at) {
        sketch.label(text, at, TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
    }
}
