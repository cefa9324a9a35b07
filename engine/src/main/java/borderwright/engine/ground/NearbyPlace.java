package borderwright.engine.ground;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import borderwright.engine.message.Message;
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
 * @param name which no other thing has
 * @param from where it begins
 * @param to where it ends, the same place for a point
 */
public record NearbyPlace(NearbyThing thing, Message name, Point from, Point to) {
    /** Places of some things; empty for one whose edge the border does not have. */
    static List<Optional<NearbyPlace>> of(List<NearbyThing> things, Outline outline) {
        List<Optional<NearbyPlace>> places = new ArrayList<>();
        for (NearbyThing thing : things) {
            Message plain = name(thing);
            boolean alone = things.stream().filter(t -> name(t).equals(plain)).count() == 1;
            Message name = alone
                    ? plain
                    : ClearanceMessage.NEARBY_ALONG_EDGE.of(plain, thing.from().alongMm());
            places.add(outline.between(thing.edge().first(), thing.edge().last())
                    .map(edge -> along(thing, name, edge, outline)));
        }
        return places;
    }

    /** What it is, and at which edge; other things may have that name too. */
    public static Message name(NearbyThing thing) {
        return ClearanceMessage.NEARBY_AT_EDGE.of(thing.what(), thing.edge().toString());
    }

    /** What it is, without an article, as on a drawing. */
    public Message kindName() {
        return ClearanceMessage.NEARBY_KIND.of(thing.what());
    }

    /** A tree with the reach of its roots, as on a drawing. */
    public Message treeName() {
        return ClearanceMessage.NEARBY_TREE.of(thing.rootsMm());
    }

    private static NearbyPlace along(NearbyThing thing, Message name, Segment edge, Outline outline) {
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
