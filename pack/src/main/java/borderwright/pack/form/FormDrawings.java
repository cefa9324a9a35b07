package borderwright.pack.form;

import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Sentences;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.List;

/** What is drawn on the survey form: where a second tape goes, and a grid to sketch on. */
public final class FormDrawings {
    /** Width of each figure of the second tape, mm. */
    public static final double FIGURE_WIDTH_MM = 42;

    private static final double FIGURE_HEIGHT_MM = 31;
    private static final double POINT_MM = 0.9;
    private static final double NORTH_MM = 10;
    private static final Pen TAPE = new Pen(0.35, Tone.BLACK, List.of());
    /** So thick that it stands out in a grey print too. */
    private static final Pen SECOND = new Pen(0.7, Tone.ACCENT, List.of());

    private static final Pen GRID = new Pen(0.15, Tone.LIGHT, List.of());
    private static final Pen HEAVIER = new Pen(0.18, Tone.GREY, List.of());

    private FormDrawings() {}

    /** Side of a square of the grid, mm. */
    static double cellMm(UnitSystem units) {
        return units == UnitSystem.IMPERIAL ? UnitFactors.MM_PER_INCH / 4 : 5;
    }

    /** A border of four corners: sides, and both diagonals as the tapes that find a slip. */
    public static Drawing closedBorder(Sentences sentences) {
        DrawingBuilder sketch = new DrawingBuilder(FIGURE_WIDTH_MM, FIGURE_HEIGHT_MM);
        List<Spot> corners = List.of(new Spot(5, 26), new Spot(37, 27), new Spot(34, 5), new Spot(8, 7));
        sketch.line(SECOND, corners.get(0), corners.get(2));
        sketch.line(SECOND, corners.get(1), corners.get(3));
        sketch.shape(corners, TAPE, null);
        List<Spot> names = List.of(new Spot(1.8, 29), new Spot(40.2, 30), new Spot(37.2, 5), new Spot(4.8, 7));
        named(sketch, corners, names, List.of("A", "B", "C", "D"));
        return sketch.finish(sentences.text(FormMessage.FORM_CLOSED_BORDER_DRAWN.of()));
    }

    /** A strip along a wall: short lengths from point to point, two tapes that cross, and one pull over all. */
    public static Drawing strip(Sentences sentences) {
        DrawingBuilder sketch = new DrawingBuilder(FIGURE_WIDTH_MM, FIGURE_HEIGHT_MM);
        List<Spot> points = List.of(new Spot(4, 9), new Spot(16, 9), new Spot(27, 9), new Spot(38, 9));
        sketch.line(TAPE, points);
        List<Spot> names = points.stream().map(point -> point.plus(0, -2.6)).toList();
        named(sketch, points, names, List.of("A", "P", "Q", "B"));
        pull(sketch, SECOND, points.get(0), points.get(2), 15);
        pull(sketch, SECOND, points.get(1), points.get(3), 20);
        pull(sketch, SECOND, points.get(0), points.get(3), 26);
        return sketch.finish(sentences.text(FormMessage.FORM_STRIP_DRAWN.of()));
    }

    private static void named(DrawingBuilder sketch, List<Spot> points, List<Spot> places, List<String> names) {
        for (int i = 0; i < points.size(); i++) {
            sketch.dot(points.get(i), POINT_MM, null, Tone.BLACK);
            sketch.text(names.get(i), places.get(i), TextSize.HEAD, Mark.Anchor.MIDDLE, TypeFace.BOLD);
        }
    }

    /** One pull of the tape, drawn beside the line at a depth. */
    private static void pull(DrawingBuilder sketch, Pen pen, Spot from, Spot to, double depth) {
        Spot a = new Spot(from.x(), depth);
        Spot b = new Spot(to.x(), depth);
        sketch.line(pen, a, b);
        for (Spot end : List.of(a, b)) {
            sketch.line(pen, end.plus(0, -1.6), end.plus(0, 1.6));
        }
    }

    /**
     * The grid with a circle for the north arrow.
     *
     * @param widthMm room across, mm; whole squares are drawn
     * @param heightMm room down, mm
     */
    public static Drawing grid(double widthMm, double heightMm, UnitSystem units, Sentences sentences) {
        double cell = cellMm(units);
        int heavy = units == UnitSystem.IMPERIAL ? 4 : 5;
        int across = (int) ((widthMm - 1) / cell);
        int down = (int) (heightMm / cell);
        double wide = across * cell;
        double high = down * cell;
        double left = (widthMm - wide) / 2;
        DrawingBuilder sketch = new DrawingBuilder(widthMm, high + 1);
        for (int i = 0; i <= across; i++) {
            sketch.line(
                    i % heavy == 0 ? HEAVIER : GRID,
                    new Spot(left + i * cell, 0.5),
                    new Spot(left + i * cell, high + 0.5));
        }
        for (int j = 0; j <= down; j++) {
            sketch.line(
                    j % heavy == 0 ? HEAVIER : GRID,
                    new Spot(left, j * cell + 0.5),
                    new Spot(left + wide, j * cell + 0.5));
        }
        north(sketch, new Spot(left + wide - NORTH_MM - 3, NORTH_MM + 3), sentences);
        String written = units == UnitSystem.IMPERIAL ? "1/4 in" : "5 mm";
        return sketch.finish(sentences.text(FormMessage.FORM_SKETCH_DRAWN.of(written)));
    }

    private static void north(DrawingBuilder sketch, Spot middle, Sentences sentences) {
        sketch.dot(middle, NORTH_MM, Pen.BOLD, Tone.WHITE);
        sketch.dot(middle, 0.5, null, Tone.BLACK);
        sketch.textOnWhite(
                sentences.text(FormMessage.FORM_NORTH.of()),
                middle.plus(0, NORTH_MM + 5),
                TextSize.HEAD,
                Mark.Anchor.MIDDLE,
                TypeFace.REGULAR);
    }
}
