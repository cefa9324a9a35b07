package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One run of planters along one or more edges of the border.
 *
 * @param name of the run
 * @param along the corners that it follows, in order
 * @param bays how it is divided into planters
 * @param size of its planters
 * @param gaps to keep
 * @param turning at corners and along curves
 * @param standing on the ground
 */
public record RunSpec(
        String name, Names along, BaySpec bays, SizeSpec size, GapSpec gaps, TurnSpec turning, StandSpec standing) {

    /**
     * How a run is divided into planters.
     *
     * @param planters on each edge; nothing where their length decides
     * @param length of a planter, or its range; nothing where their number decides
     * @param join whether neighbours share an end wall
     */
    public record BaySpec(OptionalInt planters, Optional<LengthRange> length, PlanterJoin join) {}

    /**
     * The size of a run's planters.
     *
     * @param frontToBack from front to back, outside
     * @param height of the finished wall
     * @param falseFloor height of a false floor above the bed; 0 for none
     * @param rim what lies on top
     */
    public record SizeSpec(LengthRange frontToBack, LengthRange height, Length falseFloor, Rim rim) {}

    /** What lies on top of a planter's walls. */
    public enum Rim {
        BARE,
        CAPPED
    }

    /**
     * Gaps to keep.
     *
     * @param between separate planters
     * @param start at the start of the run; nothing where what lies there decides
     * @param end at the end of the run; nothing where what lies there decides
     * @param back between the back of the planters and the edge; nothing where the edge decides
     */
    public record GapSpec(Length between, Optional<Length> start, Optional<Length> end, Optional<Length> back) {}

    /**
     * What a run does at corners and along curves.
     *
     * @param turn at corners
     * @param others corners treated otherwise
     * @param offTheCurve how far a straight side may stand off a curve
     */
    public record TurnSpec(CornerTurn turn, List<CornerSpec> others, Length offTheCurve) {
        public TurnSpec {
            others = List.copyOf(others);
        }
    }

    /**
     * How a run stands on the ground, and how it is reached.
     *
     * @param slope how it follows a slope
     * @param reach how far a person reaches
     * @param rows that stand free of every edge; nothing for a run along its edges
     */
    public record StandSpec(SlopeForm slope, Length reach, Optional<Rows> rows) {}

    /**
     * Rows that stand free, one behind the other.
     *
     * @param first how far the back of the first row lies from the line between the corners
     * @param count of rows
     * @param paths width of the path between one row and the next
     */
    public record Rows(Length first, int count, Length paths) {}

    /** One corner treated otherwise. */
    public record CornerSpec(String corner, CornerTurn turn) {}

    /** Whether its planters stand away from the edges of the border. */
    public boolean isFree() {
        return standing.rows().isPresent();
    }

    /** How many rows of planters it is, one behind the other. */
    public int rowCount() {
        return standing.rows().map(Rows::count).orElse(1);
    }

    /**
     * The run as one of its rows alone: its back as far from the line as that row's. A run along edges is its own only row.
     *
     * @param row from 0
     */
    public RunSpec inRow(int row) {
        return standing.rows()
                .map(rows -> withBackGap(Length.ofMm(rows.first().mm()
                        + row * (size.frontToBack().from().mm() + rows.paths().mm()))))
                .orElse(this);
    }

    /** The same run with a false floor at that height; none at 0. */
    public RunSpec withPlatform(Length height) {
        SizeSpec floored = new SizeSpec(size.frontToBack(), size.height(), height, size.rim());
        return new RunSpec(name, along, bays, floored, gaps, turning, standing);
    }

    private RunSpec withBackGap(Length back) {
        GapSpec other = new GapSpec(gaps.between(), gaps.start(), gaps.end(), Optional.of(back));
        return new RunSpec(name, along, bays, size, other, turning, standing);
    }
}
