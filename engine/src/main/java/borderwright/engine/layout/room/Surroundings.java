package borderwright.engine.layout.room;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import borderwright.engine.survey.Outline;
import java.util.List;

/** What lies in front of a side: the edge of the border within standing room, or open ground. */
public final class Surroundings {
    /** Nobody gardens from a narrower place (common practice, no source; paths are 900 mm where there is a choice). */
    public static final double STANDING_MM = 300;

    private final Outline outline;
    private final List<FreeRoom.Wall> walls;

    public Surroundings(Outline outline, FreeRoom room) {
        this.outline = outline;
        this.walls = room.walls();
    }

    /** What lies straight out from the middle of a side, the box on its left. */
    public EdgeKind facing(Point from, Point to) {
        Segment side = new Segment(from, to);
        Point middle = side.middle();
        Point out = side.line().direction().left().times(-1);
        Segment ray = new Segment(middle, middle.plus(out.times(STANDING_MM)));
        double nearest = Double.POSITIVE_INFINITY;
        EdgeKind facing = EdgeKind.OPEN;
        for (FreeRoom.Wall wall : walls) {
            double distance = wall.segment().distanceMm(ray) > FreeRoom.TOLERANCE_MM
                    ? Double.POSITIVE_INFINITY
                    : wall.segment().distanceMm(middle);
            if (distance < nearest) {
                nearest = distance;
                facing = outline.edges().get(wall.edge()).kind();
            }
        }
        return facing;
    }
}
