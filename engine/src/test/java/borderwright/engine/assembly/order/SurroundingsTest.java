package borderwright.engine.assembly.order;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Which sides of a box have no room for a drill behind them: by places worked out by hand. */
class SurroundingsTest {
    /** A border of 5 m by 3 m whose lower edge is of some kind; the others are open. */
    private static Outline border(EdgeKind lower) {
        return new Outline(
                Ring.rectangle(0, 0, 5000, 3000),
                List.of("A", "B", "C", "D"),
                List.of(edge(lower), edge(EdgeKind.OPEN), edge(EdgeKind.OPEN), edge(EdgeKind.OPEN)),
                GroundHeights.LEVEL);
    }

    private static OutlineEdge edge(EdgeKind kind) {
        return new OutlineEdge(kind, 0, 0, 0);
    }

    @Test
    void onlyTheSideBeforeTheWallIsNearIt() {
        assertThat(Surroundings.nearWalls(Ring.rectangle(1000, 449, 3000, 1000), border(EdgeKind.WALL)))
                .containsExactly(0);
    }

    /** The ends touch the wall's line with a corner, but nothing stands behind them. */
    @Test
    void aBoxAgainstTheWallStillHasItsEndsFree() {
        assertThat(Surroundings.nearWalls(Ring.rectangle(1000, 1, 3000, 551), border(EdgeKind.HOUSE)))
                .containsExactly(0);
    }

    @Test
    void atFourHundredAndFiftyMillimetresADrillGetsIn() {
        assertThat(Surroundings.nearWalls(Ring.rectangle(1000, 450, 3000, 1000), border(EdgeKind.FENCE)))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = EdgeKind.class,
            names = {"PAVING", "LAWN", "OPEN"})
    void wherePeopleStandADrillGetsIn(EdgeKind kind) {
        assertThat(Surroundings.nearWalls(Ring.rectangle(1000, 20, 3000, 600), border(kind)))
                .isEmpty();
    }
}
