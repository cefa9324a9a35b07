package borderwright.pack.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Dimension lines: short slashes at both ends, the text above the line or, where the span is too short, beyond its end.
 *
 * <p>A running dimension counts from one zero mark: one short error does not add up along the line, and a tape is hooked
 * only once.
 */
public final class Dimension {
    private static final TextSize SIZE = TextSize.NORMAL;
    private static final double GAP_MM = 0.8;
    private static final double BEYOND_MM = 1.2;
    private static final double SLASH_MM = 0.9;
    /** How far out a line to a text turned across bends aside to it, mm. */
    private static final double ELBOW_MM = 2.4;
    /** So far from the first of several texts nothing keeps it aside, mm. */
    private static final double NO_NEIGHBOUR_MM = 1000;

    /** Least distance between two texts turned across a running dimension, mm. */
    private static final double PITCH_MM = 3.3;

    private Dimension() {}

    /** Paper that a text turned across a running dimension takes up along it, mm. */
    public static double pitchMm(TextSize size) {
        return PITCH_MM * size.emMm() / SIZE.emMm();
    }

    /**
     * The distance between two spots, written beside a line parallel to them.
     *
     * @param offsetMm how far to the left of the way from {@code a} to {@code b} the line lies, mm; negative to the right
     */
    public static void between(DrawingBuilder sketch, Spot a, Spot b, double offsetMm, String text) {
        Spot along = b.minus(a).unit();
        Spot out = along.left().times(StrictMath.signum(offsetMm));
        double distance = StrictMath.abs(offsetMm);
        Spot from = a.plus(out.times(distance));
        Spot to = b.plus(out.times(distance));
        extension(sketch, a, out, distance);
        extension(sketch, b, out, distance);
        sketch.line(Pen.FINE, from, to);
        slash(sketch, from, along);
        slash(sketch, to, along);
        write(sketch, from, to, text);
    }

    /** The distance between two spots, written along the line between them, or level and near where that is too short. */
    public static void across(DrawingBuilder sketch, Spot a, Spot b, String text) {
        Spot along = b.minus(a).unit();
        sketch.line(Pen.FINE, a, b);
        slash(sketch, a, along);
        slash(sketch, b, along);
        if (TypeFace.REGULAR.widthEm(text) * SIZE.emMm() + 1 < a.distance(b)) {
            write(sketch, a, b, text);
        } else {
            sketch.label(text, a.towards(b, 0.5), SIZE, TypeFace.REGULAR, Tone.BLACK);
        }
    }

    /** A height, beside what is that high on its right: the text level, right of the line. */
    public static void rightOf(DrawingBuilder sketch, Spot foot, Spot top, double offsetMm, String text) {
        Spot out = new Spot(1, 0);
        Spot from = foot.plus(offsetMm, 0);
        Spot to = top.plus(offsetMm, 0);
        extension(sketch, foot, out, offsetMm);
        extension(sketch, top, out, offsetMm);
        sketch.line(Pen.FINE, from, to);
        Spot along = to.minus(from).unit();
        slash(sketch, from, along);
        slash(sketch, to, along);
        Spot middle = from.towards(to, 0.5);
        DrawingBuilder.Place beside =
                new DrawingBuilder.Place(middle.plus(GAP_MM + BEYOND_MM, 0.35 * SIZE.emMm()), Mark.Anchor.START);
        sketch.label(text, middle, SIZE, TypeFace.REGULAR, Tone.BLACK, List.of(beside), 0);
    }

    private static void extension(DrawingBuilder sketch, Spot from, Spot out, double distance) {
        if (distance > GAP_MM) {
            sketch.line(Pen.FINE, from.plus(out.times(GAP_MM)), from.plus(out.times(distance + BEYOND_MM)));
        }
    }

    private static void slash(DrawingBuilder sketch, Spot at, Spot along) {
        Spot turned = along.plus(along.left()).unit().times(SLASH_MM);
        sketch.line(Pen.EDGE, at.minus(turned), at.plus(turned));
    }

