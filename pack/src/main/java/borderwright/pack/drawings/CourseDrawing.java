package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.pack.figures.PrintedFigures;
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

/**
 * One layer of a box from above, its boards drawn apart so that each shows its ends.
 *
 * <p>Walls move outwards, everything else stays. What waits for a re-measured gap is drawn in the accent and its label says
 * so. Uprights of other layers are grey, to show where the boards are screwed.
 */
public final class CourseDrawing {
    private static final double SIDE_MM = 16;
    private static final double ABOVE_MM = 11;
    private static final double BELOW_MM = 8;
    /** How far walls are drawn apart. */
    private static final double APART_MM = 2.6;

    private static final double LONG = 3.5;

    private final Box box;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final View view;

    private CourseDrawing(Box box, PrintedFigures f, DrawingBuilder sketch, View view) {
        this.box = box;
        this.f = f;
        this.sketch = sketch;
        this.view = view;
    }

    /**
     * A layer of a box.
     *
     * @param title what it is, such as {@code course 2}
     * @param pieces what belongs to it
     * @param under what lies under it or stands in it, drawn grey without labels
     */
    public record Layer(Message title, List<Piece> pieces, List<Piece> under) {
        public Layer {
            pieces = List.copyOf(pieces);
            under = List.copyOf(under);
        }
    }

    /** All layers of a box from the bottom up: courses, then uprights and ties, platform, capping. */
    public static List<Layer> layers(Box box) {
        List<Layer> layers = new ArrayList<>();
        List<Piece> uprights = ofRoles(box, Piece.Role.POST, Piece.Role.BRACE);
        for (Box.Course course : box.courses()) {
            List<Piece> pieces = box.pieces().stream()
                    .filter(p -> p.course() == course.number())
                    .filter(p -> p.role() == Piece.Role.WALL || p.role() == Piece.Role.DIVIDER)
                    .toList();
            add(layers, DrawingMessage.LAYER_COURSE.of(Integer.toString(course.number())), pieces, uprights);
        }
        List<Piece> inside = ofRoles(box, Piece.Role.POST, Piece.Role.BRACE, Piece.Role.TIE);
        List<Piece> walls = layers.isEmpty() ? List.of() : layers.get(0).pieces();
        add(layers, DrawingMessage.LAYER_UPRIGHTS.of(), inside, walls);
        add(layers, DrawingMessage.LAYER_FALSE_FLOOR.of(), ofRoles(box, Piece.Role.LEG, Piece.Role.BEARER), uprights);
        add(layers, DrawingMessage.LAYER_PLATFORM.of(), ofRoles(box, Piece.Role.SLAT), ofRoles(box, Piece.Role.BEARER));
        add(layers, DrawingMessage.LAYER_CAPPING.of(), ofRoles(box, Piece.Role.CAPPING), uprights);
        return layers;
    }

    private static void add(List<Layer> layers, Message title, List<Piece> pieces, List<Piece> under) {
        if (!pieces.isEmpty()) {
            layers.add(new Layer(title, pieces, under));
        }
    }

    private static List<Piece> ofRoles(Box box, Piece.Role... roles) {
        List<Piece.Role> wanted = List.of(roles);
        return box.pieces().stream().filter(p -> wanted.contains(p.role())).toList();
    }

    /** Whether a box is so long that its drawings need the long side of the paper. */
    public static boolean isLong(Box box) {
        View.Extent extent = View.extent(box.plan().outline().corners(), Turn.towardsReader(List.of(box)));
        return extent.width() > LONG * extent.height();
    }

    /** A layer at a scale that the whole box fits the width at. */
    public static Drawing draw(Box box, Layer layer, UnitSystem units, double widthMm, double heightMm) {
        double turn = Turn.towardsReader(List.of(box));
        View.Extent extent = View.extent(box.plan().outline().corners(), turn);
        Scale scale = Scale.fitting(
                units, extent.width(), extent.height(), widthMm - 2 * SIDE_MM, heightMm - ABOVE_MM - BELOW_MM);
        DrawingBuilder sketch = new DrawingBuilder(widthMm, scale.paper(extent.height()) + ABOVE_MM + BELOW_MM);
        double left = (widthMm - scale.paper(extent.width())) / 2;
        CourseDrawing drawing = new CourseDrawing(
                box, PrintedFigures.in(units), sketch, View.of(scale, turn, extent, new Spot(left, ABOVE_MM)));
        drawing.layer(layer);
        PrintedFigures f = drawing.f;
        boolean apart = layer.title().code() == DrawingMessage.LAYER_COURSE;
        sketch.text(f.text(layer.title()), new Spot(0, 3.2), TextSize.NAME, Mark.Anchor.START, TypeFace.BOLD);
        sketch.text(
                f.text((apart ? DrawingMessage.LAYER_DRAWN_APART : DrawingMessage.LAYER_FROM_ABOVE).of(scale.words())),
                new Spot(widthMm, 3.2),
                TextSize.NORMAL,
                Mark.Anchor.END,
                TypeFace.REGULAR);
        return sketch.finish(
                f.text(DrawingMessage.LAYER_OF_BOX.of(layer.title(), box.plan().name())));
    }

    private void layer(Layer layer) {
        layer.under().stream()
                .filter(p -> !layer.pieces().contains(p))
                .forEach(p -> sketch.shape(view.at(p.place().plan()), Pen.HAIR, Tone.PALE));
        layer.pieces().forEach(this::piece);
        layer.pieces().forEach(this::label);
    }

    private void piece(Piece piece) {
        List<Spot> shape = shape(piece);
        sketch.shape(shape, piece.waits() ? Pen.ALERT : Pen.EDGE, Tone.WHITE);
        if (isUpright(piece)) {
            sketch.hatch(shape, Hatch.WOOD);
        }
    }

    private static boolean isUpright(Piece piece) {
        return StrictMath.abs(piece.alongMm().z()) > 0.5;
    }

    private List<Spot> shape(Piece piece) {
        Spot shift = shift(piece);
        return view.at(piece.place().plan()).stream().map(s -> s.plus(shift)).toList();
    }

    private Spot shift(Piece piece) {
        if (piece.role() != Piece.Role.WALL || piece.side() < 0) {
            return new Spot(0, 0);
        }
        Ring ring = box.plan().outline();
        Point out = ring.direction(piece.side()).left().times(-1);
        return view.direction(out).times(APART_MM);
    }

    private void label(Piece piece) {
        Spot middle = middle(shape(piece));
        String text = piece.waits() ? f.text(DrawingMessage.DRAWN_WAITS.of(piece.label())) : piece.label();
        sketch.label(text, middle, TextSize.FINE, TypeFace.REGULAR, piece.waits() ? Tone.ACCENT : Tone.BLACK);
    }

    private static Spot middle(List<Spot> shape) {
        Spot sum = new Spot(0, 0);
        for (Spot s : shape) {
            sum = sum.plus(s);
        }
        return sum.times(1.0 / shape.size());
    }
}
