package borderwright.pack.drawings;

import borderwright.engine.measure.Angle;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.List;

/** An angle at full size, to cut out and hold to a corner or to a board; the first of a sheet has two bars that show whether the printer kept the size. */
public final class AngleTemplate {
    /** Length of the lines that make the angle, mm. */
    public static final double LEG_MM = 50;

    private static final double METRIC_BAR_MM = 100;
    private static final double IMPERIAL_BAR_MM = 4 * UnitFactors.MM_PER_INCH;
    private static final double TITLE_MM = 10;
    private static final double BELOW_MM = 7;
    private static final double NAME_OF_LINE_MM = 3;
    private static final double BARS_MM = 8;
    private static final double WEDGE_MM = 26;
    private static final double WEDGE_HANGING_MM = 14;

    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final double bottomMm;

    private AngleTemplate(TemplateAngles angle, Bars bars, UnitSystem units, double widthMm, double heightMm) {
        this.f = PrintedFigures.in(units);
        this.bottomMm = heightMm;
        this.sketch = new DrawingBuilder(widthMm, heightMm + (bars == Bars.WITH ? BARS_MM : 0));
        sketch.text(f.text(angle.title()), new Spot(0, 3.6), TextSize.NAME, Mark.Anchor.START, TypeFace.BOLD);
        sketch.text(angle.names(f), new Spot(0, 8), TextSize.NORMAL, Mark.Anchor.START, TypeFace.REGULAR);
        if (bars == Bars.WITH) {
            bars();
        }
    }

    /** Whether a template has the two bars that are measured before it is trusted. */
    public enum Bars {
        WITH,
        WITHOUT
    }

    /** Length of the level check bar, mm; the upright one is half as long. */
    public static double barMm(UnitSystem units) {
        return units == UnitSystem.METRIC ? METRIC_BAR_MM : IMPERIAL_BAR_MM;
    }

    /** The angle inside a corner, between the outer faces of its two walls, and the line that halves it. */
    static Drawing corner(TemplateAngles angle, Bars bars, UnitSystem units, double widthMm) {
        double cos = StrictMath.cos(angle.angle().radians() / 2);
        double high = cos < 0 ? WEDGE_HANGING_MM + 2 - LEG_MM * cos : 4 + StrictMath.max(WEDGE_MM, LEG_MM * cos);
        AngleTemplate template = new AngleTemplate(angle, bars, units, widthMm, TITLE_MM + high + BELOW_MM);
        template.drawCorner(angle.angle());
        return template.finish(angle);
    }

    /** The angle of a cut from square. */
    static Drawing setting(TemplateAngles angle, Bars bars, UnitSystem units, double widthMm) {
        AngleTemplate template =
                new AngleTemplate(angle, bars, units, widthMm, TITLE_MM + NAME_OF_LINE_MM + LEG_MM + BELOW_MM);
        template.drawSetting(angle.angle());
        return template.finish(angle);
    }

    private Drawing finish(TemplateAngles angle) {
        return sketch.finish(f.text(DrawingMessage.TEMPLATE_FULL_SIZE.of(angle.title())));
    }

    /** A level bar along the bottom and an upright one at the right: a printer may stretch one way only. */
    private void bars() {
        double bar = barMm(f.units());
        Spot left = new Spot(4, sketch.heightMm() - 2);
        bar(left, left.plus(bar, 0));
        sketch.text(
                f.text(DrawingMessage.TEMPLATE_BAR.of(bar)),
                left.plus(bar / 2, -1.6),
                TextSize.NORMAL,
                Mark.Anchor.MIDDLE,
                TypeFace.REGULAR);
        Spot low = new Spot(sketch.widthMm() - 4, sketch.heightMm() - 2);
        bar(low, low.plus(0, -bar / 2));
        sketch.text(
                f.text(DrawingMessage.TEMPLATE_OTHER_BAR.of(bar / 2)),
                low.plus(-1.6, -bar / 4),
                TextSize.NORMAL,
                Mark.Anchor.MIDDLE,
                TypeFace.REGULAR,
                90,
                Tone.BLACK);
    }

