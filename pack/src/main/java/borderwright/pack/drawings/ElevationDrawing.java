package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.survey.GroundHeights;
import borderwright.pack.figures.PrintedFigures;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One front, seen from where a person stands: its boards, what is fixed behind them, the bed and the ground before them.
 *
 * <p>What is hidden is dashed. Heights run from the bed of the first box; where beds step, each box says its own level.
 */
public final class ElevationDrawing {
    private static final double LEFT_MM = 26;
    private static final double RIGHT_MM = 26;
    private static final double RIM_OFFSET_MM = 7;
    private static final double ABOVE_MM = 15;
    private static final double BELOW_MM = 14;
    private static final double ON_FACE_MM = 2;
    /** Uprights no farther behind the front than this belong to it. */
    private static final double BEHIND_MM = 160;

    private static final int GROUND_PARTS = 24;
    private static final double GROUND_BAND_MM = 2.2;
    private static final int LABEL_PLACES = 20;
    /** Of more fronts than this only those are drawn that look different. */
    private static final int MANY = 4;

    private final FrontLine line;
    private final GroundHeights ground;
    private final LengthFormat lengths;
    private final DrawingBuilder sketch;
    private final Scale scale;
    private final Spot zero;

    private ElevationDrawing(
            FrontLine line, GroundHeights ground, UnitSystem units, DrawingBuilder sketch, Scale scale, Spot zero) {
        this.line = line;
        this.ground = ground;
        this.lengths = new LengthFormat(units);
        this.sketch = sketch;
        this.scale = scale;
        this.zero = zero;
    }

    /** All fronts of a plan, each at the largest scale that fits the room. */
    public static List<Drawing> all(Plan plan, double widthMm, double heightMm) {
        List<FrontLine> lines = FrontLine.of(plan.boxes());
        return (lines.size() > MANY ? FrontLine.different(lines) : lines)
                .stream()
                        .map(line -> draw(plan, line.start(), widthMm, heightMm))
                        .toList();
    }

    private static Drawing draw(Plan plan, FrontLine line, double widthMm, double mostMm) {
        UnitSystem units = plan.garden().units();
        double low = lowest(line, plan.outline().ground());
        double high = line.highestMm();
        Scale scale = Scale.fitting(
                units,
                line.lengthMm(),
                high - low,
                widthMm - LEFT_MM - RIGHT_MM,
                mostMm - ABOVE_MM - BELOW_MM - ScaleBar.HEIGHT_MM);
        double left = StrictMath.max(LEFT_MM, (widthMm - scale.paper(line.lengthMm())) / 2);
        Spot zero = new Spot(left, ABOVE_MM + scale.paper(high));
        double roomyMm = scale.paper(high - low) + ABOVE_MM + BELOW_MM + ScaleBar.HEIGHT_MM;
        return ScaleBar.underTheLowest(
                roomyMm, heightMm -> sketched(plan, line, new DrawingBuilder(widthMm, heightMm), scale, zero));
    }

    private static Drawing sketched(Plan plan, FrontLine line, DrawingBuilder sketch, Scale scale, Spot zero) {
        UnitSystem units = plan.garden().units();
        sketch.layer("boxes");
        ElevationDrawing drawing = new ElevationDrawing(line, plan.outline().ground(), units, sketch, scale, zero);
        drawing.everything();
        PrintedFigures f = PrintedFigures.in(units);
        String title = f.text(line.title(plan.outline())) + line.more(f);
        sketch.text(title, new Spot(0, 3.2), TextSize.NAME, Mark.Anchor.START, TypeFace.BOLD);
        ScaleBar.draw(sketch, scale, units, new Spot(0, sketch.heightMm()));
        return sketch.finish(f.text(DrawingMessage.DRAWN_SEEN_FROM_OUTSIDE.of(title, scale.words())));
    }

