package borderwright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestBoxes;
import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingAnswer.Status;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.UsualPrices;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.message.English;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.shopping.UnpricedItem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CostsTest {
    private static GivenGarden.Builder given(String currency) {
        return GivenGarden.builder(
                        "Test",
                        currency,
                        GivenSurvey.builder(Names.of("A", "B", "C", "D")).build(),
                        GivenBuild.of(TestBoxes.LARCH.name(), TestBoxes.BATTEN.name()))
                .sections(TestBoxes.GIVEN_LARCH, TestBoxes.GIVEN_BATTEN);
    }

    private static GoodsNeed need(String item, String quantity, String unit) {
        return new GoodsNeed(item, new BigDecimal(quantity), unit);
    }

    /** An answer that pays this much for one listed thing, and leaves the rest unpriced. */
    private static ShoppingAnswer answer(Status status, long paidMinor, GoodsNeed... unpriced) {
        GoodsOffer offer = new GoodsOffer("Yard", "listed", paidMinor, BigDecimal.ONE, 1);
        boolean fetched = false;
        List<ShoppingAnswer.Order> orders = status == Status.FOUND
                ? List.of(new ShoppingAnswer.Order(
                        "Yard", List.of(), List.of(new ShoppingAnswer.GoodsLine(offer, 1)), paidMinor, 0, 0, fetched))
                : List.of();
        return ShoppingAnswer.builder(status)
                .cost(paidMinor)
                .bound(paidMinor)
                .orders(orders)
                .unpriced(List.of(unpriced))
                .build();
    }

    /** The case that a user reported: by hand 9 packs of 100 screws, 3 loads, 3 packs of 20 feet, 1 roll of 15 m2, 1 tin. */
    @Test
    void whatNobodyListsIsInTheSumAndTheBudgetIsHeldAgainstAll() {
        Garden garden = GardenResolver.resolve(
                given("GBP").budget(new BigDecimal("800")).build());

        Costs costs = Costs.of(
                garden,
                answer(
                        Status.FOUND,
                        77750,
                        need("screw 5 x 70", "884", "pieces"),
                        need("soil", "2.75", "m3"),
                        need("packer", "46", "pieces"),
                        need("floor fabric", "9.7", "m2"),
                        need("preservative", "0.4", "litres")));

        assertThat(costs.unpriced())
                .extracting(item -> item.usual().orElseThrow().count())
                .containsExactly(9, 3, 3, 1, 1);
        assertThat(costs.unpriced())
                .extracting(item -> item.usual().orElseThrow().sum().toString())
                .containsExactly("GBP 81.00", "GBP 180.00", "GBP 18.00", "GBP 15.00", "GBP 15.00");
        assertThat(costs.unpriced())
                .allSatisfy(item ->
                        assertThat(item.usual().orElseThrow().origin().kind()).isEqualTo(Origins.Kind.DEFAULT));
        assertThat(costs.listed()).isEqualTo(Money.parse("GBP 777.50"));
        assertThat(costs.usual()).isEqualTo(Money.parse("GBP 309.00"));
        assertThat(costs.inAll()).contains(Money.parse("GBP 1086.50"));
        assertThat(costs.overBudget()).contains(Money.parse("GBP 286.50"));
        assertThat(English.METRIC.text(costs.covers()))
                .startsWith("Of that GBP 777.50 at the suppliers' prices")
                .contains("GBP 309.00 at usual prices", "from memory and rough");
        assertThat(English.METRIC.text(costs.unpriced().get(0).line()))
                .isEqualTo("screw 5 x 70, 884 pieces: usually GBP 81.00 (9 at GBP 9.00 for 100 pieces)");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    GBP |      | 877.50 | Just on the budget.
                    GBP |      | 900    | GBP 22.50 under the budget.
                    GBP |      | 800    | GBP 77.50 over the budget.
                    GBP | no   | 800    | GBP 22.50 of the budget left for 2 things without a price.
                    GBP | no   | 700    | GBP 77.50 over the budget.
                    SEK |      | 800    | SEK 22.50 of the budget left for 2 things without a price.
                    """)
    void theBudgetIsSaidToBeKeptOnlyOfWhatIsInTheSum(String currency, String usual, String budget, String said) {
        GivenGarden.Builder document = given(currency).budget(new BigDecimal(budget));
        if (usual != null) {
            document.usualPrices(false);
        }

        // Usually 100.00 in GBP: one load of what no name fits at 70.00, and 20 brackets at 1.50.
        Costs costs = Costs.of(
                GardenResolver.resolve(document.build()),
                answer(Status.FOUND, 77750, need("bark", "0.9", "m3"), need("angle bracket", "20", "pieces")));

        assertThat(costs.againstBudget().map(English.METRIC::text)).contains(said);
    }

    @Test
    void putOffOrWithoutAListNothingIsCountedAndThatIsSaid() {
        ShoppingAnswer answer = answer(Status.FOUND, 5000, need("screw 5 x 70", "10", "pieces"));
        Costs putOff =
                Costs.of(GardenResolver.resolve(given("GBP").usualPrices(false).build()), answer);
        Costs noList = Costs.of(GardenResolver.resolve(given("SEK").build()), answer);

        assertThat(List.of(putOff, noList)).allSatisfy(costs -> {
            assertThat(costs.notCounted()).isEqualTo(1);
            assertThat(costs.usual().isZero()).isTrue();
            assertThat(costs.inAll()).contains(costs.listed());
        });
        assertThat(putOff.use()).isEqualTo(UsualPrices.Use.PUT_OFF);
        assertThat(English.METRIC.text(putOff.covers())).endsWith("that no supplier lists; usual prices are put off.");
        assertThat(English.METRIC.text(noList.covers()))
                .endsWith("that no supplier lists; there are no usual prices in SEK.");
        assertThat(English.METRIC.text(noList.unpriced().get(0).line()))
                .isEqualTo("screw 5 x 70, 10 pieces: no known price");
    }

    @Test
    void withoutABasketThereIsNoSumAndNoBudgetIsKept() {
        Costs costs = Costs.of(
                GardenResolver.resolve(
                        given("GBP").budget(new BigDecimal("800")).build()),
                answer(Status.IMPOSSIBLE, 0, need("soil", "1", "m3")));

        assertThat(costs.inAll()).isEmpty();
        assertThat(costs.overBudget()).isEmpty();
        assertThat(costs.againstBudget()).isEmpty();
    }

    /** One pack less would not do, and all sums add up; seeds 1 to 200. */
    @ParameterizedTest
    @ValueSource(strings = {"GBP", "EUR", "USD"})
    void sumsAddUpAndNoPackIsTooMany(String currency) {
        List<String[]> goods = List.of(
                new String[] {"screw 6 x 90", "pieces"},
                new String[] {"concrete, 25 kg bag", "pieces"},
                new String[] {"membrane roll", "rolls"},
                new String[] {"floor fabric", "sq ft"},
                new String[] {"floor fabric", "m2"},
                new String[] {"finish", "litres"},
                new String[] {"finish", "quarts"},
                new String[] {"gravel", "cu yd"},
                new String[] {"bark", "m3"});
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<GoodsNeed> needs = new ArrayList<>();
            for (String[] of : goods) {
                int hundredths = of[1].equals("pieces") || of[1].equals("rolls")
                        ? 100 * (1 + random.nextInt(999))
                        : 1 + random.nextInt(9999);
                needs.add(new GoodsNeed(of[0], BigDecimal.valueOf(hundredths, 2), of[1]));
            }
            long paid = random.nextInt(100_000);

            Costs costs = Costs.of(
                    GardenResolver.resolve(given(currency).build()),
                    answer(Status.FOUND, paid, needs.toArray(GoodsNeed[]::new)));

            long sum = paid;
            for (UnpricedItem item : costs.unpriced()) {
                UnpricedItem.UsualCost cost = item.usual().orElseThrow();
                assertThat(cost.contains().multiply(BigDecimal.valueOf(cost.count())))
                        .as("%s of seed %d", item.item(), seed)
                        .isGreaterThanOrEqualTo(item.quantity());
                assertThat(cost.contains().multiply(BigDecimal.valueOf(cost.count() - 1)))
                        .as("%s of seed %d", item.item(), seed)
                        .isLessThan(item.quantity());
                assertThat(cost.sum()).isEqualTo(cost.each().multipliedBy(cost.count()));
                sum += cost.sum().getAmountMinorLong();
            }
            assertThat(costs.unpriced()).hasSameSizeAs(needs);
            assertThat(costs.inAll().orElseThrow().getAmountMinorLong())
                    .as("seed %d", seed)
                    .isEqualTo(sum);
        }
    }
}
