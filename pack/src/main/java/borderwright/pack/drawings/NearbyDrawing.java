package borderwright.pack.drawings;

import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.ground.NearbyPlace;
import borderwright.engine.message.Sentences;
import borderwright.engine.survey.Outline;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.List;

/** Trees with the reach of their roots, services in the ground, and air bricks, on a plan of the border. */
final class NearbyDrawing {
    /** What lies further out than this does not make the drawing smaller, and no tree does. */
    private static final double NEAR_MM = 2000;

    private static final int PARTS = 96;
    private static final double LEAST_TRUNK_MM = 0.7;
    private static final double HALF_BAR_MM = 0.75;

    private final DrawingBuilder sketch;
    private final View view;
    private final Sentences sentences;

    NearbyDrawing(DrawingBuilder sketch, View view, Sentences sentences) {
        this.sketch = sketch;
        this.view = view;
        this.sentences = sentences;
    }

    /** Places that a drawing should show of what is near. */
    static List<Point> places(List<NearbyPlace> near, Outline outline) {
        List<Point> places = new ArrayList<>();
        for (NearbyPlace place : near) {
            boolean tree = place.thing().what() == NearbyKind.TREE;
            for (Point end : List.of(place.from(), place.to())) {
                if (!tree && outline.ring().contains(end, -NEAR_MM)) {
                    places.add(end);
                }
            }
        }
        return places;
    }

    void draw(NearbyPlace place) {
        NearbyKind kind = place.thing().what();
        String name = sentences.text(place.kindName());
        if (kind == NearbyKind.TREE) {
            tree(place);
        } else if (place.from().equals(place.to())) {
            point(place.from(), name);
        } else if (kind.isService()) {
            line(List.of(place.from(), place.to()), Pen.BURIED, name);
        } else {
            onWall(view.at(place.from()), view.at(place.to()), name);
        }
    }

    /** An air brick or cladding: a white bar on the wall's line. */
    private void onWall(Spot from, Spot to, String name) {
        if (isOnPaper(from) && isOnPaper(to)) {
            Spot across = to.minus(from).unit().left().times(HALF_BAR_MM);
            sketch.shape(
                    List.of(from.plus(across), to.plus(across), to.minus(across), from.minus(across)),
                    Pen.EDGE,
                    Tone.WHITE);
            sketch.label(name, from.towards(to, 0.5), TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
        }
    }

    private void point(Point at, String name) {
        Spot spot = view.at(at);
        if (isOnPaper(spot)) {
            sketch.dot(spot, 0.8, Pen.EDGE, Tone.BLACK);
            sketch.label(name, spot, TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
        }
    }

    private void tree(NearbyPlace tree) {
        double roots = tree.thing().rootsMm();
        Spot trunk = view.at(tree.from());
        if (isOnPaper(trunk)) {
            double radius = view.scale().paper(tree.thing().trunkMm() / 2);
            sketch.dot(trunk, StrictMath.max(LEAST_TRUNK_MM, radius), Pen.EDGE, Tone.GREY);
        }
        List<Point> circle = new ArrayList<>();
        for (int k = 0; k <= PARTS; k++) {
            double angle = 2 * StrictMath.PI * k / PARTS;
            circle.add(tree.from().plus(new Point(roots * StrictMath.cos(angle), roots * StrictMath.sin(angle))));
        }
        line(circle, Pen.HIDDEN, sentences.text(tree.treeName()));
    }

    /** As much of a line as is on the paper, with its name at the middle of the longest part. */
    private void line(List<Point> ends, Pen pen, String name) {
        List<List<Spot>> parts = new ArrayList<>();
        parts.add(new ArrayList<>());
        for (int i = 0; i + 1 < ends.size(); i++) {
            int steps = ends.size() == 2 ? PARTS : 1;
            for (int k = i == 0 ? 0 : 1; k <= steps; k++) {
                Spot spot = view.at(ends.get(i).towards(ends.get(i + 1), (double) k / steps));
                if (isOnPaper(spot)) {
                    parts.get(parts.size() - 1).add(spot);
                } else {
                    parts.add(new ArrayList<>());
                }
            }
        }
        List<Spot> longest = List.of();
        for (List<Spot> part : parts) {
            if (part.size() > 1) {
                sketch.line(pen, ends.size() == 2 ? List.of(part.get(0), part.get(part.size() - 1)) : part);
                longest = part.size() > longest.size() ? part : longest;
            }
        }
        if (!longest.isEmpty()) {
            sketch.label(name, longest.get(longest.size() / 2), TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
        }
    }

    private boolean isOnPaper(Spot spot) {
        return spot.x() > 0
                && spot.x() < sketch.widthMm()
                && spot.y() > 0
                && spot.y() < sketch.heightMm() - ScaleBar.HEIGHT_MM;
    }
}
