package borderwright.pack.solid;

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