    private static double lowest(FrontLine line, GroundHeights ground) {
        double low = line.deepestMm();
        for (int i = 0; i <= GROUND_PARTS; i++) {
            low = StrictMath.min(low, ground.heightMm(place(line, i)));
        }
        return low;
    }

    private static Point place(FrontLine line, int part) {
        return line.from().plus(line.along().times(line.lengthMm() * part / GROUND_PARTS));
    }

    private Spot at(double alongMm, double heightMm) {
        return zero.plus(scale.paper(alongMm), -scale.paper(heightMm));
    }

    private void everything() {
        groundBand();
        for (FrontLine.Side side : line.sides()) {
            side.box().pieces().stream()
                    .filter(p -> p.role() == Piece.Role.WALL)
                    .forEach(this::board);
            side.box().pieces().stream().filter(p -> isBehind(side, p)).forEach(this::hidden);
            side.box().pieces().stream()
                    .filter(p -> p.role() == Piece.Role.CAPPING && p.side() == side.side())
                    .forEach(this::capping);
            platform(side);
            heights(side);
            String name = side.box().plan().name();
            Spot middle = at((line.at(side.left()) + line.at(side.right())) / 2, FrontLine.highestMm(side.box()));
            sketch.label(name, middle.plus(0, -1), TextSize.NAME, TypeFace.BOLD, Tone.BLACK);
            Dimension.between(
                    sketch,
                    at(line.at(side.left()), lowest(line, ground)).plus(0, GROUND_BAND_MM),
                    at(line.at(side.right()), lowest(line, ground)).plus(0, GROUND_BAND_MM),
                    -7,
                    lengths.length(side.left().distanceMm(side.right())));
        }
        rimAboveGround();
        groundLine();
    }

    /** At the right end, from the ground up to the rim. */
    private void rimAboveGround() {
        FrontLine.Side last = line.sides().get(line.sides().size() - 1);
        double groundMm = ground.heightMm(last.right());
        double topMm = last.box().topMm();
        if (topMm > groundMm) {
            double right = line.at(last.right());
            Dimension.rightOf(
                    sketch, at(right, groundMm), at(right, topMm), RIM_OFFSET_MM, lengths.length(topMm - groundMm));
        }
    }

    private void groundBand() {
        List<Spot> band = new ArrayList<>(groundSpots());
        List<Spot> line1 = groundSpots();
        for (int i = line1.size() - 1; i >= 0; i--) {
            band.add(line1.get(i).plus(0, GROUND_BAND_MM));
        }
        sketch.hatch(band, Hatch.GROUND);
    }

    private void groundLine() {
        sketch.line(Pen.HEAVY, groundSpots());
    }

