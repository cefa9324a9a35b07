package borderwright.pack.drawings;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.network.ErrorEllipse;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Ellipse;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What was measured: the points, the tapes between them with the numbers of their readings, and how sure each point is.
 *
 * <p>Error ellipses have a scale of their own, stated, since true to scale they could not be seen.
 */
public final class SurveyDrawing {
    private static final double SIDE_MM = 18;
    private static final double ABOVE_MM = 14;
    private static final double BELOW_MM = 14;
    private static final double LARGEST_ELLIPSE_MM = 6;
    /** Paper millimetres for a millimetre on the ground. */
    private static final List<Double> ELLIPSE_SCALES = List.of(20., 10., 5., 2., 1., 0.5, 0.2, 0.1, 0.05, 0.02, 0.01);

    private final Plan plan;
    private final DrawingBuilder sketch;
    private final View view;
    private final Map<String, Point> points = new LinkedHashMap<>();

    private SurveyDrawing(Plan plan, DrawingBuilder sketch, View view) {
        this.plan = plan;
        this.sketch = sketch;
        this.view = view;
        plan.survey().points().forEach(p -> points.put(p.name(), p.at()));
    }

    public static Drawing draw(Plan plan, double widthMm, double heightMm) {
        UnitSystem units = plan.garden().units();
        List<Point> places = new ArrayList<>(plan.outline().ring().corners());
        plan.survey().points().forEach(p -> places.add(p.at()));
        double turn = Turn.towardsReader(plan.boxes());
        View.Extent extent = View.extent(places, turn);
        Scale scale = Scale.fitting(
                units, extent.width(), extent.height(), widthMm - 2 * SIDE_MM, heightMm - ABOVE_MM - BELOW_MM);
        DrawingBuilder sketch = new DrawingBuilder(widthMm, scale.paper(extent.height()) + ABOVE_MM + BELOW_MM);
        double left = (widthMm - scale.paper(extent.width())) / 2;
        SurveyDrawing drawing = new SurveyDrawing(plan, sketch, View.of(scale, turn, extent, new Spot(left, ABOVE_MM)));
        drawing.everything(units);
        return sketch.finish(PrintedFigures.in(units).text(DrawingMessage.DRAWN_SURVEY.of()));
    }

    private void everything(UnitSystem units) {
        sketch.shape(view.at(plan.outline().ring()), Pen.EDGE, Tone.PALE);
        readings();
        double scale = ellipseScale();
        plan.survey().points().forEach(p -> ellipse(p, scale));
        plan.survey().points().forEach(this::point);
        legend(units, scale);
    }

    /** Tapes and offsets as lines, each with the number of its reading in the table. */
    private void readings() {
        List<SurveyReport.Reading> all = plan.survey().readings();
        List<Measure> measures = plan.garden().survey().measures();
        for (int i = 0; i < measures.size(); i++) {
            String where = "survey.measures[" + i + "]";
            List<Integer> numbers = new ArrayList<>();
            for (int r = 0; r < all.size(); r++) {
                if (all.get(r).where().startsWith(where)) {
                    numbers.add(r + 1);
                }
            }
            measure(measures.get(i), numbers);
        }
    }

    private void measure(Measure measure, List<Integer> numbers) {
        if (measure instanceof Measure.TapeLength tape) {
            lines(tape.tape(), numbers);
        } else if (measure instanceof Measure.TapeChain chain) {
            lines(chain.chain(), numbers);
        } else if (measure instanceof Measure.BaselineOffset offset) {
            lines(Names.of(offset.baseline().first(), offset.offset()), numbers);
        } else if (measure instanceof Measure.GaugeAngle gauge
                && points.containsKey(gauge.angle().get(1))) {
            number(view.at(points.get(gauge.angle().get(1))), numbers);
        }
    }

    private void lines(Names names, List<Integer> numbers) {
        for (int k = 0; k + 1 < names.size(); k++) {
            Point a = points.get(names.get(k));
            Point b = points.get(names.get(k + 1));
            if (a != null && b != null && a.distanceMm(b) > 1) {
                sketch.line(Pen.FINE, view.at(a), view.at(b));
                boolean each = names.size() > 2;
                List<Integer> here = !each ? numbers : k < numbers.size() ? List.of(numbers.get(k)) : List.of();
                number(view.at(a).towards(view.at(b), 0.5), here);
            }
        }
    }

    private void number(Spot at, List<Integer> numbers) {
        if (!numbers.isEmpty()) {
            PrintedFigures f = PrintedFigures.in(plan.garden().units());
            String text = numbers.stream()
                    .map(n -> f.text(DrawingMessage.DRAWN_READING.of(Integer.toString(n))))
                    .collect(Collectors.joining(", "));
            sketch.label(text, at, TextSize.FINE, TypeFace.REGULAR, Tone.BLACK);
        }
    }

    private double ellipseScale() {
        double largest = plan.survey().points().stream()
                .mapToDouble(p -> p.ellipse().majorMm())
                .max()
                .orElse(1);
        return ELLIPSE_SCALES.stream()
                .filter(s -> s * largest <= LARGEST_ELLIPSE_MM)
                .findFirst()
                .orElse(ELLIPSE_SCALES.get(ELLIPSE_SCALES.size() - 1));
    }

    private void ellipse(SurveyReport.SurveyedPoint point, double scale) {
        ErrorEllipse e = point.ellipse();
        if (e.majorMm() * scale > 0.15) {
            sketch.shape(
                    Ellipse.spots(
                            view.at(point.at()),
                            e.majorMm() * scale,
                            StrictMath.max(e.minorMm() * scale, 0.05),
                            e.bearingRad() + view.turnRad()),
                    Pen.ALERT,
                    null);
        }
    }

    private void point(SurveyReport.SurveyedPoint point) {
        Spot at = view.at(point.at());
        sketch.dot(at, 0.6, null, Tone.BLACK);
        boolean corner = plan.outline().cornerNames().contains(point.name());
        sketch.label(
                point.name(),
                at,
                corner ? TextSize.NAME : TextSize.NORMAL,
                corner ? TypeFace.BOLD : TypeFace.REGULAR,
                Tone.BLACK);
    }

    private void legend(UnitSystem units, double ellipseScale) {
        ScaleBar.draw(sketch, view.scale(), units, new Spot(0, sketch.heightMm()));
        double groundMm = ellipseScale >= 1 ? 5 / ellipseScale : 10 / (10 * ellipseScale) * 5;
        Spot start = new Spot(sketch.widthMm() * 0.52, sketch.heightMm() - 2.6);
        sketch.line(Pen.ALERT, start, start.plus(groundMm * ellipseScale, 0));
        sketch.text(
                PrintedFigures.in(units).text(DrawingMessage.DRAWN_ELLIPSES.of(groundMm)),
                start.plus(groundMm * ellipseScale + 1.5, 0.9),
                TextSize.NORMAL,
                Mark.Anchor.START,
                TypeFace.REGULAR);
    }
}
