package borderwright.pack.solid;

import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * Triangles, flat-shaded: every face has corners of its own, with the face's normal.
 *
 * @param positions three metres to a corner
 * @param normals three to a corner
 */
record TriangleMesh(List<Float> positions, List<Float> normals) {
    private static final double LEAST_MM2 = 1;

    /** A movement on the plan, mm, of a place at a height. */
    interface Shift {
        Point at(Point place, double heightMm);
    }

    /** A height, mm, at a place on the plan. */
    interface Surface {
        double heightMm(Point place);
    }

    /** Ground inside a ring: it meets its surface wherever places of a square net {@code apartMm} wide lie, and along the ring. */
    static TriangleMesh under(Ring ring, Surface surface, double apartMm) {
        TriangleMesh mesh = new TriangleMesh(new ArrayList<>(), new ArrayList<>());
        Geometry inside = ring.toJts();
        Envelope box = inside.getEnvelopeInternal();
        for (double x = box.getMinX(); x < box.getMaxX(); x += apartMm) {
            for (double y = box.getMinY(); y < box.getMaxY(); y += apartMm) {
                Geometry cell = inside.getFactory().toGeometry(new Envelope(x, x + apartMm, y, y + apartMm));
                mesh.cell(OverlayNGRobust.overlay(inside, cell, OverlayNG.INTERSECTION), surface);
            }
        }
        return mesh;
    }

