package borderwright.engine.buying;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.SupplierTerms;
import borderwright.engine.stock.Demand;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Against trying everything, on small seeded problems with every feature mixed. */
public class ShopperBruteForceTest {
    private static final int ANY = Integer.MAX_VALUE;
    /** What trying everything gave, by seed: both tests ask. */
    private static final Map<Long, Long> LEAST = new HashMap<>();

    private static long least(long seed) {
        return LEAST.computeIfAbsent(seed, s -> BruteForce.leastCost(small(s)));
    }

    @Nested
    class Properties {
        @Test
        void theBasketIsTheCheapestThereIsAndTheBoundIsTrue() {
            for (long seed = 0; seed < 2000; seed++) {
                ShoppingProblem problem = small(seed);
                long least = least(seed);
                ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(2_000_000));
                if (least < 0) {
                    assertThat(answer.status()).as("seed %d", seed).isEqualTo(ShoppingAnswer.Status.IMPOSSIBLE);
                    continue;
                }
                assertThat(answer.status()).as("seed %d", seed).isEqualTo(ShoppingAnswer.Status.FOUND);
                assertThat(ShoppingCheck.faults(problem, answer))
                        .as("seed %d", seed)
                        .isEmpty();
                assertThat(answer.bound()).as("bound, seed %d", seed).isLessThanOrEqualTo(least);
                assertThat(answer.cost()).as("cost, seed %d", seed).isEqualTo(least);
                assertThat(answer.proven()).as("proven, seed %d", seed).isTrue();
            }
        }
    }

    @Nested
    class CutShort {
        @Test
        void aSearchClaimsNoMoreThanIsTrueWhereverItIsStopped() {
            for (long seed = 0; seed < 2000; seed += 3) {
                ShoppingProblem problem = small(seed);
                long least = least(seed);
                for (long units : new long[] {0, 1, 4, 16, 64}) {
                    ShoppingAnswer answer = Shopper.buy(problem, Budget.ofSteps(units));
                    if (least < 0) {
                        assertThat(answer.status())
                                .as("seed %d, %d units", seed, units)
                                .isNotEqualTo(ShoppingAnswer.Status.FOUND);
                        continue;
                    }
                    assertThat(answer.status())
                            .as("seed %d, %d units", seed, units)
                            .isNotEqualTo(ShoppingAnswer.Status.IMPOSSIBLE);
                    assertThat(answer.bound())
                            .as("bound, seed %d, %d units", seed, units)
                            .isLessThanOrEqualTo(least);
                    if (answer.status() == ShoppingAnswer.Status.FOUND) {
                        assertThat(answer.cost())
                                .as("cost, seed %d, %d units", seed, units)
                                .isGreaterThanOrEqualTo(least);
                        assertThat(ShoppingCheck.faults(problem, answer))
                                .as("seed %d, %d units", seed, units)
                                .isEmpty();
                    }
                }
            }
        }
    }

    /** Delivery in bands, or none, and fetching with a longest board. */
    private static SupplierTerms withWays(SupplierTerms terms, SplittableRandom random) {
        List<DeliveryOption> ways = new ArrayList<>();
        long limit = random.nextInt(3) == 0 ? random.nextInt(50, 110) : DeliveryOption.ANY_LENGTH;
        long from = random.nextInt(4) == 0 ? random.nextInt(0, 40) : 0;
        long charge = random.nextInt(10, 40);
        for (int bands = random.nextInt(0, 4); bands > 0; bands--) {
            ways.add(DeliveryOption.delivered(from, charge).upTo(limit));
            from += random.nextInt(5, 30);
            charge = random.nextLong(0, charge + 1);
        }
        if (random.nextInt(3) > 0 || (ways.isEmpty() && random.nextInt(4) > 0)) {
            ways.add(DeliveryOption.fetched(random.nextInt(0, 15))
                    .upTo(random.nextBoolean() ? random.nextInt(40, 110) : DeliveryOption.ANY_LENGTH));
        }
        return new SupplierTerms(terms.name(), terms.taxPercent(), terms.minimumOrder(), ways);
    }

    /** A few pieces of one or two sections, two suppliers, terms, packs, limits, owned boards and goods. */
    public static ShoppingProblem small(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int sections = random.nextInt(1, 3);
        List<Demand> demands = new ArrayList<>();
        int kinds = random.nextInt(1, 5);
        for (int i = 0; i < kinds; i++) {
            demands.add(
                    new Demand("s" + random.nextInt(sections), random.nextInt(5, 60), random.nextInt(1, 3), "P" + i));
        }
        List<BoardOffer> boards = new ArrayList<>();
        int offers = random.nextInt(1, 4);
        for (int j = 0; j < offers; j++) {
            int pack = random.nextInt(4) == 0 ? random.nextInt(2, 4) : 1;
            int length = random.nextInt(40, 110);
            boards.add(new BoardOffer(
                    random.nextBoolean() ? "A" : "B",
                    "s" + random.nextInt(sections),
                    length,
                    pack * (long) (length / 4 + random.nextInt(-4, 8)),
                    pack,
                    random.nextInt(4) == 0 ? random.nextInt(0, 5) : ANY));
        }
        if (seed % 3 == 1) {
            // A lower price from some boards on, beside the usual one.
            BoardOffer usual = boards.get(0);
            int least = 2 + (int) (seed % 4);
            boards.add(new BoardOffer(
                            usual.supplier(),
                            usual.section(),
                            usual.lengthTicks(),
                            usual.packPrice() * (6 + seed % 4) / 10,
                            usual.pack(),
                            usual.available())
                    .soldFrom(least));
        }
        if (seed % 5 == 2) {
            // Another section stands in for the first at a difference that is weighed and not paid.
            BoardOffer usual = boards.get(0);
            boards.add(new BoardOffer(
                            "B", "other", usual.lengthTicks() + seed % 7, usual.packPrice() * 8 / 10, usual.pack(), ANY)
                    .inPlaceOf(usual.section(), seed % 4));
        }
        List<OwnedStock> owned = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            owned.add(new OwnedStock("s0", random.nextInt(20, 90), random.nextInt(1, 3), "rack"));
            // Drawn from the seed, so that the other figures of old seeds stay.
            owned.add(new OwnedStock("s0", 20 + seed % 37, 1, "received", seed % 3));
        }
        List<GoodsNeed> needs = new ArrayList<>();
        List<GoodsOffer> goods = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            needs.add(new GoodsNeed("screws", BigDecimal.valueOf(random.nextInt(1, 8)), "pieces"));
            goods.add(new GoodsOffer("A", "screws", random.nextInt(0, 12), BigDecimal.valueOf(2), ANY));
            goods.add(new GoodsOffer("B", "screws", random.nextInt(0, 15), BigDecimal.valueOf(3), ANY));
        }
        List<SupplierTerms> terms = new ArrayList<>();
        for (String name : List.of("A", "B")) {
            if (random.nextInt(3) > 0) {
                terms.add(new SupplierTerms(
                        name,
                        random.nextInt(3) == 0 ? new BigDecimal("17.5") : BigDecimal.ZERO,
                        random.nextInt(0, 30),
                        random.nextBoolean() ? random.nextInt(10, 90) : SupplierTerms.NEVER,
                        random.nextInt(3) == 0 ? random.nextInt(0, 60) : 0));
            }
        }
        // Drawn apart, so that the other figures of old seeds stay.
        SplittableRandom more = new SplittableRandom(~seed);
        terms.replaceAll(t -> more.nextInt(2) == 0 ? t : withWays(t, more));
        if (!needs.isEmpty() && more.nextBoolean()) {
            GoodsOffer further = new GoodsOffer(
                            more.nextBoolean() ? "A" : "B",
                            "screws",
                            more.nextInt(3, 12),
                            BigDecimal.valueOf(more.nextInt(1, 4)),
                            more.nextBoolean() ? ANY : more.nextInt(1, 5))
                    .soldFrom(more.nextInt(1, 5));
            goods.add(more.nextInt(3) == 0 ? further.byLorryOnly() : further);
        }
        return ShoppingProblem.builder(demands)
                .boards(boards)
                .terms(terms)
                .owned(owned)
                .needs(needs)
                .goods(goods)
                .kerfTicks(random.nextInt(0, 4))
                .trimTicks(random.nextInt(0, 3))
                .build();
    }
}
