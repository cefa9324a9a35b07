package borderwright.engine.buying;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Baskets of a garden's size over three suppliers whose delivery becomes free, in work units that any computer counts alike. */
class FreeDeliveryTest {
    private static final int MM = 320;
    private static final long ENOUGH = 600_000;

    @Test
    void theCheapestBasketIsProven() {
        for (long seed = 0; seed < 6; seed++) {
            ShoppingProblem problem = garden(seed);
            ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(ENOUGH));
            assertThat(ShoppingCheck.faults(problem, answer)).isEmpty();
            assertThat(answer.proven()).as("seed %d", seed).isTrue();
        }
    }

    /** 60 pieces of 16 lengths in two sections, six board lengths. */
    private static ShoppingProblem garden(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        for (int k = 0; k < 16; k++) {
            demands.add(new Demand("s" + k % 2, (long) random.nextInt(250, 2301) * MM, random.nextInt(2, 6), "P" + k));
        }
        List<BoardOffer> boards = new ArrayList<>();
        List<SupplierTerms> terms = new ArrayList<>();
        for (String name : List.of("Alder", "Birch", "Cedar")) {
            terms.add(new SupplierTerms(
                    name, BigDecimal.ZERO, random.nextInt(15, 36) * 100L, random.nextInt(90, 271) * 100L, 0));
            for (int s = 0; s < 2; s++) {
                double perMetre = (s == 0 ? 260 : 410) * (0.92 + 0.16 * random.nextDouble());
                for (int length : new int[] {2400, 3000, 3600, 4200, 4800, 5400}) {
                    long price = Math.round(perMetre * length / 1000 * (0.97 + 0.06 * random.nextDouble()));
                    boards.add(new BoardOffer(name, "s" + s, (long) length * MM, price, 1, Integer.MAX_VALUE));
                }
            }
        }
        return ShoppingProblem.builder(demands)
                .boards(boards)
                .terms(terms)
                .kerfTicks(3L * MM)
                .trimTicks(10L * MM)
                .build();
    }
}
