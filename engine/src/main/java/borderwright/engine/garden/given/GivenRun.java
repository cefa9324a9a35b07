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

        @Described(value = "from front to back, outside", example = "600 mm", atLeast = 150)
        LengthRange frontToBack,

        @Described(value = "height of the finished wall", example = "450 mm", atLeast = 50, atMost = 1500)
        LengthRange height,

        @Described(value = "joined planters share a divider; separate ones each have four walls", otherwise = "joined")
        @Nullable
        PlanterJoin join,

        @Described(value = "gap between separate planters", otherwise = "20 mm", atLeast = 0) @Nullable
        Length between,

        @Described(value = "gap at the start of the run", otherwise = "by what lies there", atLeast = 0) @Nullable
        Length startGap,

        @Described(value = "gap at the end of the run", otherwise = "by what lies there", atLeast = 0) @Nullable
        Length endGap,

        @Described(value = "gap between the back of the planters and the edge", otherwise = "by the edge", atLeast = 0)
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

        @Described(value = "height of a false floor above the bed", otherwise = "none", atLeast = 0) @Nullable
        Length falseFloor,

        @Described(value = "a capping ring on top", otherwise = "no") @Nullable
        Boolean capping,

        @Described(
                value = "rows that stand free of every edge, parallel to the line between the two corners named; "
                        + "with them planters and length may both be said",
                otherwise = "none: the run stands along its edges")
        @Nullable
        GivenRows rows) {
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

            @Described(value = "width of the path between one row and the next", otherwise = "1.2 m", atLeast = 0)
            @Nullable
            Length paths) {}

    /** One corner treated otherwise. */
    @Described("one corner treated otherwise than the rest")
    public record GivenCorner(
            @Described(value = "the corner", example = "B") String corner,
            @Described("what to do there") CornerTurn turn) {}
}
