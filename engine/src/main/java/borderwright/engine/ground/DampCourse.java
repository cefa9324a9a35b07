package borderwright.engine.ground;

import borderwright.engine.buildup.Box;
import borderwright.engine.garden.EdgeKind;
import borderwright.engine.garden.SurveyNotes.EdgeNote;
import borderwright.engine.geometry.Segment;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether soil stays far enough below a house's damp-proof course.
 *
 * <p>Ground and fill stay 150 mm or more below it (common practice in building-defects textbooks); soil in a box of its own
 * counts where the box stands nearer than half a metre, as splashes and what falls into the gap reach the wall from there
 * (common practice, no source).
 */
record DampCourse(Outline outline, LengthFormat format) {
    private static final double BELOW_MM = 150;
    private static final double NEAR_MM = 500;

    void check(List<EdgeNote> edges, List<Box> boxes, double belowRimMm, List<String> notes, List<Problem> unmet) {
        for (int e = 0; e < edges.size(); e++) {
            EdgeNote edge = edges.get(e);
            Optional<Segment> line =
                    outline.between(edge.edge().first(), edge.edge().last());
            Length course = edge.dampCourse();
            if (line.isEmpty() || (edge.kind() != EdgeKind.HOUSE && course == null)) {
                continue;
            }
            List<String> near = new ArrayList<>();
            for (Box box : boxes) {
                double gap = gapMm(box, line.get());
                if (gap < NEAR_MM) {
                    near.add(box.plan().name());
                    if (course != null) {
                        tooHigh(edge, e, box, gap, course.mm(), belowRimMm).ifPresent(unmet::add);
                    }
                }
            }
            if (course == null && !near.isEmpty()) {
                notes.add("Not shown to hold: soil in " + String.join(", ", near) + " stands within "
                        + format.length(NEAR_MM) + " of the house " + edge.edge()
                        + ". Find its damp-proof course and air bricks, keep soil " + format.length(BELOW_MM)
                        + " below the one and clear of the others, and say `damp course` at that edge.");
            }
        }
    }

    private Optional<Problem> tooHigh(
            EdgeNote edge, int index, Box box, double gapMm, double courseMm, double belowRimMm) {
        double rim = box.courses().get(box.courses().size() - 1).topMm();
        double over = rim - belowRimMm - (courseMm - BELOW_MM);
        if (over <= 0.5) {
            return Optional.empty();
        }
        return Optional.of(new Problem(
                "damp-course",
                "survey.edges[" + index + "].damp course",
                "Soil in " + box.plan().name() + " would stand " + format.length(Math.abs(over - BELOW_MM))
                        + (over > BELOW_MM ? " above" : " below") + " the damp-proof course of " + edge.edge() + ", "
                        + format.length(gapMm) + " from the wall; " + format.length(BELOW_MM)
                        + " below it is the usual least.",
                "Make the wall " + format.length(Math.ceil(over)) + " lower, fill it less, or keep the box "
                        + format.length(NEAR_MM) + " off; ask a builder who knows the house."));
    }

    private static double gapMm(Box box, Segment line) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < box.plan().outline().size(); i++) {
            least = Math.min(least, line.distanceMm(box.plan().outline().side(i)));
        }
        return least;
    }
}
