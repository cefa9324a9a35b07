package borderwright.engine.ground;

import borderwright.engine.buildup.Box;
import borderwright.engine.buildup.Piece;
import borderwright.engine.buildup.PostHole;
import borderwright.engine.garden.EdgeKind;
import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.NearbyThing.Kind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import borderwright.engine.ground.Clearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * How far each planter, and the ground dug for it, keeps from trees, services, air bricks, cladding and the border's walls.
 *
 * <p>Roots: nothing dug within 12 trunks of the trunk's middle, 15 m at most (BS 5837:2012 4.6.1, from memory). Services: no hole
 * and no pin within 500 mm, ground within that dug by hand (after HSE guidance HSG47, from memory), 150 mm of ground left over
 * them. Air bricks: open for 300 mm in front of them above their lower edge. Cladding: soil 150 mm below it within 500 mm of
 * it (as for damp-proof courses). The figures for air bricks, cladding and ground over services are common practice, no source.
 */
final class Clearances {
    private static final double TRUNKS = 12;
    private static final double MOST_ROOTS_MM = 15_000;
    private static final double BY_HAND_MM = 500;
    private static final double COVER_MM = 150;
    private static final double OPEN_MM = 300;
    private static final double BELOW_CLADDING_MM = 150;
    private static final double SPLASH_MM = 500;
    /** Across an air brick where no other end is said: the usual one of two courses. */
    private static final double AIR_BRICK_MM = 225;

    private final Outline outline;
    private final LengthFormat format;
    private final List<Box> boxes;
    private final List<BoxGround> grounds;
    private final List<Geometry> dug;
    private final double belowRimMm;
    private final List<Clearance> found = new ArrayList<>();
    private final List<String> notes;
    private final List<Problem> unmet;

    /**
     * Clearances of some boxes.
     *
     * @param grounds the ground of each box
     * @param dug the ground dug for each box; empty on hard ground
     * @param belowRimMm how far soil stays below the rim, mm
     * @param notes where what should be known is added
     * @param unmet where what does not hold is added
     */
    Clearances(
            Outline outline,
            LengthFormat format,
            List<Box> boxes,
            List<BoxGround> grounds,
            List<Geometry> dug,
            double belowRimMm,
            List<String> notes,
            List<Problem> unmet) {
        this.outline = outline;
        this.format = format;
        this.boxes = boxes;
        this.grounds = grounds;
        this.dug = dug;
        this.belowRimMm = belowRimMm;
        this.notes = notes;
        this.unmet = unmet;
    }

    /** All that were looked at: of each thing the nearest planter, and every other that does not hold or is not shown to. */
    List<Clearance> of(List<NearbyThing> things) {
        for (int i = 0; i < things.size(); i++) {
            NearbyThing thing = things.get(i);
            Optional<Segment> edge =
                    outline.between(thing.edge().first(), thing.edge().last());
            if (edge.isPresent()) {
                keep(of(thing, "ground.near[" + i + "]", place(thing, edge.get())));
            }
        }
        for (int e = 0; e < outline.edges().size(); e++) {
            keep(gaps(e));
        }
        return List.copyOf(found);
    }

    private void keep(List<Clearance> rows) {
        Optional<Clearance> nearest = rows.stream().min(Comparator.comparingDouble(c -> c.gotMm() - c.wantedMm()));
        for (Clearance row : rows) {
            if (row.verdict() != Verdict.HOLDS || nearest.filter(row::equals).isPresent()) {
                found.add(row);
            }
        }
    }

    /** Where a thing lies: a line, or a point where both its ends are one. */
    private Geometry place(NearbyThing thing, Segment edge) {
        double to = thing.what() == Kind.AIR_BRICK && thing.to() == null
                ? thing.along().mm() + AIR_BRICK_MM
                : thing.toMm();
        Coordinate start = at(edge, thing.along().mm(), thing.intoMm());
        Coordinate end = at(edge, to, thing.endIntoMm());
        GeometryFactory factory = new GeometryFactory();
        return start.equals2D(end)
                ? factory.createPoint(start)
                : factory.createLineString(new Coordinate[] {start, end});
    }

    private Coordinate at(Segment edge, double alongMm, double intoMm) {
        Point direction = edge.to().minus(edge.from()).unit();
        boolean leftIsInside = outline.ring().contains(edge.middle().plus(direction.left()), 0);
        Point at = edge.from()
                .plus(direction.times(alongMm))
                .plus(direction.left().times(leftIsInside ? intoMm : -intoMm));
        return new Coordinate(at.xMm(), at.yMm());
    }

