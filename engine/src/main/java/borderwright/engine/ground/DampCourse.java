package borderwright.engine.ground;

import borderwright.engine.garden.SurveySpec.EdgeSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Segment;
import borderwright.engine.ground.NearbyFinding.Way;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Whether soil stays far enough below a house's damp-proof course.
 *
 * <p>Ground and fill stay 150 mm or more below it (common practice in building-defects textbooks); soil in a box of its own
 * counts where the box stands nearer than half a metre, as splashes and what falls into the gap reach the wall from there
 * (common practice, no source).
 *
 * @param notes where what should be known is added
 * @param unmet where what does not hold is added
 */
record DampCourse(Outline outline, LengthFormat format, List<Message> notes, List<Problem> unmet) {

    /** Edge by edge, how far soil in the boxes near it stays below the course. */
    List<List<SiteClearance>> check(List<EdgeSpec> edges, List<BoxWork> works) {
        List<List<SiteClearance>> rows = new ArrayList<>();
        for (int e = 0; e < edges.size(); e++) {
            EdgeSpec edge = edges.get(e);
            Optional<Segment> line =
                    outline.between(edge.edge().first(), edge.edge().last());
            if (line.isPresent()
                    && (edge.kind() == EdgeKind.HOUSE || edge.dampCourse().isPresent())) {
                rows.add(check(edge, "survey.edges[" + e + "].damp course", wall(line.get()), works));
            }
        }
        return rows;
    }

    private List<SiteClearance> check(EdgeSpec edge, String where, Geometry wall, List<BoxWork> works) {
        List<SiteClearance> rows = new ArrayList<>();
        List<String> near = new ArrayList<>();
        Optional<Length> course = edge.dampCourse();
        for (BoxWork work : works) {
            double gap = work.outline().distance(wall);
            if (gap < nearMm()) {
                near.add(work.name());
                if (course.isPresent()) {
                    rows.add(row(edge, where, work, gap, course.get().mm()));
                }
            }
        }
        if (course.isEmpty() && !near.isEmpty()) {
            notes.add(GroundMessage.DAMP_COURSE_UNKNOWN.of(
                    near, nearMm(), edge.edge().toString(), belowMm()));
        }
        return rows;
    }

    private SiteClearance row(EdgeSpec edge, String where, BoxWork work, double gapMm, double courseMm) {
        double below = courseMm - work.levels().soilMm();
        Verdict verdict = SiteClearance.of(belowMm(), below);
        if (verdict == Verdict.DOES_NOT_HOLD) {
            unmet.add(new Problem(
                    where,
                    GroundMessage.DAMP_COURSE.of(
                            work.name(),
                            Math.abs(below),
                            Way.of(below),
                            edge.edge().toString(),
                            gapMm,
                            belowMm(),
                            Math.ceil(belowMm() - below),
                            nearMm())));
        }
        return new SiteClearance(
                work.name(),
                ClearanceMessage.CLEARANCE_FROM_DAMP_COURSE.of(edge.edge().toString()),
                ClearanceMessage.CLEARANCE_OF_SOIL_BELOW.of(),
                belowMm(),
                below,
                verdict);
    }

    private static Geometry wall(Segment line) {
        return new GeometryFactory().createLineString(new Coordinate[] {
            new Coordinate(line.from().xMm(), line.from().yMm()),
            new Coordinate(line.to().xMm(), line.to().yMm())
        });
    }

    private double nearMm() {
        return format.rule(500);
    }

    private double belowMm() {
        return format.rule(GroundWork.BELOW_DAMP_COURSE_MM);
    }
}
