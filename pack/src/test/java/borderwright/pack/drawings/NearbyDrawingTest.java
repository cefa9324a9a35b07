package borderwright.pack.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.resolve.NearbyResolver;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.ground.NearbyPlace;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.language.Language;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.View;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class NearbyDrawingTest {
    private static final double WIDTH_MM = 100;
    private static final double HEIGHT_MM = 80;

    private static NearbyPlace place(NearbyKind kind, @Nullable Length trunk, Point from, Point to) {
        NearbyThing thing = NearbyResolver.thing(GivenNearby.builder(kind, Names.of("A", "B"), Length.ofMm(0))
                .trunk(trunk)
                .build());
        return new NearbyPlace(thing, NearbyPlace.name(thing), from, to);
    }

    /** 5 m by 3.5 m at 1 : 50, the corner of the garden's axes at the lower left. */
    private static Drawing drawn(NearbyPlace place) {
        DrawingBuilder sketch = new DrawingBuilder(WIDTH_MM, HEIGHT_MM);
        Scale scale = Scale.fitting(UnitSystem.METRIC, 5000, 3500, WIDTH_MM, 70);
        View view = new View(scale, 0, new Point(0, 0), new Spot(0, 70));
        new NearbyDrawing(sketch, view, Language.english().in(UnitSystem.METRIC)).draw(place);
        return sketch.finish("near");
    }

    private static List<Mark.Path> paths(Drawing drawing, Pen pen) {
        return drawing.marks().stream()
                .filter(Mark.Path.class::isInstance)
                .map(Mark.Path.class::cast)
                .filter(path -> pen.equals(path.pen()))
                .toList();
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).text())
                .toList();
    }

    @Test
    void aServiceIsALineOfItsOwnKindAndEndsAtTheEdgeOfThePaper() {
        Drawing drawing = drawn(place(NearbyKind.ELECTRICITY, null, new Point(-4000, 1000), new Point(4000, 1000)));
        assertThat(texts(drawing)).containsExactly("electricity cable");
        List<Mark.Path> lines = paths(drawing, Pen.BURIED);
        assertThat(lines).hasSize(1);
        List<Spot> ends = lines.get(0).spots();
        assertThat(ends.get(0).x()).isBetween(0.0, 2.0);
        assertThat(ends.get(ends.size() - 1).x()).isBetween(78.0, 80.1);
    }

    @Test
    void aTreeShowsHowFarItsRootsReach() {
        Point trunk = new Point(2500, 1500);
        Drawing drawing = drawn(place(NearbyKind.TREE, Length.ofMm(100), trunk, trunk));
        assertThat(texts(drawing)).containsExactly("tree, roots 1200 mm");
        Spot middle = new Spot(50, 40);
        assertThat(paths(drawing, Pen.HIDDEN).get(0).spots())
                .allSatisfy(spot -> assertThat(spot.distance(middle)).isBetween(23.99, 24.01));
        assertThat(paths(drawing, Pen.EDGE)).as("the trunk").hasSize(1);
    }

    @Test
    void rootsOfATreeFarOutAreDrawnAsFarAsTheyReachThePaper() {
        Point trunk = new Point(-2000, 1500);
        Drawing drawing = drawn(place(NearbyKind.TREE, Length.ofMm(300), trunk, trunk));
        assertThat(paths(drawing, Pen.EDGE)).as("the trunk").isEmpty();
        assertThat(paths(drawing, Pen.HIDDEN))
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.spots()).allSatisfy(spot -> {
                    assertThat(spot.x()).isBetween(0.0, WIDTH_MM);
                    assertThat(spot.y()).isBetween(0.0, HEIGHT_MM);
                }));
        Point further = new Point(-9000, 1500);
        assertThat(drawn(place(NearbyKind.TREE, Length.ofMm(300), further, further))
                        .marks())
                .as("out of reach")
                .isEmpty();
    }

    @Test
    void anAirBrickLiesOnTheWall() {
        Drawing drawing = drawn(place(NearbyKind.AIR_BRICK, null, new Point(1000, 500), new Point(1225, 500)));
        assertThat(texts(drawing)).containsExactly("air brick");
        assertThat(paths(drawing, Pen.EDGE)).hasSize(1);
    }
}
