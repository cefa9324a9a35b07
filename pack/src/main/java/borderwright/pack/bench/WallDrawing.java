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
import java.util.TreeMap;

/**
 * One wall or divider as it lies on the bench: boards, uprights under them, ties and dividers behind, screws as dots; running
 * distances below from the end that the tape hooks on, heights at the left, those of ties at the right.
 */
final class WallDrawing {
    private static final double SIDE_MM = 27;
    private static final double RIGHT_MM = 21;
    private static final double HEAD_MM = 2;
    private static final double NAMES_MM = 16;
    private static final double MOST_HIGH_MM = 44;
    private static final double FIRST_ROW_MM = 6;
    private static final double ROW_MM = 26;
    /** Paper that a running figure takes up along the wall. */
    private static final double PITCH_MM = 3.6;
    /** A wall is drawn no smaller than this: a batten of 47 mm is then a millimetre wide. */
    private static final double MOST_SCALE = 47;
    /** Longer than this many times its height, a wall takes the whole width. */
    private static final double MOST_NARROW = 2.6;

    private static final double DOT_MM = 0.55;
    /** Distances nearer than this are written once. */
    private static final double SAME_MM = 0.5;

    private static final int LABEL_PLACES = 24;

    private final Stretch stretch;
    private final WallBench wall;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final Scale scale;
    private final Spot zero;

    private WallDrawing(Stretch stretch, PrintedFigures f, DrawingBuilder sketch, Scale scale, Spot zero) {
        this.stretch = stretch;
        this.wall = stretch.wall();
        this.f = f;
        this.sketch = sketch;
        this.scale = scale;
        this.zero = zero;
    }

    /** Whether a wall is drawn in half the width of a page. */
    static boolean isNarrow(WallBench wall) {
        return reach(wall).lengthMm() < MOST_NARROW * heights(wall).lengthMm();
    }

    /** At the largest scale that fits the width; a long wall with many figures in stretches. */
    static List<Drawing> draw(WallBench wall, PrintedFigures f, double widthMm) {
        Span reach = reach(wall);
        double room = widthMm - SIDE_MM - RIGHT_MM;
        int figures =
                StrictMath.max(2 * wall.parts().uprights().size(), others(wall).size());
        int count = (int)
                StrictMath.ceil(StrictMath.max(figures * PITCH_MM / room, reach.lengthMm() / (room * MOST_SCALE)));
        Span up = heights(wall);
        List<Stretch> stretches = count < 2 ? List.of(Stretch.whole(wall, reach)) : Stretch.of(wall, reach, count);
        double longest =
                stretches.stream().mapToDouble(s -> s.reach().lengthMm()).max().orElseThrow();
        double ratio = StrictMath.ceil(StrictMath.max(longest / room, up.lengthMm() / MOST_HIGH_MM));
        // No scale rule is laid on it, every place being written: so it is as large as the page allows.
        Scale scale = new Scale(ratio, "1:" + (long) ratio);
        return stretches.stream()
                .map(stretch -> draw(stretch, f, widthMm, scale, up))
                .toList();
    }

    private static Drawing draw(Stretch stretch, PrintedFigures f, double widthMm, Scale scale, Span up) {
        WallBench wall = stretch.wall();
        Span along = stretch.reach();
        boolean second = !others(wall).isEmpty();
        double height = HEAD_MM + NAMES_MM + scale.paper(up.lengthMm()) + FIRST_ROW_MM + ROW_MM * (second ? 2 : 1);
        DrawingBuilder sketch = new DrawingBuilder(widthMm, height);
        double left = SIDE_MM + StrictMath.max(0, (widthMm - SIDE_MM - RIGHT_MM - scale.paper(along.lengthMm())) / 2);
        Spot zero = new Spot(left - scale.paper(along.fromMm()), HEAD_MM + NAMES_MM + scale.paper(up.toMm()));
        WallDrawing drawing = new WallDrawing(stretch, f, sketch, scale, zero);
        drawing.everything();
        String title = (wall.kind() == WallBench.Kind.WALL ? "Side " : "Divider no. ") + wall.mark() + " of "
                + wall.box() + ", "
                + (wall.kind() == WallBench.Kind.WALL ? "outside face" : "marked face") + " up"
                + (stretch.of() > 1 ? ", part " + stretch.number() + " of " + stretch.of() : "");
        return sketch.finish(title + ", with running distances from its left end, scale " + scale.words());
    }

    private static Span reach(WallBench wall) {
        double from = wall.faceSpan().fromMm();
        double to = wall.faceSpan().toMm();
        for (BenchCap cap : wall.parts().caps()) {
            from = StrictMath.min(from, cap.outer().fromMm());
            to = StrictMath.max(to, cap.outer().toMm());
        }
        for (BenchUpright upright : wall.parts().uprights()) {
            from = StrictMath.min(from, upright.face().fromMm());
            to = StrictMath.max(to, upright.face().toMm());
        }
        return new Span(from, to);
    }

    private static Span heights(WallBench wall) {
        double low = 0;
        double high = wall.heightMm();
        for (BenchUpright upright : wall.parts().uprights()) {
            low = StrictMath.min(low, upright.height().fromMm());
            high = StrictMath.max(high, upright.height().toMm());
        }
        for (BenchCap cap : wall.parts().caps()) {
            high = StrictMath.max(high, cap.height().toMm());
        }
        return new Span(low, high);
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
        names();
    }

