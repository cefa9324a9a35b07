package borderwright.engine.layout.room;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;

/**
 * One straight length of a run: a whole edge of the border, or one facet of a curved edge.
 *
 * <p>Places on it are given by a station (along it from its start) and an offset (square off it into the border).
 *
 * @param edge index of its edge in the outline
 * @param line the edge's line from the leg's start, the border on its left
 * @param lengthMm its length, mm
 * @param backMm offset of the planters' back, mm
 * @param kind what lies along it
 * @param planters how many planters it takes, a part of one for a facet; 0 when they follow from a wanted length
 * @param sagMm how far its line stands off the edge where that is curved, mm
 */
public record Leg(int edge, Line line, double lengthMm, double backMm, EdgeKind kind, double planters, double sagMm) {
    Point at(double stationMm, double offsetMm) {
        return line.at(stationMm).plus(line.direction().left().times(offsetMm));
    }

    Line back() {
        return line.offset(backMm);
    }

    double stationMm(Point point) {
        return line.stationMm(point);
    }

    public Point direction() {
        return line.direction();
    }
}
