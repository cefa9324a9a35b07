package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.strength.frame.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A post or brace while the frame is drawn up: where it stands, which walls it bears on, its nodes by height. */
final class UprightLine {
    /** Heights nearer to each other than this are one node. */
    private static final double SAME_MM = 0.5;

    final Piece piece;
    final List<Meeting> meetings = new ArrayList<>(2);
    final NavigableMap<Double, Integer> nodes = new TreeMap<>();
    private Point at;
    private CrossSection crossSection = new CrossSection(Vector.X, 0, 0);

    /**
     * Where it bears on a wall.
     *
     * @param side index of the side
     * @param fromMm where its face begins along the side
     * @param toMm where it ends
     */
    record Meeting(int side, double fromMm, double toMm) {
        double middleMm() {
            return (fromMm + toMm) / 2;
        }
    }

    /**
     * Its cross-section.
     *
     * @param outward out of the first wall that it bears on
     * @param faceMm its width on that wall
     * @param depthMm from that wall inwards
     */
    record CrossSection(Vector outward, double faceMm, double depthMm) {}

    UprightLine(Piece piece) {
        this.piece = piece;
        this.at = middle(piece);
    }

    Point at() {
        return at;
    }

    CrossSection crossSection() {
        return crossSection;
    }

    /** Draws it where the middle lines that it holds meet, beside its own middle. */
    void stand(Point place) {
        at = place;
    }

    void measured(CrossSection found) {
        crossSection = found;
    }

    static Point middle(Piece piece) {
        return piece.place().plan().meanCorner();
    }

    boolean reaches(double heightMm) {
        return piece.place().bottomMm() < heightMm && heightMm < piece.place().topMm();
    }

    /** Marks a height at which a node is wanted. */
    void want(double heightMm) {
        if (reaches(heightMm) && key(heightMm) == null) {
            nodes.put(heightMm, -1);
        }
    }

    /** Whether it has bars; in a wall of one course it is a point. */
    boolean bends() {
        return nodes.size() > 1;
    }

    /** The node at a wanted height. */
    int node(double heightMm) {
        Double key = key(heightMm);
        if (key == null) {
            throw new IllegalArgumentException(piece.label() + " has no node at " + heightMm + " mm");
        }
        return nodes.getOrDefault(key, -1);
    }

    private @Nullable Double key(double heightMm) {
        Double above = nodes.ceilingKey(heightMm - SAME_MM);
        return above != null && above <= heightMm + SAME_MM ? above : null;
    }
}
