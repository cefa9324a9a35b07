package borderwright.pack.drawings;

import borderwright.engine.buildup.Box;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.box.BowLine;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Sketch;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/**
 * How far the courses of a side end up bowing: the side as seen from outside, its top course on top, each course a line
 * from which the bow is drawn down the page to a scale of its own.
 *
 * <p>Bow and limit are told by shape and number, not by tone alone, so that they read in grey as well.
 */
public final class BowDrawing {
    private static final double LEFT_MM = 20;
    private static final double RIGHT_MM = 16;
    private static final double ABOVE_MM = 6.5;
    private static final double PITCH_MM = 9;
    private static final double MOST_BOW_MM = 6.5;
    private static final double BAR_MM = 8;
    /** Sides that bow less than this are told in the table alone. */
    private static final double LEAST_MM = 1;

    /** Paper to wood, for the bow: those whose numbers a person can work with. */
    private static final List<Double> BOW_SCALES =
            List.of(5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002);

    private final StrengthReport report;
    private final LengthFormat lengths;
    private final DoubleFunction<String> small;
    private final Sketch sketch;
    private final Scale scale;
    private final double bowScale;

    private BowDrawing(
            StrengthReport report,
            LengthFormat lengths,
            DoubleFunction<String> small,
            Sketch sketch,
            Scale scale,
            double bowScale) {
        this.report = report;
        this.lengths = lengths;
        this.small = small;
        this.sketch = sketch;
        this.scale = scale;
        this.bowScale = bowScale;
    }

    /**
     * One drawing for each side that bows enough to be drawn, all to the same scales.
     *
     * @param small how a small length, mm, is written
     */
    public static List<Drawing> all(
            Box box, StrengthReport report, UnitSystem units, DoubleFunction<String> small, double widthMm) {
        double longest = 0;
        for (int i = 0; i < box.plan().outline().size(); i++) {
            longest = StrictMath.max(longest, box.plan().outline().sideMm(i));
        }
        Scale scale = Scale.fitting(units, longest, 1, widthMm - LEFT_MM - RIGHT_MM, 1);
        double worst = StrictMath.max(report.worstBowMm(), LEAST_MM);
        double bowScale = BOW_SCALES.stream()
                .filter(s -> worst * s <= MOST_BOW_MM)
                .findFirst()
                .orElse(MOST_BOW_MM / worst);
        Map<String, List<SideBow>> alike = new LinkedHashMap<>();
        for (SideBow side : report.sides()) {
            if (side.finalMm() >= LEAST_MM && !lines(report, side).isEmpty()) {
                alike.computeIfAbsent(written(box, report, side, small), k -> new ArrayList<>())
                        .add(side);
            }
        }
        List<Drawing> drawings = new ArrayList<>();
        for (List<SideBow> sides : alike.values()) {
            List<BowLine> lines = lines(report, sides.get(0));
            Sketch sketch = new Sketch(widthMm, ABOVE_MM + lines.size() * PITCH_MM + BAR_MM);
            BowDrawing drawing = new BowDrawing(report, new LengthFormat(units), small, sketch, scale, bowScale);
            drawings.add(drawing.draw(sides, lines, units));
        }
        return drawings;
    }

    private static List<BowLine> lines(StrengthReport report, SideBow side) {
        return report.lines().stream()
                .filter(line -> line.side() == side.side())
                .sorted(Comparator.comparingInt(BowLine::course).reversed())
                .toList();
    }

    /** Sides that read the same share a drawing. */
    private static String written(Box box, StrengthReport report, SideBow side, DoubleFunction<String> small) {
        StringBuilder out = new StringBuilder();
        out.append(StrictMath.round(box.plan().outline().sideMm(side.side())));
        for (BowLine line : lines(report, side)) {
            for (BowLine.At at : line.points()) {
                out.append('|')
                        .append(StrictMath.round(at.alongMm() / 5))
                        .append(' ')
                        .append(small.apply(at.outMm()));
            }
        }
        return out.toString();
    }

    private Drawing draw(List<SideBow> sides, List<BowLine> lines, UnitSystem units) {
        SideBow side = sides.get(0);
        String which = (sides.size() == 1 ? "Side " : "Sides ")
                + String.join(" and ", sides.stream().map(SideBow::letter).toList());
        sketch.text(which, new Spot(0, 3.2), TextSize.NAME, Mark.Anchor.START, true);
        for (int i = 0; i < lines.size(); i++) {
            course(lines.get(i), ABOVE_MM + i * PITCH_MM);
        }
        String bow = bowScale >= 1 ? "bow drawn " + number(bowScale) + ":1" : "bow drawn 1:" + number(1 / bowScale);
        ScaleBar.draw(sketch, scale, units, new Spot(0, sketch.heightMm()));
        String key = bow + (limitIsDrawn() ? ", dashed: limit " + lengths.length(report.bowLimitMm()) : "");
        sketch.text(key, new Spot(sketch.widthMm(), sketch.heightMm() - 1.7), TextSize.NORMAL, Mark.Anchor.END, false);
        return sketch.finish(which + " of " + report.box() + " seen from outside, scale " + scale.words() + ", " + bow
                + ": " + small.apply(side.finalMm()) + " at most");
    }

    private void course(BowLine line, double y) {
        List<BowLine.At> points = line.points();
        List<Spot> curve = new ArrayList<>();
        points.forEach(at -> curve.add(new Spot(x(at.alongMm()), y + at.outMm() * bowScale)));
        Spot from = new Spot(x(points.get(0).alongMm()), y);
        Spot to = new Spot(x(points.get(points.size() - 1).alongMm()), y);
        List<Spot> filled = new ArrayList<>(curve);
        filled.add(to);
        filled.add(from);
        sketch.shape(filled, null, Tone.LIGHT);
        if (limitIsDrawn()) {
            double limit = report.bowLimitMm() * bowScale;
            sketch.line(Pen.HIDDEN, from.plus(0, limit), to.plus(0, limit));
        }
        sketch.line(Pen.FINE, from, to);
        BowLine.At greatest = line.greatest();
        boolean over = greatest.outMm() > report.bowLimitMm();
        sketch.line(over ? Pen.ALERT : Pen.BOLD, curve);
        sketch.text("course " + line.course(), new Spot(0, y + 0.9), TextSize.NORMAL, Mark.Anchor.START, false);
        // Beside the end of the line, so that no number lies on a curve.
        sketch.text(
                small.apply(StrictMath.max(0, greatest.outMm())),
                new Spot(sketch.widthMm(), y + 0.9),
                TextSize.NORMAL,
                Mark.Anchor.END,
                over,
                0,
                over ? Tone.ACCENT : Tone.BLACK);
        Spot peak = new Spot(x(greatest.alongMm()), y + greatest.outMm() * bowScale);
        sketch.line(Pen.FINE, new Spot(peak.x(), y), peak);
    }

    private boolean limitIsDrawn() {
        return report.bowLimitMm() * bowScale <= MOST_BOW_MM + 1;
    }

    private double x(double alongMm) {
        return LEFT_MM + scale.paper(alongMm);
    }

    private static String number(double value) {
        return Long.toString(StrictMath.round(value));
    }
}
