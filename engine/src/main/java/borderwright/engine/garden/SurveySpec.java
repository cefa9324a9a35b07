package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was measured on site. */
public record SurveySpec(
        Names corners,

        @Nullable RingDirection round,

        @Nullable Length strip,

        List<EdgeSpec> edges,
        List<Measure> measures,

        @Nullable Double risk) {
    public SurveySpec {
        edges = List.copyOf(edges);
        measures = List.copyOf(measures);
    }

    /** What lies along one edge. */
    public record EdgeSpec(
            Names edge,

            EdgeKind kind,

            @Nullable Length gap,

            @Nullable Length dampCourse,

            @Nullable Length height) {
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
