package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.message.Message;
import borderwright.engine.survey.Outline;
import borderwright.pack.figures.NameRanges;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Front sides of boxes that lie on one straight line: what a person sees, and tapes, as one front.
 *
 * @param from a place on the line, mm
 * @param along its direction, left to right as seen from outside, length 1
 * @param sides the sides on it, left to right
 * @param left how many more like these stand to the right of them
 * @param like how many other fronts look like it
 */
record FrontLine(Point from, Point along, List<Side> sides, int left, int like) {
    /** Sides no further apart than this, across the line, are one front. */
    private static final double SAME_LINE_MM = 2;

    private static final double SAME_DIRECTION = 0.002;

    private static final double SAME_HEIGHT_MM = 0.05;
    /** A front and the edge behind it are parallel to within this cosine, some 25 degrees: planters along a curve turn. */
    private static final double BEHIND = 0.9;

    private static final int MOST_ALIKE = 12;
    private static final int SHOWN = 4;

    FrontLine {
        sides = List.copyOf(sides);
    }

    /** One front side of one box. */
    record Side(Box box, int side) {
        Ring outline() {
            return box.plan().outline();
        }

        Point left() {
            return outline().corner(side);
        }

        Point right() {
            return outline().corner(side + 1);
        }
    }

    /** All fronts of some boxes, in the order of their first boxes. */
    static List<FrontLine> of(List<Box> boxes) {
        List<FrontLine> lines = new ArrayList<>();
        for (Box box : boxes) {
            for (int i = 0; i < box.plan().sides().size(); i++) {
                if (box.plan().sides().get(i).role() == SidePlan.Role.FRONT) {
                    join(lines, new Side(box, i));
                }
            }
        }
        return lines.stream().map(FrontLine::sorted).toList();
    }

    private static void join(List<FrontLine> lines, Side side) {
        Point along = side.outline().direction(side.side());
        for (int i = 0; i < lines.size(); i++) {
            FrontLine line = lines.get(i);
            Point across = side.left().minus(line.from);
            if (StrictMath.abs(line.along.cross(along)) < SAME_DIRECTION
                    && line.along.dot(along) > 0
                    && StrictMath.abs(line.along.cross(across)) < SAME_LINE_MM
                    && line.sides
                            .get(0)
                            .box()
                            .plan()
                            .run()
                            .equals(side.box().plan().run())) {
                List<Side> sides = new ArrayList<>(line.sides);
                sides.add(side);
                lines.set(i, new FrontLine(line.from, line.along, sides, 0, 0));
                return;
            }
        }
        lines.add(new FrontLine(side.left(), along, List.of(side), 0, 0));
    }

    private FrontLine sorted() {
        List<Side> ordered = new ArrayList<>(sides);
        ordered.sort(Comparator.comparingDouble(s -> at(s.left())));
        return new FrontLine(ordered.get(0).left(), along, ordered, 0, 0);
    }

    /** Distance along the line from its left end, mm. */
    double at(Point place) {
        return place.minus(from).dot(along);
    }

    double lengthMm() {
        return sides.stream().mapToDouble(s -> at(s.right())).max().orElseThrow();
    }

    /** Places on the line that a tape is read at: ends of boxes and middles of dividers, left to right. */
    List<Point> stations() {
        List<Point> stations = new ArrayList<>();
        for (Side side : sides) {
            stations.add(side.left());
            for (DividerLine divider : side.box().plan().dividers()) {
                if (divider.fromSide() == side.side()) {
                    stations.add(divider.from());
                } else if (divider.toSide() == side.side()) {
                    stations.add(divider.to());
                }
            }
            stations.add(side.right());
        }
        stations.sort(Comparator.comparingDouble(this::at));
        List<Point> distinct = new ArrayList<>();
        for (Point p : stations) {
            if (distinct.isEmpty() || at(p) - at(distinct.get(distinct.size() - 1)) > 0.5) {
                distinct.add(p);
            }
        }
        return distinct;
    }