    /** Text runs left to right, or upwards: it is read from below or from the right. */
    private static void write(DrawingBuilder sketch, Spot a, Spot b, String text) {
        boolean flip = b.x() < a.x() - 1e-9 || (StrictMath.abs(b.x() - a.x()) <= 1e-9 && b.y() > a.y());
        Spot from = flip ? b : a;
        Spot to = flip ? a : b;
        Spot along = to.minus(from).unit();
        double turnDeg = StrictMath.toDegrees(StrictMath.atan2(-along.y(), along.x()));
        Spot up = along.left();
        double em = SIZE.emMm();
        double width = TypeFace.REGULAR.widthEm(text) * em;
        Spot middle = from.towards(to, 0.5);
        List<DrawingBuilder.Place> places = new ArrayList<>();
        if (width + 1 < from.distance(to)) {
            places.add(new DrawingBuilder.Place(middle.plus(up.times(0.5 * em)), Mark.Anchor.MIDDLE));
            places.add(new DrawingBuilder.Place(middle.plus(up.times(-1.05 * em)), Mark.Anchor.MIDDLE));
        }
        Spot drop = up.times(-0.35 * em);
        places.add(new DrawingBuilder.Place(to.plus(along.times(2)).plus(drop), Mark.Anchor.START));
        places.add(new DrawingBuilder.Place(from.plus(along.times(-2)).plus(drop), Mark.Anchor.END));
        places.add(new DrawingBuilder.Place(middle.plus(up.times(0.5 * em)), Mark.Anchor.MIDDLE));
        places.add(new DrawingBuilder.Place(middle.plus(up.times(-1.05 * em)), Mark.Anchor.MIDDLE));
        sketch.label(text, middle, SIZE, TypeFace.REGULAR, Tone.BLACK, places, turnDeg);
    }

    /**
     * Distances of several spots from the first, all on one straight line, written across a line beside them.
     *
     * @param spots in order along the line, the first is the zero mark
     * @param texts one for each spot but the first
     * @param offsetMm how far to the left of the way the line lies, mm; negative to the right
     */
    public static void running(DrawingBuilder sketch, List<Spot> spots, List<String> texts, double offsetMm) {
        running(sketch, spots, texts, offsetMm, SIZE, Start.ZERO, aside(sketch));
    }

    /** Whether the first spot of running distances is their zero, or lies further along because the drawing is cut. */
    public enum Start {
        ZERO,
        CONTINUED
    }

    /** Writes a text at its place, or near its target. */
    @FunctionalInterface
    private interface Writer {
        void write(String text, Spot target, TextSize size, DrawingBuilder.Place place, double turnDeg);
    }

    /** On a plan much else is drawn: at a bend the texts of two lines meet, and the later one looks for a place of its own. */
    private static Writer aside(DrawingBuilder sketch) {
        return (text, target, size, place, turnDeg) ->
                sketch.label(text, target, size, TypeFace.REGULAR, Tone.BLACK, List.of(place), turnDeg);
    }

    /** The same in another size of text, such as one that is read at arm's length, each text at the end of its line. */
    public static void running(
            DrawingBuilder sketch, List<Spot> spots, List<String> texts, double offsetMm, TextSize size) {
        running(sketch, spots, texts, offsetMm, size, Start.ZERO);
    }

    /** The same for a drawing that may be cut. */
    public static void running(
            DrawingBuilder sketch, List<Spot> spots, List<String> texts, double offsetMm, TextSize size, Start start) {
        running(sketch, spots, texts, offsetMm, size, start, sketch::figure);
    }

    private static void running(
            DrawingBuilder sketch,
            List<Spot> spots,
            List<String> texts,
            double offsetMm,
            TextSize size,
            Start start,
            Writer writer) {
        Spot along = spots.get(spots.size() - 1).minus(spots.get(0)).unit();
        Spot out = along.left().times(StrictMath.signum(offsetMm));
        double distance = StrictMath.abs(offsetMm);
        Spot zero = spots.get(0).plus(out.times(distance));
        sketch.line(Pen.FINE, zero, spots.get(spots.size() - 1).plus(out.times(distance)));
        if (start == Start.ZERO) {
            extension(sketch, spots.get(0), out, distance);
            sketch.dot(zero, 0.9, Pen.FINE, Tone.WHITE);
        }
        List<Double> places = spread(spots, along, pitchMm(size));
        for (int i = 1; i < spots.size(); i++) {
            Spot on = spots.get(i).plus(out.times(distance));
            extension(sketch, spots.get(i), out, distance - BEYOND_MM);
            arrow(sketch, on, along);
            double shift = places.get(i) - spots.get(i).minus(spots.get(0)).dot(along);
            Spot elbow = on.plus(out.times(ELBOW_MM)).plus(along.times(shift));
            sketch.line(Pen.FINE, on, elbow);
            acrossText(writer, elbow.plus(out.times(GAP_MM)), out, texts.get(i - 1), size);
        }
    }

