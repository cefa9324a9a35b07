package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What was measured on site.
 *
 * @param corners in going-round order
 * @param goingRound which way they go round, seen from above
 * @param stripWidth of a border that is a strip along a line; nothing for a closed ring
 * @param edges what lies along them
 * @param measures in the order of the document
 * @param falseAlarm the chance of calling a sound set of measures wrong
 */
public record SurveySpec(
        Names corners,
        RingDirection goingRound,
        Optional<Length> stripWidth,
        List<EdgeSpec> edges,
        List<Measure> measures,
        double falseAlarm) {
    public SurveySpec {
        edges = List.copyOf(edges);
        measures = List.copyOf(measures);
    }

    /** Whether the border is a strip along a line, not a closed ring. */
    public boolean isStrip() {
        return stripWidth.isPresent();
    }

    /** Names of all points that corners and measures name, in the order of the alphabet. */
    public SortedSet<String> pointNames() {
        SortedSet<String> points = new TreeSet<>(corners.list());
        measures.forEach(measure -> points.addAll(measure.points()));
        return points;
    }

    /** The same with other measures. */
    public SurveySpec withMeasures(List<Measure> other) {
        return new SurveySpec(corners, goingRound, stripWidth, edges, other, falseAlarm);
    }

    /** The same with the corners named from another one, or in another direction. */
    public SurveySpec withCorners(Names other, RingDirection direction) {
        return new SurveySpec(other, direction, stripWidth, edges, measures, falseAlarm);
    }

    /**
     * What lies along one edge.
     *
     * @param edge its two corners
     * @param kind what lies there
     * @param gap to leave between it and the planters
     * @param dampCourse height of a house's damp-proof course above the datum, if it is given
     * @param height above the ground, for the shade it throws
     */
    public record EdgeSpec(Names edge, EdgeKind kind, Length gap, Optional<Length> dampCourse, Length height) {}
}
