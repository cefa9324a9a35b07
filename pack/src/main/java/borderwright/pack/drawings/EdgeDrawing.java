package borderwright.pack.drawings;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.survey.Outline;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Hatch;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.List;

/** The border's edges, each drawn as what stands along it. */
final class EdgeDrawing {
    private static final double BAND_MM = 2.2;

    private EdgeDrawing() {}

    static void draw(DrawingBuilder sketch, View view, Outline outline, PrintedFigures f) {
        for (int i = 0; i < outline.ring().size(); i++) {
            List<Spot> line = outline.placesAlong(i).stream().map(view::at).toList();
            edge(sketch, line, outline.edges().get(i).kind(), f);
        }
    }

    private static void edge(DrawingBuilder sketch, List<Spot> line, EdgeKind kind, PrintedFigures f) {
        switch (kind) {
            case HOUSE, WALL -> {
                band(sketch, line);
                sketch.line(Pen.HEAVY, line);
            }
            case FENCE -> {
                sketch.line(Pen.BOLD, line);
                posts(sketch, line);
            }
            case HEDGE -> {
                band(sketch, line);
                sketch.line(Pen.HIDDEN, line);
            }
            case PAVING -> sketch.line(Pen.BOLD, line);
            case LAWN -> sketch.line(Pen.EDGE, line);
            case OPEN -> sketch.line(Pen.HIDDEN, line);
        }
        if (kind != EdgeKind.OPEN) {
            name(sketch, line, kind, f);
        }
    }

    /** A hatched band on the outside: the right hand going round. */
    private static void band(DrawingBuilder sketch, List<Spot> line) {
        List<Spot> shape = new ArrayList<>(line);
        Spot out = outwards(line.get(0), line.get(line.size() - 1)).times(BAND_MM);
        for (int i = line.size() - 1; i >= 0; i--) {
            shape.add(line.get(i).plus(out));
        }
        sketch.hatch(shape, Hatch.WASTE);
    }

    private static Spot outwards(Spot from, Spot to) {
        return to.minus(from).unit().left().times(-1);
    }

    private static void posts(DrawingBuilder sketch, List<Spot> line) {
        for (int i = 0; i + 1 < line.size(); i++) {
            Spot a = line.get(i);
            Spot b = line.get(i + 1);
            int parts = StrictMath.max(1, (int) StrictMath.round(a.distance(b) / 12));
            for (int k = 0; k <= parts; k++) {
                Spot out = outwards(a, b);
                Spot along = b.minus(a).unit().times(0.5);
                Spot p = a.towards(b, (double) k / parts);
                sketch.shape(
                        List.of(
                                p.minus(along),
                                p.plus(along),
                                p.plus(along).plus(out),
                                p.minus(along).plus(out)),
                        null,
                        Tone.BLACK);
            }
        }
    }

    private static void name(DrawingBuilder sketch, List<Spot> line, EdgeKind kind, PrintedFigures f) {
        Spot a = line.get(0);
        Spot b = line.get(line.size() - 1);
        if (a.distance(b) < 14) {
            return;
        }
        Spot out = outwards(a, b);
        Spot along = b.minus(a).unit();
        boolean flip = along.x() < -1e-9 || (StrictMath.abs(along.x()) < 1e-9 && along.y() > 0);
        Spot reading = flip ? along.times(-1) : along;
        double turn = StrictMath.toDegrees(StrictMath.atan2(-reading.y(), reading.x()));
        double clear = kind == EdgeKind.FENCE ? 1.6 : BAND_MM + 0.6;
        // Outside is above the text's baseline or below it, by the way it reads.
        double drop = reading.left().dot(out) > 0 ? 0.25 * TextSize.NORMAL.emMm() : 0.8 * TextSize.NORMAL.emMm();
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
            Spot on = line.size() == 2 ? a.towards(b, share) : line.get((int) (share * (line.size() - 1)));
            places.add(new DrawingBuilder.Place(on.plus(out.times(clear + drop)), Mark.Anchor.MIDDLE));
        }
        sketch.label(
                f.text(PartWords.edge(kind)),
                a.towards(b, 0.5),
                TextSize.NORMAL,
                TypeFace.REGULAR,
                Tone.BLACK,
                places,
                turn);
    }
}