    /** Paper that a name of {@link #namesAbove} takes up above its spot, mm. */
    public static double namesMm(List<String> names, TextSize size) {
        double longest =
                names.stream().mapToDouble(TypeFace.REGULAR::widthEm).max().orElse(0);
        return GAP_MM + ELBOW_MM + GAP_MM + longest * size.emMm();
    }

    /**
     * Names written upwards above several spots, each with a line from its spot: where spots are near to each other the lines
     * bend, and no two names touch.
     *
     * @param spots from left to right
     * @param names one for each spot
     */
    public static void namesAbove(DrawingBuilder sketch, List<Spot> spots, List<String> names, TextSize size) {
        Spot along = new Spot(1, 0);
        Spot out = along.left();
        List<Spot> from = new ArrayList<>(spots);
        from.add(0, spots.get(0).minus(along.times(NO_NEIGHBOUR_MM)));
        List<Double> places = spread(from, along, pitchMm(size));
        for (int i = 0; i < spots.size(); i++) {
            Spot start = spots.get(i).plus(out.times(GAP_MM));
            double shift =
                    places.get(i + 1) - from.get(i + 1).minus(from.get(0)).dot(along);
            Spot elbow = start.plus(out.times(ELBOW_MM)).plus(along.times(shift));
            sketch.line(Pen.FINE, spots.get(i), start);
            sketch.line(Pen.FINE, start, elbow);
            acrossText(sketch::figure, elbow.plus(out.times(GAP_MM)), out, names.get(i), size);
        }
    }

    private static void arrow(DrawingBuilder sketch, Spot tip, Spot along) {
        Spot back = tip.minus(along.times(1.6));
        Spot side = along.left().times(0.45);
        sketch.shape(List.of(tip, back.plus(side), back.minus(side)), null, Tone.BLACK);
    }

    private static void acrossText(Writer writer, Spot start, Spot out, String text, TextSize size) {
        boolean flip = out.x() < -1e-9 || (StrictMath.abs(out.x()) <= 1e-9 && out.y() > 0);
        Spot along = flip ? out.times(-1) : out;
        double turnDeg = StrictMath.toDegrees(StrictMath.atan2(-along.y(), along.x()));
        Spot baseline = start.plus(along.left().times(-0.36 * size.emMm()));
        DrawingBuilder.Place first = new DrawingBuilder.Place(baseline, flip ? Mark.Anchor.END : Mark.Anchor.START);
        writer.write(text, start, size, first, turnDeg);
    }

    /**
     * Places along the line for the texts of all spots but the first, no two nearer than a pitch and each as near to its
     * spot as can be: the least sum of squares, by pooling neighbours that would touch.
     */
    private static List<Double> spread(List<Spot> spots, Spot along, double pitchMm) {
        List<Double> means = new ArrayList<>();
        List<Integer> sizes = new ArrayList<>();
        for (int i = 1; i < spots.size(); i++) {
            double mean = spots.get(i).minus(spots.get(0)).dot(along) - i * pitchMm;
            int size = 1;
            while (!means.isEmpty() && means.get(means.size() - 1) > mean) {
                int before = sizes.remove(sizes.size() - 1);
                mean = (mean * size + means.remove(means.size() - 1) * before) / (size + before);
                size += before;
            }
            means.add(mean);
            sizes.add(size);
        }
        List<Double> places = new ArrayList<>(List.of(0.0));
        for (int pool = 0; pool < means.size(); pool++) {
            for (int i = 0; i < sizes.get(pool); i++) {
                places.add(means.get(pool) + places.size() * pitchMm);
            }
        }
        return places;
    }
}
