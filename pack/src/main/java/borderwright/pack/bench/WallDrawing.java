package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.BenchCap;
import borderwright.engine.assembly.BenchCrosspiece;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.Span;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.message.Message;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Dimension;
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
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One wall or divider as it lies on the bench: boards, uprights under them, ties and dividers behind, screws as dots; running
 * distances below from the end that the tape hooks on, heights at the left, those of ties at the right.
 */
final class WallDrawing {
    private static final double SIDE_MM = 27;
    private static final double RIGHT_MM = 23;
    private static final double HEAD_MM = 0.5;
    private static final double MOST_HIGH_MM = 44;
    /** Beside its text a narrow wall need be no higher. */
    private static final double MOST_HIGH_NARROW_MM = 36;

    private static final double FIRST_ROW_MM = 6;
    private static final double LAST_ROW_MM = 0.6;
    /** A row of running distances beside the longest of its figures: arrow, elbow and the gap to the next row. */
    private static final double BESIDE_FIGURE_MM = 9.6;

    /** A wall is drawn no smaller than this: a batten of 47 mm is then a millimetre wide. */
    private static final double MOST_SCALE = 47;

    private static final double DOT_MM = 0.55;
    /** A distance as near as this to where the drawing is cut is its end. */
    private static final double SAME_MM = 0.5;

    private final Stretch stretch;
    private final WallBench wall;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final Scale scale;
    private final Spot zero;
    private final double rowMm;

    private WallDrawing(
            Stretch stretch, PrintedFigures f, DrawingBuilder sketch, Scale scale, Spot zero, double rowMm) {
        this.stretch = stretch;
        this.wall = stretch.wall();
        this.f = f;
        this.sketch = sketch;
        this.scale = scale;
        this.zero = zero;
        this.rowMm = rowMm;
    }

    /** At the largest scale that fits the width; a long wall with many figures in stretches. */
    static List<Drawing> draw(WallBench wall, PrintedFigures f, double widthMm) {
        Span reach = WallExtent.along(wall);
        double room = widthMm - SIDE_MM - RIGHT_MM;
        int figures = StrictMath.max(RunningFigures.count(edges(wall)), RunningFigures.count(WallExtent.others(wall)));
        int count = (int) StrictMath.ceil(StrictMath.max(
                figures * Dimension.pitchMm(TextSize.NAME) / room, reach.lengthMm() / (room * MOST_SCALE)));
        Span up = WallExtent.up(wall);
        List<Stretch> stretches = count < 2 ? List.of(Stretch.whole(wall, reach)) : Stretch.of(wall, reach, count);
        double longest =
                stretches.stream().mapToDouble(s -> s.reach().lengthMm()).max().orElseThrow();
        double ratio = StrictMath.ceil(StrictMath.max(
                longest / room, up.lengthMm() / (WallExtent.isNarrow(wall) ? MOST_HIGH_NARROW_MM : MOST_HIGH_MM)));
        // No scale rule is laid on it, every place being written: so it is as large as the page allows.
        Scale scale = new Scale(ratio, "1:" + (long) ratio);
        return stretches.stream()
                .map(stretch -> draw(stretch, f, widthMm, scale, up))
                .toList();
    }

    private static Drawing draw(Stretch stretch, PrintedFigures f, double widthMm, Scale scale, Span up) {
        WallBench wall = stretch.wall();
        Span along = stretch.reach();
        boolean second = !WallExtent.others(wall).isEmpty();
        double row = rowMm(wall, f);
        double names = WallNames.highMm(wall);
        double height = HEAD_MM + names + scale.paper(up.lengthMm()) + row * (second ? 2 : 1) + LAST_ROW_MM;
        DrawingBuilder sketch = new DrawingBuilder(widthMm, height);
        double left = SIDE_MM + StrictMath.max(0, (widthMm - SIDE_MM - RIGHT_MM - scale.paper(along.lengthMm())) / 2);
        Spot zero = new Spot(left - scale.paper(along.fromMm()), HEAD_MM + names + scale.paper(up.toMm()));
        WallDrawing drawing = new WallDrawing(stretch, f, sketch, scale, zero, row);
        drawing.everything();
        return sketch.finish(f.text(BenchMessage.WALL_ON_BENCH.of(
                wall.kind(),
                wall.mark(),
                wall.box(),
                stretch.of(),
                Integer.toString(stretch.number()),
                scale.words())));
    }

    /** Both edges of every upright. */
    private static List<Double> edges(WallBench wall) {
        return wall.parts().uprights().stream()
                .flatMap(upright ->
                        Stream.of(upright.face().fromMm(), upright.face().toMm()))
                .toList();
    }

    /** Room for a row of running distances, as long as its longest figure needs. */
    private static double rowMm(WallBench wall, PrintedFigures f) {
        Stream<Double> uprights = edges(wall).stream();
        Stream<Double> others = Stream.concat(
                WallExtent.others(wall).stream(), Stream.of(wall.faceSpan().toMm()));
        double longest = Stream.concat(uprights, others)
                .mapToDouble(x -> TypeFace.REGULAR.widthEm(f.length(x)))
                .max()
                .orElseThrow();
        return BESIDE_FIGURE_MM + longest * TextSize.NAME.emMm();
    }

    private Spot at(double x, double up) {
        return zero.plus(scale.paper(x), -scale.paper(up));
    }

    private List<Spot> rectangle(Span along, Span height) {
        return List.of(
                at(along.fromMm(), height.fromMm()),
                at(along.toMm(), height.fromMm()),
                at(along.toMm(), height.toMm()),
                at(along.fromMm(), height.toMm()));
    }

