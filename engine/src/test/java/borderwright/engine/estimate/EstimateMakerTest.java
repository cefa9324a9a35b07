package borderwright.engine.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class EstimateMakerTest {
    private static EstimateRequest wish(double runMm, double depthMm, double heightMm) {
        return new EstimateRequest(
                Length.ofMm(runMm),
                Length.ofMm(depthMm),
                Length.ofMm(heightMm),
                Length.ofMm(25),
                Length.ofMm(150),
                null,
                UnitSystem.METRIC,
                "GBP",
                null,
                null,
                null);
    }

    @Test
    void aRangeRunsFromLessToMoreAndItsLinesAddUp() {
        FirstEstimate estimate = EstimateMaker.estimate(wish(9600, 600, 450));

        Money low = Money.zero(CurrencyUnit.of("GBP"));
        Money high = low;
        for (FirstEstimate.Line line : estimate.lines()) {
            assertThat(line.moneyLow()).isLessThanOrEqualTo(line.moneyHigh());
            low = low.plus(line.moneyLow());
            high = high.plus(line.moneyHigh());
        }
        assertThat(estimate.totalLow()).isEqualTo(low);
        assertThat(estimate.totalHigh()).isEqualTo(high);
        assertThat(estimate.totalLow()).isLessThan(estimate.totalHigh());
    }

    /**
     * By hand: inside 9.55 x 0.55 m, filled to 30 mm below a rim of 450 mm, 2.21 m3 before what the braces take, and 2.43
     * to 2.76 m3 with 10 to 25 % for settlement.
     */
    @Test
    void soilAgreesWithAHandCount() {
        FirstEstimate estimate = EstimateMaker.estimate(wish(9600, 600, 450));

        FirstEstimate.Line soil = estimate.lines().get(3);
        assertThat(soil.what()).startsWith("soil");
        assertThat(cubicMetres(soil.low())).isBetween(2.30, 2.43);
        assertThat(cubicMetres(soil.high())).isBetween(2.55, 2.76);
    }

    @Test
    void aNaiveCountIsLessThanEitherDesign() {
        FirstEstimate estimate = EstimateMaker.estimate(wish(9600, 600, 450));

        assertThat(estimate.naive()).contains("61.2 m");
        assertThat(Double.parseDouble(estimate.lines().get(0).low().replace(" m", "")))
                .isGreaterThan(61.2);
        assertThat(estimate.forgotten()).anySatisfy(line -> assertThat(line).startsWith("dividers"));
    }

    @Test
    void bothEndsAreTiedUntilTheyHoldAndItIsSaidWhereNothingDoes() {
        assertThat(EstimateMaker.estimate(wish(9600, 600, 450)).forgotten())
                .anySatisfy(line -> assertThat(line).startsWith("ties across"))
                .noneSatisfy(line -> assertThat(line).startsWith("strength"));
        assertThat(EstimateMaker.estimate(wish(9600, 600, 1200)).forgotten())
                .anySatisfy(line -> assertThat(line).startsWith("strength: no bracing that was tried holds"));
    }

    @Test
    void aRangeRunsFromLessToMoreAtEverySize() {
        for (double height : new double[] {150, 300, 450, 600}) {
            for (double run : new double[] {1500, 4200, 12_000}) {
                FirstEstimate estimate = EstimateMaker.estimate(wish(run, 600, height));
                assertThat(estimate.lines())
                        .as(run + " x " + height)
                        .allSatisfy(line -> assertThat(line.moneyLow()).isLessThanOrEqualTo(line.moneyHigh()));
            }
        }
    }

    @Test
    void ownPricesReplaceHabits() {
        EstimateRequest habit = wish(9600, 600, 450);
        EstimateRequest own = new EstimateRequest(
                habit.run(),
                habit.depth(),
                habit.height(),
                habit.thickness(),
                habit.width(),
                8,
                habit.units(),
                "GBP",
                new BigDecimal("2.40"),
                new BigDecimal("52"),
                new BigDecimal("35"));

        FirstEstimate estimate = EstimateMaker.estimate(own);

        assertThat(estimate.habits()).containsExactly("200 screws at 10 to 18");
        assertThat(estimate.lines().get(2).moneyLow()).isEqualTo(Money.parse("GBP 35.00"));
        assertThat(estimate.lines().get(2).moneyHigh()).isEqualTo(Money.parse("GBP 35.00"));
    }

    @Nested
    class Refusals {
        @Test
        void everyMeasureOutOfRangeIsNamed() {
            FirstEstimate estimate = EstimateMaker.estimate(wish(100, 50, 5000));

            assertThat(estimate.problems()).extracting(Problem::where).containsExactly("run", "depth", "height");
            assertThat(estimate.problems().get(2).sentence(English.METRIC))
                    .isEqualTo("A height of 5000 mm cannot be estimated. Give a length from 50 mm to 1500 mm.");
        }
    }

    private static double cubicMetres(String text) {
        return Double.parseDouble(text.replace(" m3", ""));
    }
}
