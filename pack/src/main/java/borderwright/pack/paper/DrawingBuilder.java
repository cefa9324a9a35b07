package borderwright.pack.paper;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawing in the making.
 *
 * <p>Strokes and fixed texts are drawn as they come. Wanted labels wait until {@link #finish}: only then is it known what
 * is in their way, and {@link LabelPlacer} finds each its place.
 */
public final class DrawingBuilder {
    private static final double MARGIN_MM = 0.8;
    private static final double TIGHT_MARGIN_MM = 0.5;

    private final double widthMm;
    private final double heightMm;
    private final LayeredMarks marks = new LayeredMarks();
    private final LayeredMarks fixed = new LayeredMarks();
    private final List<Mark.Text> texts = new ArrayList<>();
    private final List<OnLayer> wanted = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();
    private String layer = "";

    public DrawingBuilder(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /**
     * A label that looks for its place.
     *
     * @param text what it says
     * @param size its size
     * @param face of the font
     * @param tone its tone
     * @param turnDeg turned anticlockwise by, degrees
     * @param places places to try, the best first
     * @param target what it names; a leader line runs there when it ends up elsewhere; null for a label that
     *     may be left out
     */
    record Wanted(
            String text,
            TextSize size,
            TypeFace face,
            Tone tone,
            double turnDeg,
            List<Place> places,
            @Nullable Spot target) {}

    /** A wanted label and the layer that it lies on. */
    private record OnLayer(String layer, Wanted label) {}

    /**
     * A place for a text.
     *
     * @param at its anchor, on the baseline
     * @param anchor which part of the text
     */
    public record Place(Spot at, Mark.Anchor anchor) {}

    /** A straight stroke that labels keep clear of; hatches do not count. */
    record Segment(Spot from, Spot to) {}

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** Puts what follows on a layer; its texts make a layer of their own above all strokes. */
    public DrawingBuilder layer(String name) {
        layer = name;
        return this;
    }

    public DrawingBuilder line(Pen pen, Spot... spots) {
        return line(pen, List.of(spots));
    }

    public DrawingBuilder line(Pen pen, List<Spot> spots) {
        add(Mark.Path.line(spots, pen));
        return this;
    }

    /** A closed shape; pen or fill may be left out. */
    public DrawingBuilder shape(List<Spot> spots, @Nullable Pen pen, @Nullable Tone fill) {
        add(Mark.Path.polygon(spots, pen, fill));
        return this;
    }

    /** Strokes across a shape, see {@link Hatch}; labels may lie on them. */
    public DrawingBuilder hatch(List<Spot> shape, Hatch hatch) {
        hatch.strokes(shape).forEach(s -> marks.add(layer, Mark.Path.line(s, hatch.pen())));
        return this;
    }

    /** A small circle, as a polygon. */
    public DrawingBuilder dot(Spot middle, double radiusMm, @Nullable Pen pen, @Nullable Tone fill) {
        return shape(Ellipse.spots(middle, radiusMm, radiusMm, 0), pen, fill);
    }

    /** A text at a fixed place. */
    public DrawingBuilder text(String text, Spot at, TextSize size, Mark.Anchor anchor, TypeFace face) {
        return text(text, at, size, anchor, face, 0, Tone.BLACK);
    }

    /** A text at a fixed place, turned, in a tone. */
    public DrawingBuilder text(
            String text, Spot at, TextSize size, Mark.Anchor anchor, TypeFace face, double turnDeg, Tone tone) {
        Mark.Text written = new Mark.Text(face.writable(text), at, size, anchor, turnDeg, face, tone);
        texts.add(written);
        fixed.add(layer, written);
        return this;
    }

    /** A text at a fixed place on a white ground, for places that are hatched. */
    public DrawingBuilder textOnWhite(String text, Spot at, TextSize size, Mark.Anchor anchor, TypeFace face) {
        TextBox box =
                new Mark.Text(text, at, size, anchor, 0, face, Tone.BLACK).box().grown(0.25);
        marks.add(
                layer,
                Mark.Path.polygon(
                        List.of(box.corner(0), box.corner(1), box.corner(2), box.corner(3)), null, Tone.WHITE));
        return text(text, at, size, anchor, face);
    }

    /** A label for something at {@code target}: as near to it as there is room, with a leader line when not beside it. */
    public DrawingBuilder label(String text, Spot target, TextSize size, TypeFace face, Tone tone) {
        return label(text, target, size, face, tone, List.of(), 0);
    }

    /** A label that first tries some places of its own. */
    public DrawingBuilder label(
            String text, Spot target, TextSize size, TypeFace face, Tone tone, List<Place> first, double turnDeg) {
        wanted.add(new OnLayer(layer, new Wanted(face.writable(text), size, face, tone, turnDeg, first, target)));
        return this;
    }

    /** A text that belongs where it is, whatever strokes run there; a label for its target where another text stands already. */
    public DrawingBuilder figure(String text, Spot target, TextSize size, Place place, double turnDeg) {
        Mark.Text written = new Mark.Text(
                TypeFace.REGULAR.writable(text),
                place.at(),
                size,
                place.anchor(),
                turnDeg,
                TypeFace.REGULAR,
                Tone.BLACK);
        TextBox room = written.box().grown(TIGHT_MARGIN_MM);
        boolean isFree = room.inside(widthMm, heightMm) && texts.stream().noneMatch(t -> room.overlaps(t.box()));
        return isFree
                ? text(text, place.at(), size, place.anchor(), TypeFace.REGULAR, turnDeg, Tone.BLACK)
                : label(text, target, size, TypeFace.REGULAR, Tone.BLACK, List.of(place), turnDeg);
    }

    /** A label that is drawn at the first of some places that is free, and left out when none is: it is said elsewhere too. */
    public DrawingBuilder labelIfRoom(String text, TextSize size, Tone tone, List<Place> places) {
        wanted.add(new OnLayer(
                layer, new Wanted(TypeFace.REGULAR.writable(text), size, TypeFace.REGULAR, tone, 0, places, null)));
        return this;
    }

    /** The finished drawing, its labels in their places: well apart, or closer together where some would be left out. */
    public Drawing finish(String says) {
        Drawing roomy = finish(says, MARGIN_MM);
        return roomy.leftOut().isEmpty() ? roomy : finish(says, TIGHT_MARGIN_MM);
    }

    private Drawing finish(String says, double marginMm) {
        LabelPlacer placer = new LabelPlacer(widthMm, heightMm, marginMm, segments, texts);
        LayeredMarks under = new LayeredMarks();
        LayeredMarks front = fixed.copy();
        List<String> leftOut = new ArrayList<>();
        for (OnLayer next : wanted) {
            LabelPlacer.Placed placed = placer.place(next.label);
            if (placed == null && next.label.target() != null) {
                leftOut.add(next.label.text());
            } else if (placed != null) {
                placed.under().forEach(mark -> under.add(next.layer, mark));
                front.add(next.layer, placed.text());
            }
        }
        List<Mark> all = new ArrayList<>();
        List<Drawing.Layer> layers = new ArrayList<>();
        marks.writeTo(all, layers, "");
        under.writeTo(all, layers, "-leaders");
        front.writeTo(all, layers, "-texts");
        return new Drawing(widthMm, heightMm, says, all, layers, leftOut);
    }

    private void add(Mark.Path path) {
        marks.add(layer, path);
        int n = path.spots().size();
        if (path.pen() != null) {
            for (int i = 0; i < (path.closed() ? n : n - 1); i++) {
                segments.add(new Segment(path.spots().get(i), path.spots().get((i + 1) % n)));
            }
        }
    }
}