    private List<Clearance> of(NearbyThing thing, String where, Geometry place) {
        List<Clearance> rows = new ArrayList<>();
        String name = thing.what().inWords() + " at " + thing.edge();
        for (int b = 0; b < boxes.size(); b++) {
            if (thing.what() == Kind.TREE) {
                roots(thing, where, name, place, b, rows);
            } else if (thing.what().isService()) {
                service(thing, where, name, place, b, rows);
            } else if (thing.bottom() != null && thing.what() == Kind.AIR_BRICK) {
                airBrick(where, name, place, thing.bottom().mm(), b, rows);
            } else if (thing.bottom() != null) {
                cladding(where, name, place, thing.bottom().mm(), b, rows);
            }
        }
        return rows;
    }

    private void roots(NearbyThing thing, String where, String name, Geometry place, int b, List<Clearance> rows) {
        if (thing.trunk() == null || !isDug(b)) {
            return;
        }
        String box = boxes.get(b).plan().name();
        double wanted = Math.min(MOST_ROOTS_MM, TRUNKS * thing.trunk().mm());
        double got = dug.get(b).distance(place);
        rows.add(new Clearance(box, name, "ground dug", wanted, got, Clearance.of(wanted, got)));
        if (Clearance.of(wanted, got) == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "tree-roots",
                    where,
                    "The ground of " + box + " is dug " + format.length(got) + " from the trunk of " + name
                            + "; its main roots are taken to reach " + format.length(wanted)
                            + ", twelve times the trunk.",
                    "Move the planter, or dig nothing there (`bed: none`, walls on levelled soil), and ask somebody"
                            + " licensed to work on trees first."));
        }
    }

    private boolean isDug(int b) {
        return b < dug.size()
                && grounds.get(b).turfM3()
                                + grounds.get(b).dugM3()
                                + grounds.get(b).gravelM3()
                        > 0;
    }

    private void service(NearbyThing thing, String where, String name, Geometry place, int b, List<Clearance> rows) {
        Box box = boxes.get(b);
        String planter = box.plan().name();
        if (outlineOf(box).distance(place) == 0) {
            notes.add("Not shown to hold: " + planter + " stands over " + name
                    + ", which its owner may have to dig up. Ask before you build.");
        }
        if (!isDug(b)) {
            return;
        }
        double holes =
                holes(box).stream().mapToDouble(h -> h.distance(place)).min().orElse(Double.POSITIVE_INFINITY);
        if (holes < Double.POSITIVE_INFINITY) {
            rows.add(new Clearance(
                    planter, name, "holes for posts", BY_HAND_MM, holes, Clearance.of(BY_HAND_MM, holes)));
            if (holes < BY_HAND_MM) {
                stop(
                        where,
                        planter,
                        name,
                        "A hole for a post of " + planter + " lies " + format.length(holes) + " from " + name + "; "
                                + format.length(BY_HAND_MM) + " is the usual least.");
            }
        }
        double got = dug.get(b).distance(place);
        double deepest = grounds.get(b).corners().stream()
                .mapToDouble(BoxGround.CornerLevel::cutMm)
                .max()
                .orElse(0);
        if (got >= BY_HAND_MM) {
            rows.add(new Clearance(planter, name, "ground dug", BY_HAND_MM, got, Verdict.HOLDS));
        } else if (thing.depth() == null) {
            rows.add(new Clearance(planter, name, "ground dug", BY_HAND_MM, got, Verdict.NOT_SHOWN));
            notes.add("Not shown to hold: how deep " + name + " lies is not known, and " + planter + " is dug "
                    + format.length(deepest) + " deep " + format.length(got)
                    + " from it. Have it traced, dig trial holes by hand, and put no pins there.");
        } else {
            double left = thing.depth().mm() - deepest;
            boolean cleared = left < COVER_MM;
            rows.add(new Clearance(
                    planter,
                    name,
                    "ground left over it",
                    COVER_MM,
                    left,
                    cleared ? Verdict.DOES_NOT_HOLD : Verdict.NOT_SHOWN));
            if (cleared) {
                stop(
                        where,
                        planter,
                        name,
                        planter + " is dug " + format.length(deepest) + " deep "
                                + (got == 0 ? "over" : format.length(got) + " from") + " " + name
                                + ", which is said to lie "
                                + format.length(thing.depth().mm()) + " deep.");
            } else {
                notes.add(planter + " is dug " + (got == 0 ? "over" : format.length(got) + " from") + " " + name
                        + ": by hand, with no pins, and never trusting the depth that was said.");
            }
        }
    }

    private void stop(String where, String planter, String name, String sentence) {
        unmet.add(new Problem(
                "service-near",
                where,
                sentence,
                "Stop: do not dig there. Have " + name + " traced, then move " + planter
                        + " or keep its ground undug (`bed: none`), and let posts stand on the bed."));
    }

    private void airBrick(String where, String name, Geometry place, double bottomMm, int b, List<Clearance> rows) {
        Box box = boxes.get(b);
        double rim = rimMm(box);
        double got = outlineOf(box).distance(place);
        boolean below = rim <= bottomMm + 0.5;
        Verdict verdict = below ? Verdict.HOLDS : Clearance.of(OPEN_MM, got);
        rows.add(new Clearance(
                box.plan().name(),
                name,
                below ? "wall, whose rim lies below" : "wall in front",
                below ? 0 : OPEN_MM,
                got,
                verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "air-brick",
                    where,
                    box.plan().name() + " stands " + format.length(got) + " in front of " + name + " and "
                            + format.length(rim - bottomMm) + " above its lower edge, so air hardly reaches it.",
                    "Leave a gap between planters there, make the wall " + format.length(rim - bottomMm)
                            + " lower, or keep it " + format.length(OPEN_MM) + " off; never cover an air brick."));
        }
    }

    private void cladding(String where, String name, Geometry place, double bottomMm, int b, List<Clearance> rows) {
        Box box = boxes.get(b);
        double gap = outlineOf(box).distance(place);
        if (gap >= SPLASH_MM) {
            rows.add(new Clearance(box.plan().name(), name, "wall", SPLASH_MM, gap, Verdict.HOLDS));
            return;
        }
        double got = bottomMm - (rimMm(box) - belowRimMm);
        Verdict verdict = Clearance.of(BELOW_CLADDING_MM, got);
        rows.add(new Clearance(box.plan().name(), name, "soil, below", BELOW_CLADDING_MM, got, verdict));
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    "cladding",
                    where,
                    "Soil in " + box.plan().name() + " would stand " + format.length(Math.abs(got))
                            + (got < 0 ? " above" : " below") + " the lower edge of " + name + ", "
                            + format.length(gap) + " from it; " + format.length(BELOW_CLADDING_MM)
                            + " below it is the usual least.",
                    "Make the wall " + format.length(Math.ceil(BELOW_CLADDING_MM - got))
                            + " lower, fill it less, or keep the box " + format.length(SPLASH_MM) + " off."));
        }
    }

    /** The gaps that the layout leaves along an edge that something stands on. */
    private List<Clearance> gaps(int e) {
        OutlineEdge edge = outline.edges().get(e);
        List<Clearance> rows = new ArrayList<>();
        // What a curve leaves is not measured from its chord.
        if (edge.riseMm() != 0
                || edge.kind() == EdgeKind.OPEN
                || edge.kind() == EdgeKind.LAWN
                || edge.kind() == EdgeKind.PAVING) {
            return rows;
        }
        Segment line = new Segment(outline.ring().corner(e), outline.ring().corner(e + 1));
        String name = "the " + edge.kind().name().toLowerCase(Locale.ROOT) + " " + outline.edgeName(e);
        for (Box box : boxes) {
            double got = Double.POSITIVE_INFINITY;
            for (int i = 0; i < box.plan().outline().size(); i++) {
                got = Math.min(got, line.distanceMm(box.plan().outline().side(i)));
            }
            rows.add(
                    new Clearance(box.plan().name(), name, "wall", edge.gapMm(), got, Clearance.of(edge.gapMm(), got)));
        }
        return rows;
    }

    private static double rimMm(Box box) {
        return box.courses().get(box.courses().size() - 1).topMm();
    }

    private static Geometry outlineOf(Box box) {
        return box.plan().outline().toJts();
    }

    /** Each hole as the post's place grown to the hole's width. */
    private static List<Geometry> holes(Box box) {
        List<Geometry> holes = new ArrayList<>();
        for (Piece piece : box.pieces()) {
            if (piece.role() == Piece.Role.POST || piece.role() == Piece.Role.BRACE) {
                Optional<PostHole> hole = PostHole.of(piece, box.plan().bedMm());
                Geometry post = piece.place().plan().toJts();
                hole.ifPresent(h -> holes.add(
                        post.buffer((h.widthMm() - piece.place().plan().longestSideMm()) / 2)));
            }
        }
        return holes;
    }
}