    private List<Spot> groundSpots() {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i <= GROUND_PARTS; i++) {
            Point p = place(line, i);
            spots.add(at(line.at(p), ground.heightMm(p)));
        }
        Spot first = spots.get(0);
        Spot last = spots.get(spots.size() - 1);
        spots.add(0, first.plus(-6, 0));
        spots.add(last.plus(6, 0));
        return spots;
    }

    /** A wall board shows between the outermost of its corners that lie on the front. */
    private void board(Piece piece) {
        List<Point> onFace = piece.place().plan().corners().stream()
                .filter(p -> StrictMath.abs(behindMm(p)) < ON_FACE_MM)
                .toList();
        if (onFace.size() < 2) {
            return;
        }
        List<Spot> shape = shape(onFace, piece);
        sketch.shape(shape, piece.waits() ? Pen.ALERT : Pen.EDGE, Tone.WHITE);
        label(piece, shape);
    }

    /** On the board, where it crosses nothing that is dashed behind it. */
    private void label(Piece piece, List<Spot> shape) {
        Spot low = shape.get(0);
        Spot high = shape.get(2);
        if (low.y() - high.y() < 1.25 * TextSize.FINE.emMm() || high.x() - low.x() < 8) {
            return;
        }
        double y = (low.y() + high.y()) / 2 + 0.27 * TextSize.FINE.emMm();
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (int i = 1; i < LABEL_PLACES; i++) {
            // From the middle outwards: 0.5, 0.6, 0.4, 0.7, ...
            int steps = i / 2;
            double share = 0.5 + (i % 2 == 0 ? 1.0 : -1.0) * steps / LABEL_PLACES;
            places.add(new DrawingBuilder.Place(
                    new Spot(low.x() + share * (high.x() - low.x()), y), Mark.Anchor.MIDDLE));
        }
        sketch.labelIfRoom(piece.label(), TextSize.FINE, piece.waits() ? Tone.ACCENT : Tone.BLACK, places);
    }

    private List<Spot> shape(List<Point> corners, Piece piece) {
        double from = corners.stream().mapToDouble(line::at).min().orElseThrow();
        double to = corners.stream().mapToDouble(line::at).max().orElseThrow();
        return rectangle(from, to, piece.place().bottomMm(), piece.place().topMm());
    }

    private List<Spot> rectangle(double from, double to, double bottom, double top) {
        return List.of(at(from, bottom), at(to, bottom), at(to, top), at(from, top));
    }

    private boolean isBehind(FrontLine.Side side, Piece piece) {
        boolean upright = piece.role() == Piece.Role.POST || piece.role() == Piece.Role.BRACE;
        if (!upright && piece.role() != Piece.Role.DIVIDER) {
            return false;
        }
        List<Point> corners = piece.place().plan().corners();
        // Round a bend the other wing of the box lies before this front, not behind it.
        return corners.stream().allMatch(p -> behindMm(p) > -ON_FACE_MM)
                && corners.stream()
                        .anyMatch(p -> behindMm(p) < BEHIND_MM
                                && line.at(p) > line.at(side.left()) - 1
                                && line.at(p) < line.at(side.right()) + 1);
    }

    private double behindMm(Point place) {
        return line.along().cross(place.minus(line.from()));
    }

    private void hidden(Piece piece) {
        sketch.shape(shape(piece.place().plan().corners(), piece), Pen.HIDDEN, null);
    }

    private void capping(Piece piece) {
        sketch.shape(shape(piece.place().plan().corners(), piece), Pen.EDGE, Tone.PALE);
    }

    private void platform(FrontLine.Side side) {
        double platform = side.box().plan().platformMm();
        if (platform > 0) {
            double height = side.box().plan().bedMm() + platform;
            sketch.line(Pen.CENTRE, at(line.at(side.left()), height), at(line.at(side.right()), height));
        }
    }

    /** Course tops from the bed, at the first box and wherever the bed steps. */
    private void heights(FrontLine.Side side) {
        Box box = side.box();
        int index = line.sides().indexOf(side);
        Optional<FrontLine.Side> before =
                index == 0 ? Optional.empty() : Optional.of(line.sides().get(index - 1));
        boolean same = before.map(b ->
                        b.box().plan().bedMm() == box.plan().bedMm() && b.box().builtMm() == box.builtMm())
                .orElse(false);
        if (same) {
            return;
        }
        double left = line.at(side.left());
        if (index > 0) {
            Spot rim = at(left, box.topMm());
            String text = PrintedFigures.in(lengths.units())
                    .text(DrawingMessage.DRAWN_BED.of(box.plan().bedMm()));
            sketch.label(text, rim, TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
            return;
        }
        List<Spot> spots = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        spots.add(at(left, box.plan().bedMm()));
        for (Box.Course course : box.courses()) {
            spots.add(at(left, course.topMm()));
            texts.add(lengths.length(course.topMm() - box.plan().bedMm()));
        }
        if (box.plan().capped()) {
            spots.add(at(left, box.topMm()));
            texts.add(lengths.length(box.builtMm()));
        }
        Dimension.running(sketch, spots, texts, 9);
    }
}
