package borderwright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static Comparison.Row row(String name, String cost, double growingM2, String... unmet) {
        return Comparison.Row.builder()
                .name(name)
                .changed(List.of())
                .cost(Optional.of(Money.parse(cost)))
                .less(Optional.empty())
                .boardMetres(80)
                .timberM3(0.3)
                .growingM2(growingM2)
                .soilM3(2)
                .planters(8)
                .unmet(Arrays.stream(unmet)
                        .map(what -> new Problem("survey", ShortfallMessage.NOTHING_TO_BUILD.of()))
                        .toList())
                .build();
    }

    @Test
    void theCheapestSaysWhatItSavesAndWhatThatCostsInGrowingArea() {
        Comparison comparison = Comparison.ofRows(List.of(
                row("as given", "GBP 450.00", 4.77), row("thin", "GBP 390.50", 4.84), row("few", "GBP 480.00", 4.79)));

        assertThat(comparison.cheapest()).isEqualTo(1);
        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo(
                        "The cheapest is \"thin\"; it saves GBP 59.50 against the garden as given, with 0.07 m2 more to"
                                + " grow in.");
    }

    @Test
    void halfARunIsNoSaving() {
        Comparison comparison = Comparison.ofRows(
                List.of(row("as given", "GBP 450.00", 4.77, "C"), row("deep", "GBP 320.00", 2.43, "C", "D")));

        assertThat(comparison.cheapest()).isZero();
        assertThat(English.METRIC.text(comparison.conclusion())).isEqualTo("The cheapest is \"as given\".");
    }

    @Test
    void aDearerDesignThatMeetsMoreIsSaidToBeDearer() {
        Comparison comparison = Comparison.ofRows(
                List.of(row("as given", "GBP 450.00", 4.77, "D"), row("shallow", "GBP 470.00", 4.50)));

        assertThat(comparison.cheapest()).isEqualTo(1);
        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo(
                        "\"shallow\" leaves the least unmet; it costs GBP 20.00 more than the garden as given, with 0.27 m2"
                                + " less to grow in.");
    }

    @Test
    void aDesignAtTheSameCostSavesNothing() {
        Comparison comparison =
                Comparison.ofRows(List.of(row("as given", "GBP 450.00", 4.77, "C"), row("again", "GBP 450.00", 4.78)));

        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo("\"again\" leaves the least unmet and costs the same, with 0.01 m2 more to grow in.");
    }

    @Test
    void designsWithoutAPlanAreListedWithTheirReasons() {
        PlanAnswer none =
                new PlanAnswer.NotPlanned(List.of(new Problem("survey", ShortfallMessage.NOTHING_TO_BUILD.of())));

        Comparison comparison = Comparison.of(List.of(new Comparison.Design("as given", List.of(), none)));

        assertThat(comparison.cheapest()).isEqualTo(-1);
        assertThat(English.METRIC.text(comparison.conclusion())).isEqualTo("None of the designs could be planned.");
        assertThat(comparison.rows().get(0).unmet())
                .extracting(p -> p.message().code())
                .containsExactly(ShortfallMessage.NOTHING_TO_BUILD);
    }
}