    private void upright(BenchUpright upright) {
        boolean carried = upright.place() != BenchUpright.Place.NEIGHBOURS;
        sketch.shape(rectangle(upright.face(), upright.height()), carried ? Pen.HIDDEN : Pen.HAIR, null);
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

    /** Uprights above the wall with their number of screws, boards on themselves, ties and dividers beside them. */
    private void names() {
        double top = at(0, heights(wall).toMm()).y();
        for (BenchUpright upright : wall.parts().uprights()) {
            int screws = wall.fixings().stream()
                    .filter(line -> line.through().isEmpty() && line.into().equals(upright.label()))
                    .filter(line -> line.hold() != Box.Hold.LAP)
                    .mapToInt(FixingLine::count)
                    .sum();
            double x = at(upright.face().middleMm(), 0).x();
            sketch.labelIfRoom(
                    screws + " screws",
                    TextSize.NORMAL,
                    Tone.BLACK,
                    List.of(new DrawingBuilder.Place(new Spot(x, top - 1.4), Mark.Anchor.MIDDLE)));
            List<DrawingBuilder.Place> places = new ArrayList<>();
            for (int row = 0; row < 3; row++) {
                places.add(new DrawingBuilder.Place(new Spot(x, top - 5.0 - 4.2 * row), Mark.Anchor.MIDDLE));
            }
            sketch.label(
                    upright.label(),
                    at(upright.face().middleMm(), upright.height().toMm()),
                    TextSize.NAME,
                    TypeFace.BOLD,
                    Tone.BLACK,
                    places,
                    0);
        }
        for (BenchBoard board : wall.parts().boards()) {
            boardName(board);
        }
        for (BenchCrosspiece cross : wall.parts().crosspieces()) {
            crossName(cross);
        }
    }

    /** Beside a tie, or the lowest board of a divider, on the wall. */
    private void crossName(BenchCrosspiece cross) {
        double y = at(0, cross.height().middleMm()).y() + 0.27 * TextSize.NORMAL.emMm();
        sketch.labelIfRoom(
                cross.label(),
                TextSize.NORMAL,
                Tone.BLACK,
                List.of(
                        new DrawingBuilder.Place(
                                new Spot(at(cross.inner().toMm(), 0).x() + 0.8, y), Mark.Anchor.START),
                        new DrawingBuilder.Place(
                                new Spot(at(cross.inner().fromMm(), 0).x() - 0.8, y), Mark.Anchor.END)));
    }

    private void boardName(BenchBoard board) {
        double y = at(0, board.height().middleMm()).y() + 0.27 * TextSize.NORMAL.emMm();
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (int i = 1; i < LABEL_PLACES; i++) {
            double share = 0.5 + (i % 2 == 0 ? 1.0 : -1.0) * (i / 2) / LABEL_PLACES;
            double x = board.face().fromMm() + share * board.face().lengthMm();
            places.add(new DrawingBuilder.Place(new Spot(at(x, 0).x(), y), Mark.Anchor.MIDDLE));
        }
        sketch.labelIfRoom(board.label(), TextSize.NORMAL, Tone.BLACK, places);
    }

    /** First both edges of every upright; in a second row ties, dividers, joints and the right end. */
    private void running() {
        TreeMap<Double, String> first = new TreeMap<>();
        for (BenchUpright upright : wall.parts().uprights()) {
            put(first, upright.face().fromMm());
            put(first, upright.face().toMm());
        }
        if (others(wall).isEmpty() && stretch.isLast()) {
            put(first, wall.faceSpan().toMm());
        }
        row(first, 0, "uprights");
        TreeMap<Double, String> second = new TreeMap<>();
        others(wall).stream()
                .filter(x -> stretch.isLast() || x < stretch.reach().toMm() - SAME_MM)
                .forEach(x -> put(second, x));
        if (!second.isEmpty()) {
            row(second, ROW_MM, "joints, ties, end");
        }
    }

    private static List<Double> others(WallBench wall) {
        List<Double> all = new ArrayList<>(wall.parts().joints());
        for (BenchCrosspiece cross : wall.parts().crosspieces()) {
            all.add(cross.inner().fromMm());
            all.add(cross.inner().toMm());
        }
        if (!all.isEmpty()) {
            all.add(wall.faceSpan().toMm());
        }
        return all;
    }

    private void put(TreeMap<Double, String> row, double x) {
        Double near = row.floorKey(x + SAME_MM);
        if (x > SAME_MM && (near == null || near < x - SAME_MM)) {
            row.put(x, f.length(x));
        }
    }

    /** A row that begins some way below the wall, so that its lines do not run through the figures of the row above. */
    private void row(TreeMap<Double, String> row, double below, String caption) {
        double y = at(0, heights(wall).fromMm()).y() + below;
        List<Spot> spots = new ArrayList<>();
        double start = stretch.isFirst() ? 0 : stretch.reach().fromMm();
        spots.add(new Spot(at(start, 0).x(), y));
        row.keySet().forEach(x -> spots.add(new Spot(at(x, 0).x(), y)));
        if (spots.size() > 1) {
            sketch.text(
                    caption, new Spot(0, y + FIRST_ROW_MM + 1), TextSize.NORMAL, Mark.Anchor.START, TypeFace.REGULAR);
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
        wall.parts().boards().forEach(board -> put(tops, board.height().toMm()));
        wall.parts().caps().forEach(cap -> put(tops, cap.height().toMm()));
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
                put(edges, cross.height().fromMm());
                put(edges, cross.height().toMm());
            }
        }
        wall.parts().uprights().forEach(upright -> put(edges, upright.height().toMm()));
        double right = stretch.reach().toMm();
        List<Spot> spots = new ArrayList<>();
        spots.add(at(right, 0));
        edges.keySet().forEach(up -> spots.add(at(right, up)));
        if (spots.size() > 1) {
            Dimension.running(sketch, spots, List.copyOf(edges.values()), -5, TextSize.NAME);
        }
    }
}
