package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was measured on site. */
@Described("what was measured on site")
public record GivenSurvey(
        @Described(value = "the border's corners in going-round order", example = "A B C D")
        Names corners,

        @Described(
                value = "which way the corners go round, seen from above",
                otherwise = "anticlockwise: walking from corner to corner, the border is on the left")
        @Nullable
        RingDirection goingRound,

        @Described(
                value =
                        "for a border that is a strip along a wall: its width, square off the line through the corners; the corners are then the line, not a closed ring",
                example = "620 mm",
                atLeast = 50)
        @Nullable
        Length stripWidth,

        @Described("what lies along each edge") List<GivenEdge> edges,
        @Described("the measures, in any order") List<GivenMeasure> measures,

        @Described(
                value = "the chance of a false alarm: of calling a sound set of measures wrong",
                otherwise = "0.05",
                atLeast = 0.0001,
                atMost = 0.5)
        @Nullable
        Double falseAlarm) {
    public GivenSurvey {
        edges = List.copyOf(edges);
        measures = List.copyOf(measures);
    }

    /** What lies along one edge. */
    @Described("what lies along one edge of the border")
    public record GivenEdge(
            @Described(value = "the edge's two corners", example = "A B")
            Names edge,

            @Described("what lies along it") EdgeKind kind,

            @Described(
                    value = "gap to leave between it and the planters",
                    example = "20 mm",
                    otherwise = "by its kind",
                    atLeast = 0)
            @Nullable
            Length gap,

            @Described(
                    value = "height of a house's damp-proof course above the datum; below it is negative",
                    example = "150 mm")
            @Nullable
            Length dampCourse,

            @Described(
                    value = "how high it stands above the ground, for the shade it throws",
                    example = "1.8 m",
                    otherwise = "house 5 m, wall and fence 1.8 m, hedge 1.5 m, others nothing",
                    atLeast = 0)
            @Nullable
            Length height) {
        /** Nothing given but what is needed. */
        public static GivenEdge of(Names edge, EdgeKind kind) {
            return new GivenEdge(edge, kind, null, null, null);
        }
    }

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(Names corners) {
        return new Builder(corners);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final Names corners;
        private @Nullable RingDirection goingRound;
        private @Nullable Length stripWidth;
        private List<GivenEdge> edges = List.of();
        private List<GivenMeasure> measures = List.of();
        private @Nullable Double falseAlarm;

        private Builder(Names corners) {
            this.corners = corners;
        }

        public Builder goingRound(@Nullable RingDirection given) {
            goingRound = given;
            return this;
        }

        public Builder stripWidth(@Nullable Length given) {
            stripWidth = given;
            return this;
        }

        public Builder edges(List<GivenEdge> given) {
            edges = given;
            return this;
        }

        public Builder measures(List<GivenMeasure> given) {
            measures = given;
            return this;
        }

        public Builder falseAlarm(@Nullable Double given) {
            falseAlarm = given;
            return this;
        }

        public GivenSurvey build() {
            return new GivenSurvey(corners, goingRound, stripWidth, edges, measures, falseAlarm);
        }
    }
}
