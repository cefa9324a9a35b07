package borderwright.engine.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrototypeTest {
    private static final Box SINGLE = TestBoxes.box("F4", Ring.rectangle(8000, 0, 9000, 600), 0, 450, 0);

    private static Box joined(double longestMm) {
        return TestBoxes.joined(
                "F1-F3",
                Ring.rectangle(0, 0, 3600, 600),
                List.of(
                        new DividerLine(0, new Point(1200, 0), 2, new Point(1200, 600)),
                        new DividerLine(0, new Point(2400, 0), 2, new Point(2400, 600))),
                List.of("F1", "F2", "F3"),
                longestMm);
    }

    @Test
    void theFirstSinglePlanterIsBuiltFirstWhereverItStands() {
        assertThat(Prototype.of(List.of(joined(4000), SINGLE))).isEqualTo(new Prototype(1, "F4", 1));
        assertThat(Prototype.of(List.of(SINGLE, joined(4000)))).isEqualTo(new Prototype(0, "F4", 1));
    }

    /** Boards of 3.6 m run past the dividers: the first bay cannot stand alone. */
    @Test
    void aRunWhoseBoardsRunThroughIsBuiltWhole() {
        assertThat(joined(4000).pieces()).anyMatch(piece -> piece.length().mm() > 3000);
        assertThat(Prototype.of(List.of(joined(4000)))).isEqualTo(new Prototype(0, "F1-F3", 1));
    }

    @Test
    void aRunWhoseBoardsEndAtItsDividersStartsWithItsFirstBay() {
        Box box = joined(1300);
        assertThat(Prototype.of(List.of(box, joined(1300)))).isEqualTo(new Prototype(0, "F1", 1.0 / 3));
    }
}
