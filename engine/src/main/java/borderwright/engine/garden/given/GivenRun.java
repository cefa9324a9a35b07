package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One run of planters along one or more edges of the border. */
@Described("one run of planters along one or more edges of the border")
public record GivenRun(
        @Described(value = "name of the run", example = "fence run")
        String name,

        @Described(value = "the corners that it follows, in order", example = "A B")
        Names along,

        @Described(value = "how many planters on each edge; or give a length", example = "8", atLeast = 1, atMost = 500)
        @Nullable
        Integer planters,

        @Described(
                value = "wanted length of a planter; the nearest whole number that fits is taken",
                example = "1.2 m",
                atLeast = 200)
        @Nullable
        LengthRange length,

        @Described(value = "from front to back, outside", example = "600 mm", atLeast = 150, usuallyAtMost = 3000)
        LengthRange frontToBack,

        @Described(
                value = "height of the finished wall",
                example = "450 mm",
                atLeast = 50,
                atMost = GivenRun.MOST_HEIGHT_MM)
        LengthRange height,

        @Described(value = "joined planters share a divider; separate ones each have four walls", otherwise = "joined")
        @Nullable
        PlanterJoin join,

        @Described(value = "gap between separate planters", otherwise = "20 mm", atLeast = 0, usuallyAtMost = 3000)
        @Nullable
        Length between,

        @Described(
                value = "gap at the start of the run",
                otherwise = "by what lies there",
                atLeast = 0,
                usuallyAtMost = 30_000)
        @Nullable
        Length startGap,

        @Described(
                value = "gap at the end of the run",
                otherwise = "by what lies there",
                atLeast = 0,
                usuallyAtMost = 30_000)
        @Nullable
        Length endGap,

        @Described(
                value = "gap between the back of the planters and the edge",
                otherwise = "by the edge",
                atLeast = 0,
                usuallyAtMost = 3000)
        @Nullable
        Length backGap,

        @Described(value = "what to do at corners between its edges", otherwise = "mitred") @Nullable
        CornerTurn turn,

        @Described(value = "corners treated otherwise than the rest")
        List<GivenCorner> otherTurns,

        @Described(value = "how the run follows a slope", otherwise = "level") @Nullable
        SlopeForm slope,

        @Described(
                value = "how far a person reaches from the side they stand on",
                otherwise = "600 mm",
                atLeast = 200,
                atMost = 1200)
        @Nullable
        Length reach,

        @Described(
                value = "for curved edges: how far a straight side may stand off the curve",
                otherwise = "40 mm",
                atLeast = 1)
        @Nullable
        Length offTheCurve,

        @Described(
                value = "height of a false floor above the bed",
                otherwise = "none",
                atLeast = 0,
                usuallyAtMost = 1200)
        @Nullable
        Length falseFloor,

        @Described(value = "a capping ring on top", otherwise = "no") @Nullable
        Boolean capping,

        @Described(
                value = "rows that stand free of every edge, parallel to the line between the two corners named; "
                        + "with them planters and length may both be given",
                otherwise = "none: the run stands along its edges")
        @Nullable
        GivenRows rows) {
    /** Walls are no higher. */
    public static final double MOST_HEIGHT_MM = 1500;

    public GivenRun {
        otherTurns = List.copyOf(otherTurns);
    }

    /** GivenRows that stand free, one behind the other. */
    @Described("rows of planters that stand free, one behind the other")
    public record GivenRows(
            @Described(
                    value = "how far the back of the first row lies from the line between the corners",
                    example = "3 m",
                    atLeast = 0)
            Length startsAt,

            @Described(value = "how many rows", otherwise = "1", atLeast = 1, atMost = 50) @Nullable
            Integer count,

            @Described(
                    value = "width of the path between one row and the next",
                    otherwise = "1.2 m",
                    atLeast = 0,
                    usuallyAtMost = 5000)
            @Nullable
            Length paths) {}

    /** One corner treated otherwise. */
    @Described("one corner treated otherwise than the rest")
    public record GivenCorner(
            @Described(value = "the corner", example = "B") String corner,
            @Described("what to do there") CornerTurn turn) {}

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(String name, Names along, LengthRange frontToBack, LengthRange height) {
        return new Builder(name, along, frontToBack, height);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final String name;
        private final Names along;
        private final LengthRange frontToBack;
        private final LengthRange height;
        private @Nullable Integer planters;
        private @Nullable LengthRange length;
        private @Nullable PlanterJoin join;
        private @Nullable Length between;
        private @Nullable Length startGap;
        private @Nullable Length endGap;
        private @Nullable Length backGap;
        private @Nullable CornerTurn turn;
        private List<GivenCorner> otherTurns = List.of();
        private @Nullable SlopeForm slope;
        private @Nullable Length reach;
        private @Nullable Length offTheCurve;
        private @Nullable Length falseFloor;
        private @Nullable Boolean capping;
        private @Nullable GivenRows rows;

        private Builder(String name, Names along, LengthRange frontToBack, LengthRange height) {
            this.name = name;
            this.along = along;
            this.frontToBack = frontToBack;
            this.height = height;
        }

        public Builder planters(@Nullable Integer given) {
            planters = given;
            return this;
        }

        public Builder length(@Nullable LengthRange given) {
            length = given;
            return this;
        }

        public Builder join(@Nullable PlanterJoin given) {
            join = given;
            return this;
        }

        public Builder between(@Nullable Length given) {
            between = given;
            return this;
        }

        public Builder startGap(@Nullable Length given) {
            startGap = given;
            return this;
        }

        public Builder endGap(@Nullable Length given) {
            endGap = given;
            return this;
        }

        public Builder backGap(@Nullable Length given) {
            backGap = given;
            return this;
        }

        public Builder turn(@Nullable CornerTurn given) {
            turn = given;
            return this;
        }

        public Builder otherTurns(List<GivenCorner> given) {
            otherTurns = given;
            return this;
        }

        public Builder slope(@Nullable SlopeForm given) {
            slope = given;
            return this;
        }

        public Builder reach(@Nullable Length given) {
            reach = given;
            return this;
        }

        public Builder offTheCurve(@Nullable Length given) {
            offTheCurve = given;
            return this;
        }

        public Builder falseFloor(@Nullable Length given) {
            falseFloor = given;
            return this;
        }

        public Builder capping(@Nullable Boolean given) {
            capping = given;
            return this;
        }

        public Builder rows(@Nullable GivenRows given) {
            rows = given;
            return this;
        }

        public GivenRun build() {
            return new GivenRun(
                    name,
                    along,
                    planters,
                    length,
                    frontToBack,
                    height,
                    join,
                    between,
                    startGap,
                    endGap,
                    backGap,
                    turn,
                    otherTurns,
                    slope,
                    reach,
                    offTheCurve,
                    falseFloor,
                    capping,
                    rows);
        }
    }
}
