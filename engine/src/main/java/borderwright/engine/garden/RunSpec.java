package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One run of planters along one or more edges of the border. */
public record RunSpec(
        String name,

        Names along,

        @Nullable Integer planters,

        @Nullable LengthRange length,

        LengthRange depth,

        LengthRange height,

        @Nullable PlanterJoin join,

        @Nullable Length between,

        @Nullable Length startGap,

        @Nullable Length endGap,

        @Nullable Length backGap,

        @Nullable CornerTurn turn,

        List<CornerSpec> corners,

        @Nullable SlopeForm slope,

        @Nullable Length reach,

        @Nullable Length sag,

        @Nullable Length platform,

        @Nullable Boolean capping,

        @Nullable Rows rows) {
    public RunSpec {
        corners = List.copyOf(corners);
    }

    /** Whether its planters stand away from the edges of the border. */
    public boolean isFree() {
        return rows != null;
    }

    /** How many rows of planters it is, one behind the other. */
    public int rowCount() {
        return rows == null || rows.count() == null ? 1 : rows.count();
    }

    /**
     * The run as one of its rows alone: its back as far from the line as that row's. A run along edges is its own only row.
     *
     * @param row from 0
     */
    public RunSpec inRow(int row) {
        if (rows == null) {
            return this;
        }
        double back = rows.first().mm()
                + row * (depth.from().mm() + rows.pathsOrHabit().mm());
        return with(Length.ofMm(back), platform);
    }

    /** The same run with a false floor at that height; none at 0. */
    public RunSpec withPlatform(Length height) {
        return with(backGap, height.ticks() == 0 ? null : height);
    }

    private RunSpec with(@Nullable Length otherBackGap, @Nullable Length otherPlatform) {
        return new RunSpec(
                name,
                along,
                planters,
                length,
                depth,
                height,
                join,
                between,
                startGap,
                endGap,
                otherBackGap,
                turn,
                corners,
                slope,
                reach,
                sag,
                otherPlatform,
                capping,
                rows);
    }

    /** Rows that stand free, one behind the other. */
    public record Rows(
            Length first, @Nullable Integer count, @Nullable Length paths) {

        /** A wheelchair and a barrow pass (common practice, no source). */
        private static final Length HABIT = Length.ofMm(1200);

        public Length pathsOrHabit() {
            return paths == null ? HABIT : paths;
        }
    }

    /** One corner treated otherwise. */
    public record CornerSpec(String corner, CornerTurn turn) {}
}