    private void everything() {
        for (BenchBoard board : wall.parts().boards()) {
            sketch.shape(rectangle(board.face(), board.height()), Pen.BOLD, Tone.WHITE);
        }
        for (BenchCap cap : wall.parts().caps()) {
            sketch.shape(rectangle(cap.outer(), cap.height()), Pen.EDGE, Tone.LIGHT);
        }
        wall.parts().uprights().forEach(this::upright);
        wall.parts().crosspieces().forEach(this::cross);
        wall.fixings().forEach(this::dots);
        // Figures first: names give way to them, as the text below names every piece with its figures.
        running();
        heightsAtLeft();
        heightsOfTies();
        new WallNames(wall, sketch, this::at).all();
    }

    private void upright(BenchUpright upright) {
        Pen pen = switch (upright.place()) {
            case NEIGHBOURS -> Pen.HAIR;
            case NEAR_SIDE -> Pen.EDGE;
            case CARRIED, FAR_SIDE -> Pen.HIDDEN;
        };
        sketch.shape(rectangle(upright.face(), upright.height()), pen, null);
    }

    private void cross(BenchCrosspiece cross) {
        sketch.shape(rectangle(cross.inner(), cross.height()), Pen.FINE, Tone.LIGHT);
    }

    private void dots(FixingLine line) {
        boolean fromOutside = switch (line.hold()) {
            case WALL_TO_UPRIGHT, DIVIDER_TO_UPRIGHT, LAP, CAPPING_TO_WALL -> true;
            default -> false;
        };
        if (line.hold() == Box.Hold.STRAP_TO_UPRIGHT) {
            return;
        }
        for (FixingLine.Mark mark : line.marks()) {
            Spot spot = at(mark.xMm(), mark.upMm());
            sketch.dot(spot, DOT_MM, fromOutside ? null : Pen.FINE, fromOutside ? Tone.BLACK : Tone.WHITE);
        }
    }

    /** First both edges of every upright; in a second row ties, dividers, joints and the right end. */
    private void running() {
        TreeMap<Double, String> first = new TreeMap<>();
        edges(wall).forEach(x -> RunningFigures.put(f, first, x));
        if (WallExtent.others(wall).isEmpty() && stretch.isLast()) {
            RunningFigures.put(f, first, wall.faceSpan().toMm());
        }
        row(first, 0, BenchMessage.ROW_OF_UPRIGHTS.of());
        TreeMap<Double, String> second = new TreeMap<>();
        WallExtent.others(wall).stream()
                .filter(x -> stretch.isLast() || x < stretch.reach().toMm() - SAME_MM)
                .forEach(x -> RunningFigures.put(f, second, x));
        if (!second.isEmpty()) {
            row(second, rowMm, BenchMessage.ROW_OF_OTHERS.of());
        }
    }

    /** A row that begins some way below the wall, so that its lines do not run through the figures of the row above. */
    private void row(NavigableMap<Double, String> row, double below, Message caption) {
        double y = at(0, WallExtent.up(wall).fromMm()).y() + below;
        List<Spot> spots = new ArrayList<>();
        double start = stretch.isFirst() ? 0 : stretch.reach().fromMm();
        spots.add(new Spot(at(start, 0).x(), y));
        row.keySet().forEach(x -> spots.add(new Spot(at(x, 0).x(), y)));
        if (spots.size() > 1) {
            sketch.text(
                    f.text(caption),
                    new Spot(0, y + FIRST_ROW_MM + 1),
                    TextSize.NORMAL,
                    Mark.Anchor.START,
                    TypeFace.REGULAR);
            Dimension.running(
                    sketch,
                    spots,
                    List.copyOf(row.values()),
                    -FIRST_ROW_MM,
                    TextSize.NAME,
                    stretch.isFirst() ? Dimension.Start.ZERO : Dimension.Start.CONTINUED);
        }
    }

    private void heightsAtLeft() {
        TreeMap<Double, String> tops = new TreeMap<>();
        wall.parts()
                .boards()
                .forEach(board -> RunningFigures.put(f, tops, board.height().toMm()));
        wall.parts()
                .caps()
                .forEach(cap -> RunningFigures.put(f, tops, cap.height().toMm()));
        double left = stretch.reach().fromMm();
        List<Spot> spots = new ArrayList<>();
        spots.add(at(left, 0));
        tops.keySet().forEach(up -> spots.add(at(left, up)));
        Dimension.running(sketch, spots, List.copyOf(tops.values()), 5, TextSize.NAME);
    }

    /** Lower and upper edges of ties, and the tops of uprights, at the right. */
    private void heightsOfTies() {
        TreeMap<Double, String> edges = new TreeMap<>();
        for (BenchCrosspiece cross : wall.parts().crosspieces()) {
            if (cross.role() == Role.TIE) {
                RunningFigures.put(f, edges, cross.height().fromMm());
                RunningFigures.put(f, edges, cross.height().toMm());
            }
        }
        wall.parts()
                .uprights()
                .forEach(
                        upright -> RunningFigures.put(f, edges, upright.height().toMm()));
        double right = stretch.reach().toMm();
        List<Spot> spots = new ArrayList<>();
        spots.add(at(right, 0));
        edges.keySet().forEach(up -> spots.add(at(right, up)));
        if (spots.size() > 1) {
            Dimension.running(sketch, spots, List.copyOf(edges.values()), -5, TextSize.NAME);
        }
    }
}
