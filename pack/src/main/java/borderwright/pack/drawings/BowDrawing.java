package borderwright.pack.drawings;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.box.BowLine;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
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
 * <p>Bow and limit are shown by shape and number, not by tone alone, so that they read in grey as well.
 */
public final class BowDrawing {
    private static final double LEFT_MM = 20;
    private static final double RIGHT_MM = 16;
    private static final double ABOVE_MM = 6.5;
    private static final double PITCH_MM = 9;
    private static final double MOST_BOW_MM = 6.5;
    private static final double BAR_MM = 8;
    /** Sides that bow less than this are listed in the table alone. */
    private static final double LEAST_MM = 1;

    /** Paper to wood, for the bow: those whose numbers a person can work with. */
    private static final List<Double> BOW_SCALES =
            List.of(5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002);

    private static final double GAP_MM = 6;
    /** How much of the width the longest side may take at the lesser of two scales. */
    private static final double LESSER = 0.7;

    private final Box box;
    private final StrengthReport report;
    private final PrintedFigures f;
    private final DoubleFunction<String> small;
    private final Scale scale;
    private final double bowScale;

    private BowDrawing(Box box, StrengthReport report, UnitSystem units, DoubleFunction<String> small, Scale scale) {
        this.box = box;
        this.report = report;
        this.f = PrintedFigures.in(units);
        this.small = small;
        this.scale = scale;
        double worst = StrictMath.max(report.worstBowMm(), LEAST_MM);
        bowScale = BOW_SCALES.stream()
                .filter(s -> worst * s <= MOST_BOW_MM)
                .findFirst()
                .orElse(MOST_BOW_MM / worst);
    }

    /** Sides that read the same, with the courses of the first from the top. */
    private record Face(List<SideBow> sides, List<BowLine> lines) {
        SideBow first() {
            return sides.get(0);
        }
    }

    /**
     * The sides that bow enough to be drawn, all to the same scales, as many beside each other as fit.
     *
     * @param small how a small length, mm, is written
     */
    public static List<Drawing> all(
            Box box, StrengthReport report, UnitSystem units, DoubleFunction<String> small, double widthMm) {
        double longest = box.plan().outline().longestSideMm();
        double room = widthMm - LEFT_MM - RIGHT_MM;
        BowDrawing large = new BowDrawing(box, report, units, small, Scale.fitting(units, longest, 1, room, 1));
        BowDrawing lesser =
                new BowDrawing(box, report, units, small, Scale.fitting(units, longest, 1, room * LESSER, 1));
        // A short side alone in a row leaves the rest of it empty: a step down in scale is worth a row.
        BowDrawing drawing = lesser.rows(widthMm).size() < large.rows(widthMm).size() ? lesser : large;
        return drawing.rows(widthMm).stream()
                .map(row -> drawing.draw(row, units, widthMm))
                .toList();
    }

    private List<List<Face>> rows(double widthMm) {
        List<List<Face>> rows = new ArrayList<>();
        for (Face face : faces()) {
            place(face, rows, widthMm);
        }
        return rows;
    }

    /** Into the first row with room. */
    private void place(Face face, List<List<Face>> rows, double widthMm) {
        for (List<Face> row : rows) {
            row.add(face);
            if (widthMm(row) <= widthMm) {
                return;
            }
            row.remove(row.size() - 1);
        }
        rows.add(new ArrayList<>(List.of(face)));
    }

    private List<Face> faces() {
        Map<String, Face> alike = new LinkedHashMap<>();
        for (SideBow side : report.sides()) {
            List<BowLine> lines = report.lines().stream()
                    .filter(line -> line.side() == side.side())
                    .sorted(Comparator.comparingInt(BowLine::course).reversed())
                    .toList();
            if (side.finalMm() >= LEAST_MM && !lines.isEmpty()) {
                alike.computeIfAbsent(written(side, lines), key -> new Face(new ArrayList<>(), lines))
                        .sides
                        .add(side);
            }
        }
        return List.copyOf(alike.values());
    }

    /** What a drawing of a side says: sides that say the same share it. */
    private String written(SideBow side, List<BowLine> lines) {
        StringBuilder out = new StringBuilder();
        out.append(StrictMath.round(box.plan().outline().sideMm(side.side())));
        for (BowLine line : lines) {
            for (BowLine.At at : line.points()) {
                out.append('|')
                        .append(StrictMath.round(at.alongMm() / 5))
                        .append(' ')
                        .append(small.apply(at.outMm()));
            }
        }
        return out.toString();
    }

    private double widthMm(Face face) {
        return LEFT_MM + scale.paper(box.plan().outline().sideMm(face.first().side())) + RIGHT_MM;
    }

    private double widthMm(List<Face> row) {
        return row.stream().mapToDouble(this::widthMm).sum() + GAP_MM * (row.size() - 1);
    }

