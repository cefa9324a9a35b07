package borderwright.engine.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.OffcutWorth;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lengths count in metres here, so that a metre of offcut is worth whole minor units. */
class OffcutWorthTest {
    private static final long METRE = 320_000;
    /** Above every order that delivers free. */
    private static final int MARK = 60;

    @Test
    void anOffcutTooShortToKeepIsWorthNothingAndPartsOfAUnitDoNotCount() {
        OffcutWorth worth = new OffcutWorth(METRE / 2, 120);
        assertThat(worth.of(METRE / 2 - 1)).isZero();
        assertThat(worth.of(METRE / 2)).isEqualTo(60);
        assertThat(worth.of(METRE + METRE / 1000)).isEqualTo(120);
        assertThat(OffcutWorth.NONE.of(9 * METRE)).isZero();
        assertThatThrownBy(() -> new OffcutWorth(0, 5)).hasMessageContaining("length above 0");
    }

    @Test
    void aLongerBoardIsBoughtWhenWhatIsLeftOfItIsWorthTheDifference() {
        List<BoardOffer> boards = List.of(offer("Alder", 3, 300, 1), offer("Alder", 5, 480, 1));
        ShoppingProblem plain = problem(List.of(piece(3, 1)), boards, List.of(), List.of(), 0);
        assertThat(Shopper.buy(plain, Budget.ofSteps(100_000)).cost()).isEqualTo(300);
        ShoppingAnswer keeping = Shopper.buy(plain.keeping(new OffcutWorth(METRE, 95)), Budget.ofSteps(100_000));
        assertThat(keeping.proven()).isTrue();
        assertThat(keeping.orders().get(0).total()).isEqualTo(480);
        assertThat(keeping.counted()).isEqualTo(-190);
        assertThat(keeping.cost()).isEqualTo(290);
    }

    @Test
    void anOwnedBoardIsNotCutWhereANewOneCostsLessThanWhatItWouldLose() {
        List<BoardOffer> boards = List.of(offer("Alder", 1, 100, 1));
        List<OwnedStock> owned = List.of(new OwnedStock("s", 4 * METRE, 1, "shed"));
        ShoppingProblem problem = problem(List.of(piece(1, 1)), boards, owned, List.of(), 0);
        assertThat(Shopper.buy(problem, Budget.ofSteps(100_000)).cost()).isZero();
        ShoppingAnswer keeping = Shopper.buy(problem.keeping(new OffcutWorth(4 * METRE, 50)), Budget.ofSteps(100_000));
        assertThat(keeping.cost()).isEqualTo(100);
        assertThat(keeping.proven()).isTrue();
    }

