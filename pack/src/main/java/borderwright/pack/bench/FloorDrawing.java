package borderwright.pack.bench;

import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.FloorBench;
import borderwright.engine.assembly.FloorStrip;
import borderwright.engine.assembly.Span;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Dimension;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Hatch;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The floor of a planter from above: slats, bearers and legs under them, screws as dots; running distances of bearers below,
 * of slats at the left.
 */
final class FloorDrawing {
    private static final double SIDE_MM = 31;
    private static final double HEAD_MM = 12;
    private static final double BELOW_MM = 31;
    private static final double MOST_HIGH_MM = 78;
    private static final double DOT_MM = 0.5;

    private final FloorBench floor;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final Scale scale;
    private final Spot zero;

    private FloorDrawing(FloorBench floor, PrintedFigures f, DrawingBuilder sketch, Scale scale, Spot zero) {
        this.floor = floor;
        this.f = f;
        this.sketch = sketch;
        this.scale = scale;
        this.zero = zero;
    }

    static Drawing draw(FloorBench floor, PrintedFigures f, double widthMm) {
        Span along = new Span(0, 0);
        Span across = new Span(0, 0);
        for (FloorStrip strip : floor.strips()) {
            boolean slat = strip.role() == Role.SLAT;
            along = hull(along, slat ? strip.overall() : strip.edges());
            across = hull(across, slat ? strip.edges() : strip.overall());
        }
        Scale scale =
                Scale.fitting(f.units(), along.lengthMm(), across.lengthMm(), widthMm - 2 * SIDE_MM, MOST_HIGH_MM);
        DrawingBuilder sketch = new DrawingBuilder(widthMm, HEAD_MM + scale.paper(across.lengthMm()) + BELOW_MM);
        double left = StrictMath.max(SIDE_MM, (widthMm - scale.paper(along.lengthMm())) / 2);
        Spot zero = new Spot(left - scale.paper(along.fromMm()), HEAD_MM + scale.paper(across.toMm()));
        FloorDrawing drawing = new FloorDrawing(floor, f, sketch, scale, zero);
        drawing.everything(along, across);
        return sketch.finish(f.text(BenchMessage.FLOOR_FROM_ABOVE.of(floor.planter(), scale.words())));
    }

    private static Span hull(Span a, Span b) {
        return new Span(StrictMath.min(a.fromMm(), b.fromMm()), StrictMath.max(a.toMm(), b.toMm()));
    }

    private Spot at(double x, double across) {
        return zero.plus(scale.paper(x), -scale.paper(across));
    }

    private void everything(Span along, Span across) {
        for (FloorStrip strip : floor.strips()) {
            if (strip.role() == Role.SLAT) {
                sketch.shape(shape(strip), Pen.EDGE, Tone.WHITE);
                strip.notches().forEach(notch -> sketch.hatch(shape(strip, notch), Hatch.WASTE));
            }
        }
        for (FloorStrip strip : floor.strips()) {
            if (strip.role() != Role.SLAT) {
                sketch.shape(shape(strip), strip.role() == Role.LEG ? Pen.FINE : Pen.HIDDEN, null);
            }
        }
        for (FixingLine line : floor.fixings()) {
            for (FixingLine.Mark mark : line.marks()) {
                sketch.dot(at(mark.xMm(), mark.upMm()), DOT_MM, null, Tone.BLACK);
            }
        }
        for (FloorStrip strip : floor.strips()) {
            name(strip);
        }
        TreeMap<Double, String> bearers = new TreeMap<>();
        TreeMap<Double, String> slats = new TreeMap<>();
        for (FloorStrip strip : floor.strips()) {
            // Of a slat the nearer edge: there is no room for both, and its width is that of the board.
            if (strip.role() == Role.SLAT) {
                RunningFigures.put(f, slats, strip.edges().fromMm());
            } else if (strip.role() == Role.BEARER) {
                RunningFigures.put(f, bearers, strip.edges().fromMm());
                RunningFigures.put(f, bearers, strip.edges().toMm());
            }
        }
        running(bearers, at(0, across.fromMm()), true);
        running(slats, at(along.fromMm(), 0), false);
    }

    private List<Spot> shape(FloorStrip strip, FloorStrip.Notch notch) {
        boolean isNear = notch.edge() == FloorStrip.Edge.NEAR;
        double edge = isNear ? strip.edges().fromMm() : strip.edges().toMm();
        double inner = isNear ? edge + notch.depthMm() : edge - notch.depthMm();
        double from = notch.along().fromMm();
        double to = notch.along().toMm();
        return List.of(at(from, edge), at(to, edge), at(to, inner), at(from, inner));
    }

    /** The corners of a strip, before its notches are taken out. */
    private List<Spot> shape(FloorStrip strip) {
        Span low = strip.low();
        Span high = strip.high();
        double near = strip.edges().fromMm();
        double far = strip.edges().toMm();
        return strip.role() == Role.SLAT
                ? List.of(at(low.fromMm(), near), at(low.toMm(), near), at(high.toMm(), far), at(high.fromMm(), far))
                : List.of(at(near, low.fromMm()), at(near, low.toMm()), at(far, high.toMm()), at(far, high.fromMm()));
    }

    private void name(FloorStrip strip) {
        if (strip.role() == Role.SLAT) {
            double y = at(0, strip.edges().middleMm()).y() + 0.27 * TextSize.NORMAL.emMm();
            List<DrawingBuilder.Place> places = new ArrayList<>();
            for (int i = 1; i < 16; i++) {
                int step = i / 2;
                double share = 0.5 + (i % 2 == 0 ? step : -step) / 16.0;
                double x = strip.low().fromMm() + share * strip.low().lengthMm();
                places.add(new DrawingBuilder.Place(new Spot(at(x, 0).x(), y), Mark.Anchor.MIDDLE));
            }
            sketch.labelIfRoom(strip.label(), TextSize.NORMAL, Tone.BLACK, places);
        } else if (strip.role() == Role.BEARER) {
            Spot top = at(strip.edges().middleMm(), strip.overall().toMm());
            sketch.label(
                    strip.label(),
                    top,
                    TextSize.NORMAL,
                    TypeFace.BOLD,
                    Tone.BLACK,
                    List.of(
                            new DrawingBuilder.Place(top.plus(0, -1.5), Mark.Anchor.MIDDLE),
                            new DrawingBuilder.Place(top.plus(0, -4.8), Mark.Anchor.MIDDLE)),
                    0);
        }
    }

    private void running(NavigableMap<Double, String> row, Spot from, boolean along) {
        List<Spot> spots = new ArrayList<>();
        spots.add(from);
        for (double x : row.keySet()) {
            spots.add(along ? new Spot(at(x, 0).x(), from.y()) : new Spot(from.x(), at(0, x).y()));
        }
        if (spots.size() > 1) {
            Dimension.running(sketch, spots, List.copyOf(row.values()), along ? -5 : 5, TextSize.NAME);
        }
    }
}