    private void cell(Geometry part, Surface surface) {
        if (part.getArea() < LEAST_MM2) {
            return;
        }
        Geometry triangles = PolygonTriangulator.triangulate(part);
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            sloping(corners(triangles.getGeometryN(i)), surface);
        }
    }

    private void sloping(List<Point> corners, Surface surface) {
        Point along = corners.get(1).minus(corners.get(0));
        Point other = corners.get(2).minus(corners.get(0));
        double rise = surface.heightMm(corners.get(1)) - surface.heightMm(corners.get(0));
        double otherRise = surface.heightMm(corners.get(2)) - surface.heightMm(corners.get(0));
        double x = along.yMm() * otherRise - rise * other.yMm();
        double y = rise * other.xMm() - along.xMm() * otherRise;
        double up = along.cross(other);
        double length = StrictMath.sqrt(x * x + y * y + up * up);
        for (Point p : corners) {
            add(p, surface.heightMm(p), (float) (x / length), (float) (up / length), (float) (-y / length));
        }
    }

    /** Square pins from head to point. */
    static TriangleMesh pins(List<ScrewLine> screws, double wideMm) {
        TriangleMesh mesh = new TriangleMesh(new ArrayList<>(), new ArrayList<>());
        screws.forEach(screw -> mesh.pin(screw, wideMm / 2));
        return mesh;
    }

    private void pin(ScrewLine screw, double halfMm) {
        Space along = new Space(screw.alongX(), screw.alongY(), screw.alongZ());
        Space level = StrictMath.abs(along.z) < 0.9 ? new Space(0, 0, 1) : new Space(1, 0, 0);
        Space across = level.cross(along).unit();
        Space up = along.cross(across);
        Space head = new Space(screw.xMm(), screw.yMm(), screw.zMm());
        Space point = head.plus(along, screw.lengthMm());
        Space[] out = {across, up, across.times(-1), up.times(-1)};
        for (int i = 0; i < 4; i++) {
            Space edge = out[i].plus(out[(i + 3) % 4], 1).times(halfMm);
            Space next = out[i].plus(out[(i + 1) % 4], 1).times(halfMm);
            face(out[i], head.plus(edge, 1), head.plus(next, 1), point.plus(next, 1), point.plus(edge, 1));
        }
        Space[] corner = new Space[4];
        for (int i = 0; i < 4; i++) {
            corner[i] = out[i].plus(out[(i + 1) % 4], 1).times(halfMm);
        }
        face(
                along.times(-1),
                head.plus(corner[3], 1),
                head.plus(corner[2], 1),
                head.plus(corner[1], 1),
                head.plus(corner[0], 1));
        face(
                along,
                point.plus(corner[0], 1),
                point.plus(corner[1], 1),
                point.plus(corner[2], 1),
                point.plus(corner[3], 1));
    }

    /** Two triangles over four corners, anticlockwise as seen from where the normal points. */
    private void face(Space normal, Space a, Space b, Space c, Space d) {
        for (Space p : List.of(a, b, c, a, c, d)) {
            add(new Point(p.x, p.y), p.z, (float) normal.x, (float) normal.z, (float) -normal.y);
        }
    }

    /** A place or direction with its height, mm. */
    private record Space(double x, double y, double z) {
        Space plus(Space o, double times) {
            return new Space(x + times * o.x, y + times * o.y, z + times * o.z);
        }

        Space times(double by) {
            return new Space(by * x, by * y, by * z);
        }

        Space cross(Space o) {
            return new Space(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
        }

        Space unit() {
            return times(1 / StrictMath.sqrt(x * x + y * y + z * z));
        }
    }

    static TriangleMesh of(Prism prism) {
        return of(prism.plan(), prism.bottomMm(), prism.topMm());
    }

    /** The same with further corners, so that none are farther apart along an edge of the plan than {@code apartMm}. */
    static TriangleMesh of(Prism prism, double apartMm) {
        Coordinate[] dense = Densifier.densify(prism.plan().toJts(), apartMm).getCoordinates();
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < dense.length - 1; i++) {
            corners.add(new Point(dense[i].x, dense[i].y));
        }
        return of(new Ring(corners), prism.bottomMm(), prism.topMm());
    }

    private static TriangleMesh of(Ring ring, double bottomMm, double topMm) {
        TriangleMesh mesh = new TriangleMesh(new ArrayList<>(), new ArrayList<>());
        Geometry triangles = PolygonTriangulator.triangulate(ring.toJts());
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            List<Point> corners = corners(triangles.getGeometryN(i));
            mesh.flat(corners, topMm, 1);
            mesh.flat(List.of(corners.get(2), corners.get(1), corners.get(0)), bottomMm, -1);
        }
        for (int i = 0; i < ring.size(); i++) {
            mesh.side(ring, i, bottomMm, topMm);
        }
        return mesh;
    }

    int size() {
        return positions.size() / 3;
    }

    FloatBuffer positionBuffer() {
        return buffer(positions);
    }

    FloatBuffer normalBuffer() {
        return buffer(normals);
    }

    /** How each corner moves, three metres to a corner. */
    FloatBuffer shiftBuffer(Shift shift) {
        List<Float> values = new ArrayList<>();
        for (int i = 0; i < positions.size(); i += 3) {
            Point place = new Point(1000.0 * positions.get(i), -1000.0 * positions.get(i + 2));
            Point moved = shift.at(place, 1000.0 * positions.get(i + 1));
            values.add((float) (moved.xMm() / 1000));
            values.add(0f);
            values.add((float) (-moved.yMm() / 1000));
        }
        return buffer(values);
    }

    IntBuffer indexBuffer() {
        IntBuffer buffer = IntBuffer.allocate(size());
        for (int i = 0; i < size(); i++) {
            buffer.put(i);
        }
        return buffer.rewind();
    }

    private static FloatBuffer buffer(List<Float> values) {
        FloatBuffer buffer = FloatBuffer.allocate(values.size());
        values.forEach(buffer::put);
        return buffer.rewind();
    }

    /** A triangle's corners, anticlockwise from above. */
    private static List<Point> corners(Geometry triangle) {
        Coordinate[] c = triangle.getCoordinates();
        List<Point> corners = List.of(new Point(c[0].x, c[0].y), new Point(c[1].x, c[1].y), new Point(c[2].x, c[2].y));
        return Ring.signedAreaMm2(corners) > 0 ? corners : List.of(corners.get(2), corners.get(1), corners.get(0));
    }

    private void flat(List<Point> corners, double heightMm, float up) {
        for (Point p : corners) {
            add(p, heightMm, 0, up, 0);
        }
    }

    private void side(Ring ring, int side, double bottomMm, double topMm) {
        Point a = ring.corner(side);
        Point b = ring.corner(side + 1);
        Point out = ring.direction(side).left().times(-1);
        float nx = (float) out.xMm();
        float nz = (float) -out.yMm();
        add(a, bottomMm, nx, 0, nz);
        add(b, bottomMm, nx, 0, nz);
        add(b, topMm, nx, 0, nz);
        add(a, bottomMm, nx, 0, nz);
        add(b, topMm, nx, 0, nz);
        add(a, topMm, nx, 0, nz);
    }

    private void add(Point p, double heightMm, float nx, float ny, float nz) {
        positions.add((float) (p.xMm() / 1000));
        positions.add((float) (heightMm / 1000));
        positions.add((float) (-p.yMm() / 1000));
        normals.add(nx);
        normals.add(ny);
        normals.add(nz);
    }
}
