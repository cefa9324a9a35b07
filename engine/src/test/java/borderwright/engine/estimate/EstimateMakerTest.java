package borderwright.engine.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class EstimateMakerTest {
    /** The run that several tests look at, estimated once: its two designs take seconds. */
    private static final FirstEstimate USUAL = EstimateMaker.estimate(request(9600, 600, 450));

    private static EstimateRequest request(double runMm, double depthMm, double heightMm) {
        return request(runMm, depthMm, heightMm, 25);
    }

    private static EstimateRequest request(double runMm, double depthMm, double heightMm, double thicknessMm) {
        return EstimateRequest.builder(UnitSystem.METRIC, "GBP")
                .run(Length.ofMm(runMm))
                .depth(Length.ofMm(depthMm))
                .height(Length.ofMm(heightMm))
                .thickness(Length.ofMm(thicknessMm))
                .width(Length.ofMm(150))
                .build();
    }

    @Test
    void aRangeRunsFromLessToMoreAndItsLinesAddUp() {
        Money low = Money.zero(CurrencyUnit.of("GBP"));
        Money high = low;
        for (FirstEstimate.Line line : USUAL.lines()) {
            assertThat(line.moneyLow()).isLessThanOrEqualTo(line.moneyHigh());
            low = low.plus(line.moneyLow());
            high = high.plus(line.moneyHigh());
        }
        assertThat(USUAL.totalLow()).isEqualTo(low);
        assertThat(USUAL.totalHigh()).isEqualTo(high);
        assertThat(USUAL.totalLow()).isLessThan(USUAL.totalHigh());
    }

    /**
     * By hand: inside 9.55 x 0.55 m, filled to 30 mm below a rim of 450 mm, 2.21 m3 before what the braces take, and 2.45
     * (over 0.9) to 2.94 m3 (over 0.75) where 10 to 25 % of what is put in settle.
     */
    @Test
    void soilAgreesWithAHandCount() {
        FirstEstimate.Line soil = USUAL.lines().get(3);
        assertThat(soil.what().code()).isEqualTo(EstimateMessage.ESTIMATED_SOIL);
        assertThat(number(soil.what(), 0)).isBetween(2.32, 2.45);
        assertThat(number(soil.what(), 1)).isBetween(2.72, 2.94);
    }

    @Test
    void theSimpleCountIsLessThanEitherDesign() {
        assertThat(USUAL.simpleCount()).contains(EstimateMessage.SIMPLE_COUNT.of(61_200.0));
        Message boards = (Message) USUAL.lines().get(0).what().values().get(0);
        assertThat(number(boards, 0)).isGreaterThan(61_200);
        assertThat(USUAL.leftOut()).extracting(Message::code).contains(EstimateMessage.COUNT_LEAVES_DIVIDERS);
    }

    @Test
    void bothEndsAreTiedUntilTheyHoldAndItIsReportedWhereNothingDoes() {
        assertThat(USUAL.leftOut())
                .extracting(Message::code)
                .contains(EstimateMessage.COUNT_LEAVES_TIES)
                .doesNotContain(EstimateMessage.COUNT_LEAVES_STRENGTH);
        // Boards of 8 mm, which no bracing that is tried keeps straight.
        assertThat(EstimateMaker.estimate(request(1500, 600, 450, 8)).leftOut())
                .extracting(Message::code)
                .contains(EstimateMessage.COUNT_LEAVES_STRENGTH);
    }

    /** Boards that no course changes in count, 4 planters either way: dividers are the same, and no range of them is shown. */
    @Test
    void whatBothDesignsTakeIsOneFigure() {
        EstimateRequest common = request(9600, 600, 150);
        EstimateRequest four = EstimateRequest.builder(common.units(), "GBP")
                .run(common.run())
                .depth(common.depth())
                .height(common.height())
                .thickness(common.thickness())
                .width(common.width())
                .planters(4)
                .build();

        assertThat(EstimateMaker.estimate(four).leftOut().get(0).values().get(0))
                .isInstanceOfSatisfying(
                        Message.class, length -> assertThat(length.code()).isEqualTo(EstimateMessage.ONE_LENGTH));
    }

    @Test
    void aRangeRunsFromLessToMoreAtEverySize() {
        for (double height : new double[] {150, 300, 450, 600}) {
            for (double run : new double[] {1500, 4200, 12_000}) {
                FirstEstimate estimate = EstimateMaker.estimate(request(run, 600, height));
                assertThat(estimate.lines())
                        .as(run + " x " + height)
                        .allSatisfy(line -> assertThat(line.moneyLow()).isLessThanOrEqualTo(line.moneyHigh()));
            }
        }
    }

    @Test
    void ownPricesReplaceCommonOnes() {
        EstimateRequest common = request(9600, 600, 450);
        EstimateRequest own = EstimateRequest.builder(common.units(), "GBP")
                .run(common.run())
                .depth(common.depth())
                .height(common.height())
                .thickness(common.thickness())
                .width(common.width())
                .planters(8)
                .boardPerMetre(new BigDecimal("2.40"))
                .soilPerCubicMetre(new BigDecimal("52"))
                .delivery(new BigDecimal("35"))
                .build();

        FirstEstimate estimate = EstimateMaker.estimate(own);

        assertThat(estimate.assumedPrices())
                .extracting(English.METRIC::text)
                .containsExactly("200 screws at GBP 10.00 to GBP 18.00");
        assertThat(estimate.lines().get(2).moneyLow()).isEqualTo(Money.parse("GBP 35.00"));
        assertThat(estimate.lines().get(2).moneyHigh()).isEqualTo(Money.parse("GBP 35.00"));
    }

    @Nested
    class Refusals {
        @Test
        void everyMeasureOutOfRangeIsNamed() {
            FirstEstimate estimate = EstimateMaker.estimate(request(100, 50, 5000));

            assertThat(estimate.problems()).extracting(Problem::where).containsExactly("run", "depth", "height");
            assertThat(estimate.problems().get(2).sentence(English.METRIC))
                    .isEqualTo("A height of 5000 mm is out of range. Give a length from 50 mm to 1500 mm.");
        }
    }

    private static double number(Message message, int slot) {
        return ((Number) message.values().get(slot)).doubleValue();
    }
}
