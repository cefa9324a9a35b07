package borderwright.bench.solid;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where uprights stand once all parts are drawn on the middle lines of the walls: corner posts where two of them meet, braces
 * on that of their wall, and on the line of the tie or divider that is screwed to them.
 */
final class Stands {
    private final Map<String, Point> places = new HashMap<>();
    private final Map<String, SideFrame> walls = new HashMap<>();
    private final double halfMm;
    private final List<SideFrame> sides;

    Stands(List<SideFrame> sides, double wallMm) {
        this.sides = sides;
        halfMm = wallMm / 2;
    }

    /** Takes a joint between two pieces; those of walls come before those of what crosses the box. */
    void take(Joint joint, Piece through, Piece upright) {
        if (joint.hold() == Hold.WALL_TO_UPRIGHT && !places.containsKey(upright.label())) {
            boolean corner = upright.role() == Piece.Role.POST;
            SideFrame side = sides.get(corner ? upright.side() : through.side());
            double s = corner
                    ? side.innerStart(halfMm)
                    : side.s(upright.place().plan().meanCorner());
            places.put(upright.label(), side.at(s, halfMm));
            walls.put(upright.label(), side);
        } else if (joint.hold() != Hold.WALL_TO_UPRIGHT) {
            SideFrame side = wall(upright);
            Point along = through.alongMm().level();
            Point middle = through.place().plan().meanCorner();
            double way = (halfMm - side.w(middle)) / along.dot(side.inwards());
            places.put(upright.label(), middle.plus(along.times(way)));
        }
    }

    private SideFrame wall(Piece upright) {
        SideFrame side = walls.get(upright.label());
        if (side == null) {
            throw new IllegalArgumentException(upright.label() + " is screwed to no wall");
        }
        return side;
    }

    Point of(Piece upright) {
        Point place = places.get(upright.label());
        if (place == null) {
            throw new IllegalArgumentException(upright.label() + " is screwed to nothing");
        }
        return place;
    }
}
