package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.PostHole;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * What is done on the ground for one box, on the plan in mm.
 *
 * @param name the box
 * @param outline the outer faces of its walls
 * @param dug the ground dug or stripped; empty where none is
 * @param holes holes for posts and braces; empty where there are none
 * @param spikes pegs at the corners, and the sheet with its pins where there is one; empty on hard ground
 * @param surface what it stands on
 * @param levels how deep it is dug, and how high soil and wall stand
 */
record BoxWork(
        String name,
        Geometry outline,
        Geometry dug,
        Geometry holes,
        Geometry spikes,
        GroundSurface surface,
        Levels levels) {
    private static final GeometryFactory MM = new GeometryFactory();

    /**
     * How deep and how high.
     *
     * @param dugMm greatest depth from the ground down to the level dug to, mm; 0 where nothing is dug
     * @param soilMm level of the soil, mm above the datum
     * @param topMm top of the wall or its capping, mm above the datum
     */
    record Levels(double dugMm, double soilMm, double topMm) {}

    /** The work for each box; the lists go together. */
    static List<BoxWork> of(
            List<Box> boxes, List<BoxGround> grounds, List<Geometry> areas, GroundSpec spec, double belowRimMm) {
        List<BoxWork> works = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            works.add(of(boxes.get(i), grounds.get(i), areas.get(i), spec, belowRimMm));
        }
        return works;
    }

    private static BoxWork of(Box box, BoxGround ground, Geometry area, GroundSpec spec, double belowRimMm) {
        boolean hard = spec.surface().isHard();
        boolean dig = !hard && ground.dugM3() + ground.turfM3() + ground.gravelM3() > 0;
        double deepest = ground.sides().stream()
                .mapToDouble(side -> side.highMm() - ground.dugToMm())
                .max()
                .orElse(0);
        double rim = box.courses().get(box.courses().size() - 1).topMm();
        return new BoxWork(
                box.plan().name(),
                box.plan().outline().toJts(),
                // Turf goes from the whole area; where only the walls stand on gravel the rest of it is not dug.
                !dig ? MM.createPolygon() : spec.turfMm() > 0 ? area : DugAreas.dug(box, area, spec),
                holes(box),
                spikes(box, area, spec),
                spec.surface(),
                new Levels(dig ? Math.max(spec.turfMm(), deepest) : 0, rim - belowRimMm, box.topMm()));
    }

    private static Geometry holes(Box box) {
        List<Geometry> holes = new ArrayList<>();
        for (Piece piece : box.pieces()) {
            if (piece.role() == Piece.Role.POST || piece.role() == Piece.Role.BRACE) {
                Ring post = piece.place().plan();
                PostHole.of(piece, box.plan().bedMm())
                        .ifPresent(hole ->
                                holes.add(DugAreas.grown(post.toJts(), (hole.widthMm() - post.longestSideMm()) / 2)));
            }
        }
        return MM.buildGeometry(holes);
    }

    private static Geometry spikes(Box box, Geometry area, GroundSpec spec) {
        if (spec.surface().isHard()) {
            return MM.createPolygon();
        }
        if (spec.membrane().isPresent()) {
            return area;
        }
        Coordinate[] corners =
                box.plan().outline().corners().stream().map(BoxWork::coordinate).toArray(Coordinate[]::new);
        return MM.createMultiPointFromCoords(corners);
    }

    static Coordinate coordinate(Point at) {
        return new Coordinate(at.xMm(), at.yMm());
    }
}
