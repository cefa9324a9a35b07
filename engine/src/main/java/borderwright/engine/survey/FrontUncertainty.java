package borderwright.engine.survey;

import borderwright.engine.geometry.Point;
import borderwright.engine.measure.Length;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.ErrorEllipse;
import java.util.ArrayList;
import java.util.List;

/**
 * Uncertainty of the front corners of a strip, carried over from the corners along the wall by small steps: the depth
 * itself is given and exact.
 */
final class FrontUncertainty {
    private static final double STEP_MM = 0.01;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final Outline outline;

    FrontUncertainty(FieldBook book, Adjustment adjustment, Outline outline) {
        this.book = book;
        this.adjustment = adjustment;
        this.outline = outline;
    }

    /** The front corners in the ring's order; none when the border is no strip. */
    List<SurveyedPoint> points() {
        List<SurveyedPoint> points = new ArrayList<>();
        for (int i = book.edges().measured(); i < book.edges().size(); i++) {
            points.add(point(i));
        }
        return points;
    }

    private SurveyedPoint point(int ringIndex) {
        int wallIndex = book.edges().size() - 1 - ringIndex;
        List<Integer> corners = book.order().corners();
        List<Point> columns = new ArrayList<>();
        List<Integer> unknowns = new ArrayList<>();
        for (int near = Math.max(wallIndex - 1, 0); near <= Math.min(wallIndex + 1, corners.size() - 1); near++) {
            int place = adjustment.network().placeUnknown(corners.get(near));
            for (int axis = 0; axis < 2; axis++) {
                columns.add(change(wallIndex, near, axis));
                unknowns.add(place + axis);
            }
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int a = 0; a < columns.size(); a++) {
            for (int b = 0; b < columns.size(); b++) {
                double cofactor = adjustment.cofactor(unknowns.get(a), unknowns.get(b));
                xx += columns.get(a).xMm() * columns.get(b).xMm() * cofactor;
                xy += columns.get(a).xMm() * columns.get(b).yMm() * cofactor;
                yy += columns.get(a).yMm() * columns.get(b).yMm() * cofactor;
            }
        }
        ErrorEllipse ellipse = Adjustment.ellipse(xx, xy, yy);
        return new SurveyedPoint(
                book.edges().from(ringIndex),
                outline.ring().corner(ringIndex),
                Math.sqrt(Math.max(xx, 0)),
                Math.sqrt(Math.max(yy, 0)),
                ellipse);
    }

    /** How a front corner moves when a corner along the wall is moved by 1 mm along an axis. */
    private Point change(int wallIndex, int moved, int axis) {
        Point step = axis == 0 ? new Point(STEP_MM, 0) : new Point(0, STEP_MM);
        Point ahead = front(wallIndex, moved, step);
        Point behind = front(wallIndex, moved, step.times(-1));
        return ahead.minus(behind).times(1 / (2 * STEP_MM));
    }

    private Point front(int wallIndex, int moved, Point step) {
        List<Point> wall = new ArrayList<>(book.order().places(adjustment.positions()));
        wall.set(moved, wall.get(moved).plus(step));
        double depthMm = book.notes().stripWidth().map(Length::mm).orElse(0.0);
        return StripFront.of(wall, depthMm).orElseThrow().get(wallIndex);
    }
}
