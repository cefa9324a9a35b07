package borderwright.bench.solid;

import borderwright.bench.solid.Link.Term;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The plane in which one piece lies against another, as a screw through both finds it.
 *
 * @param through the piece under the screw's head
 * @param into the piece that it ends in
 * @param place where the screw goes from one to the other
 * @param normal unit vector out of the first
 * @param shift from the plane to where the second piece really is
 */
record Mate(Block through, Block into, Point place, Point normal, Point shift) {
    /** On either side of the plane; an upright may stand off a board by 2.2 mm. */
    private static final double PROBE_MM = 3;

    private static final int CELLS_ALONG = 8;
    private static final double CELL_MM = 20;

    static Mate of(Block through, Block into, ScrewLine screw) {
        Ring ring = through.piece.place().plan();
        Point direction = new Point(screw.alongX(), screw.alongY());
        double least = Double.POSITIVE_INFINITY;
        Point normal = direction;
        for (int i = 0; i < ring.size(); i++) {
            Point out = ring.direction(i).left().times(-1);
            double speed = direction.dot(out);
            double after = ring.corner(i).minus(screw.head()).dot(out) / speed;
            if (speed > 1e-6 && after < least) {
                least = after;
                normal = out;
            }
        }
        return new Mate(through, into, screw.planAt(least), normal, new Point(0, 0));
    }

    /** The same seen from the other piece. */
    Mate turned() {
        return new Mate(/* through= */ into, /* into= */ through, place, normal.times(-1), shift);
    }

    /** The same drawn on middle lines: about the place where the second piece is taken to stand. */
    Mate standingAt(Point stand) {
        Point really = into.piece.place().plan().meanCorner();
        return new Mate(through, into, stand, normal, really.minus(stand));
    }

    Point sideways() {
        return normal.left();
    }

    /** The lengthening at a place when the first piece moves off the second along a level direction. */
    List<Term> stretch(Point at, double zMm, Point direction) {
        List<Term> terms = new ArrayList<>();
        add(terms, into, at.plus(shift), zMm, direction, 1);
        add(terms, through, at, zMm, direction, -1);
        return terms;
    }

    List<Term> rise(Point at, double zMm) {
        List<Term> terms = new ArrayList<>();
        into.at(at.plus(shift), zMm).forEach(w -> terms.add(new Term(w.node(), 3, w.share())));
        through.at(at, zMm).forEach(w -> terms.add(new Term(w.node(), 3, -w.share())));
        return terms;
    }

    static void add(List<Term> terms, Block block, Point at, double zMm, Point direction, double sign) {
        for (Weight weight : block.at(at, zMm)) {
            addLevel(terms, weight.node(), direction, sign * weight.share());
        }
    }

    static void addLevel(List<Term> terms, int node, Point direction, double factor) {
        if (Math.abs(direction.xMm()) > 1e-9) {
            terms.add(new Term(node, 1, factor * direction.xMm()));
        }
        if (Math.abs(direction.yMm()) > 1e-9) {
            terms.add(new Term(node, 2, factor * direction.yMm()));
        }
    }

    /** The faces on each other, cell by cell, in compression only: {@code perMm3} is the stiffness of each mm2. */
    List<Link> faces(double perMm3) {
        double[] common = common();
        double from = common[0];
        double to = common[1];
        double bottom = Math.max(through.heightMm(0), into.heightMm(0));
        double top = Math.min(through.heightMm(through.up), into.heightMm(into.up));
        int rows = (int) Math.ceil((top - bottom) / CELL_MM);
        List<Link> links = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            double z = bottom + (top - bottom) * (row + 0.5) / rows;
            row(links, from, to, z, perMm3 * (top - bottom) / rows);
        }
        return links;
    }

    /** The same as a hinge: one row half-way up the first piece, as wide as the faces, about the place. */
    List<Link> hingedFaces(double perMm3, double widthMm, double heightMm) {
        List<Link> links = new ArrayList<>();
        row(links, -widthMm / 2, widthMm / 2, through.heightMm(through.up / 2), perMm3 * heightMm);
        return links;
    }

    /** The same as two contacts at the edges of faces of a width, half-way up the first piece. */
    List<Link> edges(double stiffness, double widthMm) {
        List<Link> links = new ArrayList<>();
        for (int hand = -1; hand <= 1; hand += 2) {
            Point at = place.plus(sideways().times(hand * widthMm / 2));
            double z = through.heightMm(through.up / 2);
            links.add(new Link("", Link.Kind.FACES, Link.Law.CONTACT, stiffness, 0, stretch(at, z, normal)));
        }
        return links;
    }

    /** How wide the faces lie on each other, mm. */
    double widthMm() {
        return common()[1] - common()[0];
    }

    private double[] common() {
        double[] a = span(through.piece.place().plan(), place.minus(normal.times(PROBE_MM)));
        double[] b = span(into.piece.place().plan(), place.plus(normal.times(PROBE_MM)));
        double[] common = {Math.max(a[0], b[0]), Math.min(a[1], b[1])};
        if (!(common[1] > common[0])) {
            throw new IllegalArgumentException(
                    through.piece.label() + " and " + into.piece.label() + " are screwed together but do not meet");
        }
        return common;
    }

    private void row(List<Link> links, double from, double to, double z, double perMm2) {
        double cell = (to - from) / CELLS_ALONG;
        for (int i = 0; i < CELLS_ALONG; i++) {
            Point at = place.plus(sideways().times(from + cell * (i + 0.5)));
            links.add(new Link("", Link.Kind.FACES, Link.Law.CONTACT, perMm2 * cell, 0, stretch(at, z, normal)));
        }
    }

    /** From where to where a convex plan lies along the plane, from the screw. */
    private double[] span(Ring ring, Point origin) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            Point out = ring.direction(i).left().times(-1);
            double room = ring.corner(i).minus(origin).dot(out);
            double speed = sideways().dot(out);
            if (Math.abs(speed) < 1e-9) {
                to = room < 0 ? Double.NEGATIVE_INFINITY : to;
            } else if (speed > 0) {
                to = Math.min(to, room / speed);
            } else {
                from = Math.max(from, room / speed);
            }
        }
        return new double[] {from, to};
    }
}