    private Drawing draw(List<Face> row, UnitSystem units, double widthMm) {
        int courses = row.stream().mapToInt(face -> face.lines.size()).max().orElseThrow();
        DrawingBuilder sketch = new DrawingBuilder(widthMm, ABOVE_MM + courses * PITCH_MM + BAR_MM);
        double left = 0;
        for (Face face : row) {
            draw(sketch, face, left);
            left += widthMm(face) + GAP_MM;
        }
        Message bow = bowScale >= 1
                ? DrawingMessage.BULGE_LARGER.of(number(bowScale))
                : DrawingMessage.BULGE_SMALLER.of(number(1 / bowScale));
        ScaleBar.draw(sketch, scale, units, new Spot(0, sketch.heightMm()));
        Message key = limitIsDrawn()
                ? DrawingMessage.BULGE_KEY_WITH_LIMIT.of(bow, report.bowLimitMm())
                : DrawingMessage.BULGE_KEY.of(bow);
        sketch.text(
                f.text(key),
                new Spot(sketch.widthMm(), sketch.heightMm() - 1.7),
                TextSize.NORMAL,
                Mark.Anchor.END,
                TypeFace.REGULAR);
        List<Message> sides = row.stream()
                .map(face -> DrawingMessage.BULGE_AT_MOST.of(
                        name(face), small.apply(face.first().finalMm())))
                .toList();
        return sketch.finish(f.text(DrawingMessage.BULGE_SIDES.of(report.box(), scale.words(), bow, sides)));
    }

    private void draw(DrawingBuilder sketch, Face face, double left) {
        sketch.text(f.text(name(face)), new Spot(left, 3.2), TextSize.NAME, Mark.Anchor.START, TypeFace.BOLD);
        double right = left + widthMm(face);
        double bottom = ABOVE_MM + (face.lines.size() - 1) * PITCH_MM + MOST_BOW_MM / 2;
        for (double along : uprights(face.first().side())) {
            double x = x(left, along);
            sketch.line(Pen.FINE, new Spot(x, ABOVE_MM - 2), new Spot(x, bottom));
        }
        for (int i = 0; i < face.lines.size(); i++) {
            course(sketch, face.lines.get(i), left, right, ABOVE_MM + i * PITCH_MM);
        }
    }

    private static Message name(Face face) {
        return DrawingMessage.BULGE_OF_SIDES.of(
                face.sides.size(),
                String.join(" and ", face.sides.stream().map(SideBow::letter).toList()));
    }

    /** Middles of the posts and braces that stand against a side, along it. */
    private List<Double> uprights(int index) {
        SideFrame side = SideFrame.of(box.plan().outline()).get(index);
        double wall = box.pieces().stream()
                .filter(p -> p.role() == Piece.Role.WALL && p.side() == index)
                .flatMap(p -> p.place().plan().corners().stream())
                .mapToDouble(side::w)
                .max()
                .orElse(0);
        return box.pieces().stream()
                .filter(p -> p.role() == Piece.Role.POST || p.role() == Piece.Role.BRACE)
                .flatMap(p -> side.bearing(p.place().plan(), wall).stream())
                .filter(bearing -> bearing.fromMm() > 0 && bearing.toMm() < side.lengthMm())
                .map(SideFrame.Bearing::middleMm)
                .toList();
    }

    private void course(DrawingBuilder sketch, BowLine line, double left, double right, double y) {
        List<BowLine.At> points = line.points();
        List<Spot> curve = new ArrayList<>();
        points.forEach(at -> curve.add(new Spot(x(left, at.alongMm()), y + at.outMm() * bowScale)));
        Spot from = new Spot(x(left, points.get(0).alongMm()), y);
        Spot to = new Spot(x(left, points.get(points.size() - 1).alongMm()), y);
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
        sketch.text(
                f.text(DrawingMessage.BULGE_COURSE.of(Integer.toString(line.course()))),
                new Spot(left, y + 0.9),
                TextSize.NORMAL,
                Mark.Anchor.START,
                TypeFace.REGULAR);
        // Beside the end of the line, so that no number lies on a curve.
        sketch.text(
                small.apply(StrictMath.max(0, greatest.outMm())),
                new Spot(right, y + 0.9),
                TextSize.NORMAL,
                Mark.Anchor.END,
                over ? TypeFace.BOLD : TypeFace.REGULAR,
                0,
                over ? Tone.ACCENT : Tone.BLACK);
        Spot peak = new Spot(x(left, greatest.alongMm()), y + greatest.outMm() * bowScale);
        sketch.line(Pen.FINE, new Spot(peak.x(), y), peak);
    }

    private boolean limitIsDrawn() {
        return report.bowLimitMm() * bowScale <= MOST_BOW_MM + 1;
    }

    private double x(double left, double alongMm) {
        return left + LEFT_MM + scale.paper(alongMm);
    }

    private static String number(double value) {
        return Long.toString(StrictMath.round(value));
    }
}