    @Test
    void theBasketIsTheBestThereIsWithOffcutsCounted() {
        int changed = 0;
        for (long seed = 0; seed < 2000; seed++) {
            ShoppingProblem problem = random(seed);
            long least = new Everything(problem).least();
            ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(2_000_000));
            if (least == Long.MAX_VALUE) {
                assertThat(answer.status()).as("seed %d", seed).isEqualTo(ShoppingAnswer.Status.IMPOSSIBLE);
                continue;
            }
            assertThat(answer.bound()).as("bound, seed %d", seed).isLessThanOrEqualTo(least);
            assertThat(answer.cost()).as("cost, seed %d", seed).isEqualTo(least);
            assertThat(answer.proven()).as("proven, seed %d", seed).isTrue();
            long paid = answer.cost() - answer.counted();
            ShoppingAnswer plain = Shopper.buy(problem.keeping(OffcutWorth.NONE), Budget.ofSteps(2_000_000));
            changed += paid > plain.cost() ? 1 : 0;
        }
        // Now and then more is paid for the sake of what is left over.
        assertThat(changed).isGreaterThan(60);
    }

    private static Demand piece(long metres, int quantity) {
        return new Demand("s", metres * METRE, quantity, "p");
    }

    private static BoardOffer offer(String supplier, long metres, long packPrice, int pack) {
        return new BoardOffer(supplier, "s", metres * METRE, packPrice, pack, Integer.MAX_VALUE);
    }

    private static ShoppingProblem problem(
            List<Demand> demands,
            List<BoardOffer> boards,
            List<OwnedStock> owned,
            List<SupplierTerms> terms,
            long kerf) {
        return ShoppingProblem.builder(demands)
                .boards(boards)
                .terms(terms)
                .owned(owned)
                .kerfTicks(kerf)
                .build();
    }

    /** One to four pieces, two suppliers, packs, an owned board now and then, delivery that may be free. */
    private static ShoppingProblem random(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        for (int n = random.nextInt(1, 3); n > 0; n--) {
            demands.add(piece(random.nextInt(1, 7), random.nextInt(1, 3)));
        }
        List<BoardOffer> boards = new ArrayList<>();
        List<SupplierTerms> terms = new ArrayList<>();
        for (String name : List.of("Alder", "Birch")) {
            long free = random.nextBoolean() ? random.nextInt(20, MARK) : SupplierTerms.NEVER;
            terms.add(new SupplierTerms(name, BigDecimal.ZERO, random.nextInt(0, 6), free, 0));
            for (int n = name.equals("Alder") ? random.nextInt(1, 3) : 1; n > 0; n--) {
                long metres = random.nextInt(4, 11);
                int pack = random.nextInt(4) == 0 ? 2 : 1;
                boards.add(offer(name, metres, pack * (3 * metres + random.nextInt(0, 6)), pack));
            }
        }
        List<OwnedStock> owned = random.nextInt(3) == 0
                ? List.of(new OwnedStock("s", random.nextInt(2, 9) * METRE, 1, "shed"))
                : List.of();
        return problem(demands, boards, owned, terms, random.nextInt(2) * METRE / 4)
                .keeping(new OffcutWorth(random.nextInt(1, 5) * METRE, random.nextInt(1, 3)));
    }

    /** Every number of packs, and every way to put the pieces on the boards. */
    private static final class Everything {
        private final ShoppingProblem problem;
        private final List<Long> pieces = new ArrayList<>();
        private final int[] packs;
        private long least = Long.MAX_VALUE;

        Everything(ShoppingProblem problem) {
            this.problem = problem;
            this.packs = new int[problem.boards().size()];
            for (Demand d : problem.demands()) {
                for (int q = 0; q < d.quantity(); q++) {
                    pieces.add(d.lengthTicks());
                }
            }
        }

        long least() {
            choose(0);
            return least;
        }

        private void choose(int at) {
            if (at == packs.length) {
                List<long[]> boards = new ArrayList<>();
                long paid = paid();
                long mostKept = 0;
                for (int j = 0; j < packs.length; j++) {
                    BoardOffer offer = problem.boards().get(j);
                    for (int n = 0; n < packs[j] * offer.pack(); n++) {
                        boards.add(new long[] {offer.lengthTicks(), offer.packPrice() / offer.pack(), 0, 0});
                        mostKept += kept(boards.get(boards.size() - 1));
                    }
                }
                for (OwnedStock owned : problem.owned()) {
                    boards.add(new long[] {owned.lengthTicks(), Long.MAX_VALUE, 0, 1});
                }
                if (paid - mostKept < least) {
                    place(0, boards, paid);
                }
                return;
            }
            long most = pieces.size() + MARK / problem.boards().get(at).packPrice() + 1;
            for (packs[at] = 0; packs[at] <= most; packs[at]++) {
                choose(at + 1);
            }
            packs[at] = 0;
        }

        private long paid() {
            long sum = 0;
            for (SupplierTerms terms : problem.terms()) {
                long value = 0;
                boolean buys = false;
                for (int j = 0; j < packs.length; j++) {
                    if (problem.boards().get(j).supplier().equals(terms.name())) {
                        value += packs[j] * problem.boards().get(j).packPrice();
                        buys |= packs[j] > 0;
                    }
                }
                long reached = value;
                sum += value
                        + (buys
                                ? terms.ways().stream()
                                        .filter(w -> w.fromValue() <= reached)
                                        .mapToLong(DeliveryOption::charge)
                                        .min()
                                        .orElseThrow()
                                : 0);
            }
            return sum;
        }

        private void place(int at, List<long[]> boards, long paid) {
            if (at == pieces.size()) {
                long cost = paid;
                for (long[] board : boards) {
                    long whole = problem.offcuts().of(board[0]);
                    cost += board[3] == 1 ? (board[2] > 0 ? whole - kept(board) : 0) : -kept(board);
                }
                least = Math.min(least, cost);
                return;
            }
            for (int b = 0; b < boards.size(); b++) {
                long[] board = boards.get(b);
                boolean likeBefore = b > 0 && Arrays.equals(board, boards.get(b - 1));
                if (likeBefore) {
                    continue;
                }
                // Each piece takes a kerf, but for one that comes out at the end of the board.
                long used = board[2] + pieces.get(at);
                if (used <= board[0]) {
                    long before = board[2];
                    board[2] = used + problem.kerfTicks();
                    place(at + 1, boards, paid);
                    board[2] = before;
                }
            }
        }

        private long kept(long[] board) {
            return Math.min(board[1], problem.offcuts().of(Math.max(0, board[0] - board[2])));
        }
    }
}