    private void bar(Spot from, Spot to) {
        sketch.line(Pen.EDGE, from, to);
        Spot end = to.minus(from).unit().left().times(1.5);
        sketch.line(Pen.EDGE, from.minus(end), from.plus(end));
        sketch.line(Pen.EDGE, to.minus(end), to.plus(end));
    }

    private void drawCorner(Angle inside) {
        double half = inside.radians() / 2;
        double sin = StrictMath.sin(half);
        double cos = StrictMath.cos(half);
        // The legs open upwards about the upright line that halves the angle; past 180 degrees they hang down.
        boolean hanging = cos < 0;
        double radius = hanging ? WEDGE_HANGING_MM : WEDGE_MM;
        double down = hanging ? radius + 2 : 4 + StrictMath.max(radius, LEG_MM * cos);
        Spot vertex = new Spot(sketch.widthMm() * 0.46, TITLE_MM + down);
        Spot left = vertex.plus(-LEG_MM * sin, -LEG_MM * cos);
        Spot right = vertex.plus(LEG_MM * sin, -LEG_MM * cos);
        sketch.shape(wedge(vertex, half, radius), null, Tone.PALE);
        sketch.line(Pen.EDGE, left, vertex, right);
        sketch.line(Pen.CENTRE, vertex, vertex.plus(0, hanging ? LEG_MM * -cos : -radius + 7));
        String text = f.text(DrawingMessage.TEMPLATE_INSIDE.of(inside.degrees()));
        Spot above = vertex.plus(0, hanging ? -5 : -radius + 4);
        sketch.label(
                text,
                above,
                TextSize.NAME,
                TypeFace.BOLD,
                Tone.BLACK,
                List.of(new DrawingBuilder.Place(above, Mark.Anchor.MIDDLE)),
                0);
        String face = f.text(DrawingMessage.TEMPLATE_WALL_FACE.of());
        sketch.label(face, left.towards(vertex, 0.3), TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
        sketch.label(face, right.towards(vertex, 0.3), TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
    }

    private static List<Spot> wedge(Spot vertex, double half, double radius) {
        List<Spot> spots = new ArrayList<>();
        spots.add(vertex);
        for (int i = 0; i <= 24; i++) {
            double a = -half + 2 * half * i / 24;
            spots.add(vertex.plus(radius * StrictMath.sin(a), -radius * StrictMath.cos(a)));
        }
        return spots;
    }

    private void drawSetting(Angle tilt) {
        Spot foot = new Spot(6, bottomMm - BELOW_MM + 1);
        double sin = StrictMath.sin(tilt.radians());
        double cos = StrictMath.cos(tilt.radians());
        Spot top = foot.plus(LEG_MM * sin, -LEG_MM * cos);
        Spot square = foot.plus(0, -LEG_MM);
        Spot base = foot.plus(LEG_MM, 0);
        sketch.shape(List.of(foot, top, square), null, Tone.PALE);
        sketch.line(Pen.HIDDEN, foot, square);
        sketch.line(Pen.EDGE, foot, base);
        sketch.line(Pen.EDGE, foot, top);
        sketch.text(
                f.text(DrawingMessage.TEMPLATE_EDGE.of()),
                base.plus(0, 4),
                TextSize.NORMAL,
                Mark.Anchor.END,
                TypeFace.REGULAR);
        sketch.text(
                f.text(DrawingMessage.TEMPLATE_SQUARE.of()),
                square.plus(-1, -1.5),
                TextSize.NORMAL,
                Mark.Anchor.START,
                TypeFace.REGULAR);
        sketch.text(
                f.text(DrawingMessage.TEMPLATE_CUT.of()),
                top.plus(2, 1),
                TextSize.NORMAL,
                Mark.Anchor.START,
                TypeFace.REGULAR);
    }
}
