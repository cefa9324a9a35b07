package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was measured on site. */
@Says("what was measured on site")
public record SurveyNotes(
        @Says(value = "the border's corners in going-round order", example = "A B C D")
        Names corners,

        @Says(
                value = "which way the corners go round, seen from above",
                otherwise = "anticlockwise: walking from corner to corner, the border is on the left")
        @Nullable
        Round round,

        @Says(
                value =
                        "for a border that is a strip along a wall: its depth, square off the line through the corners; the corners are then the line, not a closed ring",
                example = "620 mm",
                atLeast = 50)
        @Nullable
        Length strip,

        @Says("what lies along each edge") List<EdgeNote> edges,
        @Says("the measures, in any order") List<Measure> measures,

        @Says(
                value = "the chance of calling a sound set of measures wrong",
                otherwise = "0.05",
                atLeast = 0.0001,
                atMost = 0.5)
        @Nullable
        Double risk) {
    public SurveyNotes {
        edges = List.copyOf(edges);
        measures = List.copyOf(measures);
    }

    /** Which way round the corners are named. */
    public enum Round {
        @Says("anticlockwise: walking from corner to corner, the border is on the left")
        ANTICLOCKWISE,
        @Says("clockwise: walking from corner to corner, the border is on the right")
        CLOCKWISE
    }

    /** What lies along one edge. */
    @Says("what lies along one edge of the border")
    public record EdgeNote(
            @Says(value = "the edge's two corners", example = "A B")
            Names edge,

            @Says("what lies along it") EdgeKind kind,

            @Says(
                    value = "gap to leave between it and the planters",
                    example = "20 mm",
                    otherwise = "by its kind",
                    atLeast = 0)
            @Nullable
            Length gap,

            @Says(
                    value = "height of a house's damp-proof course above the datum; below it is negative",
                    example = "150 mm")
            @Nullable
            Length dampCourse,

            @Says(
                    value = "how high it stands above the ground, for the shade it throws",
                    example = "1.8 m",
                    otherwise = "house 5 m, wall and fence 1.8 m, hedge 1.5 m, others nothing",
                    atLeast = 0)
            @Nullable
            Length height) {
        /** Height above the ground, mm (habits: common practice, no source). */
        public double heightMm() {
            if (height != null) {
                return height.mm();
            }
            return switch (kind) {
                case HOUSE -> 5000;
                case WALL, FENCE -> 1800;
                case HEDGE -> 1500;
                case PAVING, LAWN, OPEN -> 0;
            };
        }
    }
}
