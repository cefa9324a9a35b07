package borderwright.bench.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import borderwright.engine.buying.list.ShoppingProblem;
import org.junit.jupiter.api.Test;

class InstanceFilesTest {
    private static ShoppingProblem only(String form, String text) {
        return InstanceFiles.parse(form, "x", text).get(0).problem();
    }

    @Test
    void aListOfPieces() {
        ShoppingProblem problem = only("pieces", "4\n10\n6 4\n4 3");
        assertThat(problem.demands())
                .extracting(d -> d.lengthTicks() + "x" + d.quantity())
                .containsExactly("3x1", "4x2", "6x1");
        assertThat(problem.boards().get(0).lengthTicks()).isEqualTo(10);
    }

    @Test
    void lengthsWithQuantities() {
        assertThat(only("lengths", "2 10\n6 3\n4 5").demands())
                .extracting(d -> d.lengthTicks() + "x" + d.quantity())
                .containsExactly("4x5", "6x3");
    }

    @Test
    void manyProblemsInOneFile() {
        assertThat(InstanceFiles.parse("many", "x", "2\n a 10 2 1\n 5 5\n b 20 1 1\n 7"))
                .extracting(Instance::name)
                .containsExactly("a", "b");
    }

    @Test
    void boardsWithPrices() {
        assertThat(only("several", "2 1\n10 9\n20 17\n6 3").boards())
                .extracting(b -> b.lengthTicks() + " at " + b.packPrice())
                .containsExactly("10 at 9", "20 at 17");
    }

    @Test
    void anUnknownFormIsNamed() {
        assertThatThrownBy(() -> only("odd", "1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("odd");
    }
}