    /** Of a long row of like boxes the first few, which show all that there is to see; else the line itself. */
    FrontLine start() {
        double heightMm = sides.get(0).box().builtMm();
        double bedMm = sides.get(0).box().plan().bedMm();
        boolean alike = sides.stream()
                .map(Side::box)
                .allMatch(b -> StrictMath.abs(b.builtMm() - heightMm) < SAME_HEIGHT_MM
                        && StrictMath.abs(b.plan().bedMm() - bedMm) < 1
                        && b.plan().planters().size() == 1);
        return sides.size() <= MOST_ALIKE || !alike
                ? this
                : new FrontLine(from, along, sides.subList(0, SHOWN), sides.size() - SHOWN, like);
    }

    /** That more like these follow, or other fronts like this one; empty when none do. */
    String more(PrintedFigures f) {
        return (left == 0 ? "" : f.text(DrawingMessage.DRAWN_FRONT_GOES_ON.of(Integer.toString(left))))
                + (like == 0 ? "" : f.text(DrawingMessage.DRAWN_FRONTS_ALIKE.of(Integer.toString(like))));
    }

    /** Of many fronts those that look different, each with how many are like it. */
    static List<FrontLine> different(List<FrontLine> lines) {
        Map<String, List<FrontLine>> alike = new LinkedHashMap<>();
        lines.forEach(line ->
                alike.computeIfAbsent(line.look(), k -> new ArrayList<>()).add(line));
        return alike.values().stream()
                .map(same -> {
                    FrontLine first = same.get(0);
                    return new FrontLine(first.from, first.along, first.sides, first.left, same.size() - 1);
                })
                .toList();
    }

    /** What is seen of it: lengths, heights and gaps to the millimetre. */
    private String look() {
        StringBuilder out = new StringBuilder();
        for (Side side : sides) {
            out.append(StrictMath.round(at(side.left()))).append(' ');
            out.append(StrictMath.round(at(side.right()))).append(' ');
            out.append(StrictMath.round(side.box().builtMm())).append('|');
        }
        return out.toString();
    }

    /** What it is a front of: its boxes, the edge behind them, and which side where a box has several fronts. */
    Message title(Outline outline) {
        Side first = sides.get(0);
        long fronts = first.box().plan().sides().stream()
                .filter(side -> side.role() == SidePlan.Role.FRONT)
                .count();
        Optional<String> edge = edgeBehind(outline);
        String side = Character.toString((char) ('a' + first.side()));
        if (fronts > 1) {
            return edge.map(e -> DrawingMessage.DRAWN_FRONT_OF_SIDE_ALONG.of(names(), side, e))
                    .orElseGet(() -> DrawingMessage.DRAWN_FRONT_OF_SIDE.of(names(), side));
        }
        return edge.map(e -> DrawingMessage.DRAWN_FRONT_ALONG.of(names(), e))
                .orElseGet(() -> DrawingMessage.DRAWN_FRONT.of(names()));
    }

    /** The nearest of the border's edges that run behind it; empty where none does. */
    private Optional<String> edgeBehind(Outline outline) {
        Point middle = from.plus(along.times(lengthMm() / 2));
        return IntStream.range(0, outline.ring().size())
                .filter(i -> outline.ring().direction(i).dot(along) < -BEHIND)
                .boxed()
                .min(Comparator.comparingDouble(i -> outline.ring().side(i).distanceMm(middle)))
                .map(outline::edgeName);
    }

    /** Names of the boxes along it. */
    String names() {
        return NameRanges.of(
                sides.stream().map(s -> s.box().plan().name()).distinct().toList());
    }

    /** The highest piece of its boxes above the datum, mm. */
    double highestMm() {
        return sides.stream().mapToDouble(side -> highestMm(side.box())).max().orElseThrow();
    }

    /** The highest piece of a box above the datum, mm. */
    static double highestMm(Box box) {
        return box.pieces().stream().mapToDouble(p -> p.place().topMm()).reduce(box.topMm(), StrictMath::max);
    }

    /** The lowest bed of its boxes, or the foot of posts that are let into the ground below it, mm above the datum. */
    double deepestMm() {
        return sides.stream()
                .map(Side::box)
                .mapToDouble(box -> box.pieces().stream()
                        .mapToDouble(p -> p.place().bottomMm())
                        .reduce(box.plan().bedMm(), StrictMath::min))
                .min()
                .orElseThrow();
    }
}
