package borderwright.engine.ground;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * How far each planter, and the work on the ground for it, keeps from trees, services, air bricks, cladding and the border's
 * walls. The rules stand at {@link RootClearances}, {@link ServiceClearances} and {@link WallClearances}.
 */
final class ClearanceFinder {
    private final Outline outline;
    private final LengthFormat format;
    private final List<BoxWork> works;
    private final List<SiteClearance> found = new ArrayList<>();
    private final List<Message> notes;
    private final List<Problem> unmet;
    private final List<GroundPlan.StandsOver> standing = new ArrayList<>();

    /**
     * Clearances of some boxes.
     *
     * @param works what is done on the ground, box by box
     * @param notes where what should be known is added
     * @param unmet where what does not hold is added
     */
    ClearanceFinder(
            Outline outline, LengthFormat format, List<BoxWork> works, List<Message> notes, List<Problem> unmet) {
        this.outline = outline;
        this.format = format;
        this.works = works;
        this.notes = notes;
        this.unmet = unmet;
    }

    /**
     * All that were looked at: of each thing and part of the work the nearest planter, and every other that does not hold.
     *
     * @param places of the things near the planters, in the order of their notes
     */
    List<SiteClearance> of(List<Optional<NearbyPlace>> places, double bowMm) {
        for (int i = 0; i < places.size(); i++) {
            String where = "ground.keep clear of[" + i + "]";
            places.get(i).ifPresent(place -> keep(of(place, where)));
        }
        for (int e = 0; e < outline.edges().size(); e++) {
            keep(gaps(e, bowMm));
        }
        return List.copyOf(found);
    }

    /** Boxes that stand over a service; known once {@link #of} has been asked. */
    List<GroundPlan.StandsOver> standing() {
        return List.copyOf(standing);
    }

    /** Adds those of some rows that do not hold, and where all of one part do, the nearest. */
    void keep(List<SiteClearance> rows) {
        Map<Message, List<SiteClearance>> parts = new LinkedHashMap<>();
        rows.forEach(row ->
                parts.computeIfAbsent(row.what(), part -> new ArrayList<>()).add(row));
        for (List<SiteClearance> part : parts.values()) {
            Optional<SiteClearance> nearest =
                    part.stream().min(Comparator.comparingDouble(c -> c.gotMm() - c.wantedMm()));
            for (SiteClearance row : part) {
                if (row.verdict() != Verdict.HOLDS
                        || nearest.filter(row::equals).isPresent()) {
                    found.add(row);
                }
            }
        }
    }

    private List<SiteClearance> of(NearbyPlace nearby, String where) {
        List<SiteClearance> rows = new ArrayList<>();
        NearbyThing thing = nearby.thing();
        Geometry place = nearby.shape();
        Message name = nearby.name();
        WallClearances walls = new WallClearances(format, unmet);
        for (BoxWork work : works) {
            if (thing.what() == NearbyKind.TREE) {
                new RootClearances(notes, unmet).measure(thing.rootsMm(), where, name, place, work, rows);
            } else if (thing.what().isService()) {
                new ServiceClearances(thing, name, format, notes, unmet).measure(where, place, work, rows);
                if (work.outline().intersects(place)) {
                    standing.add(new GroundPlan.StandsOver(
                            work.name(),
                            name,
                            work.outline().intersection(place).getLength()));
                }
            } else if (thing.bottom().isPresent() && thing.what() == NearbyKind.AIR_BRICK) {
                walls.airBrick(where, name, place, thing.bottom().get().mm(), work, rows);
            } else if (thing.bottom().isPresent()) {
                walls.cladding(where, name, place, thing.bottom().get().mm(), work, rows);
            }
        }
        return rows;
    }

    /** The gaps that the layout leaves along an edge that something stands on; to a fence no less than a wall may bow. */
    private List<SiteClearance> gaps(int e, double bowMm) {
        OutlineEdge edge = outline.edges().get(e);
        List<SiteClearance> rows = new ArrayList<>();
        // What a curve leaves is not measured from its chord.
        if (edge.riseMm() != 0
                || edge.kind() == EdgeKind.OPEN
                || edge.kind() == EdgeKind.LAWN
                || edge.kind() == EdgeKind.PAVING) {
            return rows;
        }
        Geometry line = new GeometryFactory().createLineString(new Coordinate[] {
            BoxWork.coordinate(outline.ring().corner(e)),
            BoxWork.coordinate(outline.ring().corner(e + 1))
        });
        boolean fence = edge.kind() == EdgeKind.FENCE;
        Message name = ClearanceMessage.CLEARANCE_FROM_EDGE.of(edge.kind(), outline.edgeName(e));
        double wanted = fence ? Math.max(bowMm, edge.gapMm()) : edge.gapMm();
        for (BoxWork work : works) {
            double got = work.outline().distance(line);
            SiteClearance row = new SiteClearance(
                    work.name(),
                    name,
                    ClearanceMessage.CLEARANCE_OF_WALL.of(),
                    wanted,
                    got,
                    SiteClearance.of(wanted, got));
            rows.add(row);
            if (fence && SiteClearance.of(bowMm, got) == Verdict.DOES_NOT_HOLD) {
                unmet.add(new Problem(
                        "survey.edges", NearbyFinding.FENCE_BEARS.of(work.name(), got, name, bowMm, Math.ceil(bowMm))));
            }
        }
        return rows;
    }
}
