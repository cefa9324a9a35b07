package borderwright.pack.paper;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds each label a place where it covers no other text and as few strokes as may be.
 *
 * <p>A label tries its own places first, then rings of places round its target, nearest first. A place that would cover
 * another text, leave the sheet, or send its leader line through a text is never taken. Among the rest the one that
 * crosses the fewest strokes wins, each ring outwards costing as much as a crossed stroke. A label that still crosses a
 * stroke gets a white ground.
 */
final class LabelPlacer {
    private static final double FIRST_RING_MM = 1.4;
    private static final double RING_STEP_MM = 1.6;
    private static final int RINGS = 22;
    private static final int WAYS = 16;
    private static final double STROKE_COST = 2;
    private static final double RING_COST = 0.55;
    /** A leader shorter than this says nothing that nearness does not. */
    private static final double SHORTEST_LEADER_MM = 2.2;

    private final double widthMm;
    private final double heightMm;
    private final double marginMm;
    private final List<DrawingBuilder.Segment> segments;
    private final List<TextBox> taken = new ArrayList<>();
    private final List<DrawingBuilder.Segment> leaders = new ArrayList<>();

    /**
     * Prepares the search.
     *
     * @param marginMm kept free round each label
     * @param segments strokes to keep clear of
     * @param fixed texts that stand already
     */
    LabelPlacer(
            double widthMm,
            double heightMm,
            double marginMm,
            List<DrawingBuilder.Segment> segments,
            List<Mark.Text> fixed) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.marginMm = marginMm;
        this.segments = segments;
        fixed.forEach(t -> taken.add(t.box()));
    }

    /**
     * A text in its place.
     *
     * @param text the text
     * @param under what is drawn below it: a white ground, a leader line
     */
    record Placed(Mark.Text text, List<Mark> under) {}

    private record Choice(
            Mark.Text text, TextBox box, DrawingBuilder.@Nullable Segment leader, int crossed, double cost) {}

    @Nullable
    Placed place(DrawingBuilder.Wanted label) {
        Choice best = best(label);
        if (best == null) {
            return null;
        }
        taken.add(best.box);
        List<Mark> under = new ArrayList<>();
        if (best.crossed > 0) {
            TextBox box = best.box.grown(0.15);
            under.add(Mark.Path.polygon(
                    List.of(box.corner(0), box.corner(1), box.corner(2), box.corner(3)), null, Tone.WHITE));
        }
        if (best.leader != null) {
            leaders.add(best.leader);
            under.add(Mark.Path.line(List.of(best.leader.from(), best.leader.to()), Pen.FINE));
        }
        return new Placed(best.text, under);
    }

    private @Nullable Choice best(DrawingBuilder.Wanted label) {
        List<DrawingBuilder.Segment> near = near(label);
        Choice best = null;
        double rank = 0;
        for (DrawingBuilder.Place place : label.places()) {
            best = better(best, choice(label, place, near, rank, false));
            rank += RING_COST / 4;
        }
        Spot target = label.target();
        for (int ring = 0; target != null && ring < RINGS; ring++) {
            double cost = rank + ring * RING_COST;
            if (best != null && best.cost <= cost) {
                return best;
            }
            for (int way = 0; way < WAYS; way++) {
                DrawingBuilder.Place place = around(label, target, FIRST_RING_MM + ring * RING_STEP_MM, way);
                best = better(best, choice(label, place, near, cost + 0.001 * way, true));
            }
        }
        return best;
    }

    private static @Nullable Choice better(@Nullable Choice a, @Nullable Choice b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return b.cost < a.cost ? b : a;
    }

    /** The place whose text box touches a circle round the target from outside, in one of sixteen directions. */
    private static DrawingBuilder.Place around(DrawingBuilder.Wanted label, Spot target, double radiusMm, int way) {
        // East, west, north, south first: level labels read best beside or above what they name.
        int[] order = {0, 8, 4, 12, 2, 6, 14, 10, 1, 7, 15, 9, 3, 5, 13, 11};
        double angle = StrictMath.PI / 8 * order[way];
        Spot direction = new Spot(StrictMath.cos(angle), -StrictMath.sin(angle));
        TextBox atOrigin = text(label, new DrawingBuilder.Place(new Spot(0, 0), Mark.Anchor.MIDDLE))
                .box();
        double halfW = label.turnDeg() == 0 ? atOrigin.halfWidthMm() : atOrigin.halfHeightMm();
        double halfH = label.turnDeg() == 0 ? atOrigin.halfHeightMm() : atOrigin.halfWidthMm();
        double x = sideways(direction.x()) * halfW;
        double y = sideways(direction.y()) * halfH;
        Spot middle = target.plus(direction.times(radiusMm)).plus(x, y);
        return new DrawingBuilder.Place(middle.minus(atOrigin.middle()), Mark.Anchor.MIDDLE);
    }

    private static double sideways(double component) {
        return StrictMath.abs(component) < 0.3 ? component / 0.3 : StrictMath.signum(component);
    }

    private @Nullable Choice choice(
            DrawingBuilder.Wanted label,
            DrawingBuilder.Place place,
            List<DrawingBuilder.Segment> near,
            double cost,
            boolean roaming) {
        Mark.Text text = text(label, place);
        TextBox box = text.box();
        TextBox room = box.grown(marginMm);
        if (!room.inside(widthMm, heightMm) || coversText(room)) {
            return null;
        }
        if (leaders.stream().anyMatch(l -> room.crosses(l.from(), l.to()))) {
            return null;
        }
        DrawingBuilder.Segment leader = roaming ? leader(label, box) : null;
        if (leader != null && taken.stream().anyMatch(t -> t.crosses(leader.from(), leader.to()))) {
            return null;
        }
        int crossed = 0;
        for (DrawingBuilder.Segment segment : near) {
            crossed += room.crosses(segment.from(), segment.to()) ? 1 : 0;
        }
        return new Choice(text, box, leader, crossed, cost + crossed * STROKE_COST);
    }

    private boolean coversText(TextBox room) {
        for (TextBox box : taken) {
            if (room.overlaps(box)) {
                return true;
            }
        }
        return false;
    }

    private static DrawingBuilder.@Nullable Segment leader(DrawingBuilder.Wanted label, TextBox box) {
        Spot target = label.target();
        if (target == null) {
            return null;
        }
        Spot end = nearest(box, target);
        return end.distance(target) < SHORTEST_LEADER_MM ? null : new DrawingBuilder.Segment(target, end);
    }

    /** The place on the edge of a level or upright box that is nearest to a spot. */
    private static Spot nearest(TextBox box, Spot to) {
        boolean upright = StrictMath.abs(box.along().x()) < 1e-9;
        double halfW = upright ? box.halfHeightMm() : box.halfWidthMm();
        double halfH = upright ? box.halfWidthMm() : box.halfHeightMm();
        double x = StrictMath.max(
                box.middle().x() - halfW, StrictMath.min(box.middle().x() + halfW, to.x()));
        double y = StrictMath.max(
                box.middle().y() - halfH, StrictMath.min(box.middle().y() + halfH, to.y()));
        return new Spot(x, y);
    }

    private static Mark.Text text(DrawingBuilder.Wanted label, DrawingBuilder.Place place) {
        return new Mark.Text(
                label.text(), place.at(), label.size(), place.anchor(), label.turnDeg(), label.face(), label.tone());
    }

    /** Strokes that a label could ever reach. */
    private List<DrawingBuilder.Segment> near(DrawingBuilder.Wanted label) {
        Spot middle =
                label.target() != null ? label.target() : label.places().get(0).at();
        double reach = FIRST_RING_MM
                + RINGS * RING_STEP_MM
                + 2
                        * text(label, new DrawingBuilder.Place(middle, Mark.Anchor.MIDDLE))
                                .box()
                                .halfWidthMm();
        return segments.stream()
                .filter(s -> StrictMath.min(s.from().x(), s.to().x()) < middle.x() + reach
                        && StrictMath.max(s.from().x(), s.to().x()) > middle.x() - reach
                        && StrictMath.min(s.from().y(), s.to().y()) < middle.y() + reach
                        && StrictMath.max(s.from().y(), s.to().y()) > middle.y() - reach)
                .toList();
    }
}
