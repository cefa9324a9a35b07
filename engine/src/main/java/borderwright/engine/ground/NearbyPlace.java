package borderwright.engine.ground;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Where something lies that has to be kept clear of.
 *
 * @param thing what it is, as it was noted
 * @param name in a sentence, with its article; no other thing has it
 * @param from where it begins
 * @param to where it ends, the same place for a point
 */
public record NearbyPlace(NearbyThing thing, String name, Point from, Point to) {
    /** Places of some things; empty for one whose edge the border does not have. */
    static List<Optional<NearbyPlace>> of(List<NearbyThing> things, Outline outline, LengthFormat format) {
        List<Optional<NearbyPlace>> places = new ArrayList<>();
        for (NearbyThing thing : things) {
            String plain = plainName(thing);
            boolean alone =
                    things.stream().filter(t -> plainName(t).equals(plain)).count() == 1;
            String name =
                    alone ? plain : plain + ", " + format.length(thing.from().alongMm()) + " along it";
            places.add(outline.between(thing.edge().first(), thing.edge().last())
                    .map(edge -> along(thing, name, edge, outline)));
        }
        return places;
    }

    private static String plainName(NearbyThing thing) {
        return thing.what().inWords() + " at " + thing.edge();
    }

    private static NearbyPlace along(NearbyThing thing, String name, Segment edge, Outline outline) {
        return new NearbyPlace(thing, name, at(edge, outline, thing.from()), at(edge, outline, thing.to()));
    }

    private static Point at(Segment edge, Outline outline, NearbyThing.Place place) {
        Point direction = edge.to().minus(edge.from()).unit();
        boolean leftIsInside = outline.ring().contains(edge.middle().plus(direction.left()), 0);
        return edge.from()
                .plus(direction.times(place.alongMm()))
                .plus(direction.left().times(leftIsInside ? place.intoMm() : -place.intoMm()));
    }

    /** As a line, or as a point where both its ends are one. */
    Geometry shape() {
        Coordinate start = BoxWork.coordinate(from);
        Coordinate end = BoxWork.coordinate(to);
        GeometryFactory factory = new GeometryFactory();
        return start.equals2D(end)
                ? factory.createPoint(start)
                : factory.createLineString(new Coordinate[] {start, end});
    }
}
