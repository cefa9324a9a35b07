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
                        .map(what -> new Problem(what, ShortfallMessage.NOTHING_TO_BUILD.of()))
                        .toList())
                .build();
    }

    private static List<String> cheaperOnes(Comparison comparison) {
        return comparison.cheaperOnes().stream().map(English.METRIC::text).toList();
    }

    @Test
    void theCheapestSaysWhatItSavesAndWhatThatCostsInGrowingArea() {
        Comparison comparison = Comparison.ofRows(List.of(
                row("as given", "GBP 450.00", 4.77), row("thin", "GBP 390.50", 4.84), row("few", "GBP 480.00", 4.79)));

        assertThat(comparison.cheapest()).isEqualTo(1);
        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo(
                        "The cheapest that meets everything is \"thin\"; it saves GBP 59.50 against the garden as given, with"
                                + " 0.07 m2 more to grow in.");
        assertThat(comparison.cheaperOnes()).isEmpty();
    }

    @Test
    void halfARunIsNoSaving() {
        Comparison comparison = Comparison.ofRows(
                List.of(row("as given", "GBP 450.00", 4.77), row("deep", "GBP 320.00", 2.43, "C", "D")));

        assertThat(comparison.cheapest()).isZero();
        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo("The cheapest that meets everything is \"as given\".");
        assertThat(cheaperOnes(comparison))
                .containsExactly("\"deep\" costs GBP 130.00 less, but: No planter is given. And 1 more.");
    }

    @Test
    void whereNoneMeetsEverythingNoneIsTheCheapest() {
        Comparison comparison = Comparison.ofRows(List.of(
                row("as given", "GBP 450.00", 4.77, "C"),
                row("deep", "GBP 320.00", 2.43, "C", "D"),
                row("high", "GBP 480.00", 4.77, "C", "D")));

        assertThat(comparison.cheapest()).isEqualTo(-1);
        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo(
                        "None of the designs meets everything. \"as given\" leaves the least unmet, 1, at GBP 450.00.");
        // That both lack C tells nothing of it.
        assertThat(cheaperOnes(comparison))
                .containsExactly("\"deep\" costs GBP 130.00 less, but: No planter is given.");
    }

    @Test
    void aDearerDesignThatMeetsEverythingIsSaidToBeDearerAndTheGardenAsGivenToFail() {
        Comparison comparison = Comparison.ofRows(
                List.of(row("as given", "GBP 450.00", 4.77, "D"), row("shallow", "GBP 470.00", 4.50)));

        assertThat(comparison.cheapest()).isEqualTo(1);
        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo(
                        "\"shallow\" is the cheapest that meets everything; it costs GBP 20.00 more than the garden as"
                                + " given, with 0.27 m2 less to grow in.");
        assertThat(cheaperOnes(comparison))
                .containsExactly("\"as given\" costs GBP 20.00 less, but: No planter is given.");
    }

    @Test
    void aDesignAtTheSameCostSavesNothing() {
        Comparison comparison =
                Comparison.ofRows(List.of(row("as given", "GBP 450.00", 4.77, "C"), row("again", "GBP 450.00", 4.78)));

        assertThat(English.METRIC.text(comparison.conclusion()))
                .isEqualTo(
                        "\"again\" is the cheapest that meets everything; it costs the same as the garden as given, with"
                                + " 0.01 m2 more to grow in.");
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
