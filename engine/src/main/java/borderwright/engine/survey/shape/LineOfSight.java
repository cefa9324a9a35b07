package borderwright.engine.survey.shape;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.Positions;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** How easily a tape can be held between two points: inside the border nothing stands in the way. */
public final class LineOfSight {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double SLACK_MM = 20;

    private final CornerOrder order;
    private final Positions at;
    private final @Nullable Geometry border;

    public LineOfSight(CornerOrder order, Positions at) {
        this.order = order;
        this.at = at;
        this.border = order.closed() ? new Ring(order.places(at)).toJts().buffer(SLACK_MM) : null;
    }

    /** 0 to 2: one for a line inside the border, one for two corners as ends. */
    public double ease(int a, int b) {
        boolean corners = order.corners().contains(a) && order.corners().contains(b);
        return (corners ? 1 : 0) + (border == null || border.covers(line(at.at(a), at.at(b))) ? 1 : 0);
    }

    private static Geometry line(Point from, Point to) {
        return JTS.createLineString(
                new Coordinate[] {new Coordinate(from.xMm(), from.yMm()), new Coordinate(to.xMm(), to.yMm())});
    }
}
