package borderwright.engine.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestGarden;
import borderwright.engine.garden.given.GivenFirstPlanter;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.SupplyResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FirstPlanterTest {
    private static FirstPlanter counted(int boards, int unusable) {
        return SupplyResolver.firstPlanter(
                GivenFirstPlanter.builder().boards(boards).unusable(unusable).build());
    }

    /** By hand: what was given counts as 20 boards, so 5 % of 20 and 3 of 10 are 4 of 30. */
    @ParameterizedTest
    @CsvSource({"5, 10, 3, 13.3333", "5, 10, 0, 3.3333", "0, 20, 2, 5", "5, 2000, 100, 5", "0, 5, 0, 0"})
    void rejectsMoveTowardsWhatWasFound(double before, int boards, int unusable, double after) {
        assertThat(counted(boards, unusable).rejects(before)).isCloseTo(after, within(1e-3));
    }

    @Test
    void withoutACountRejectsStay() {
        assertThat(SupplyResolver.firstPlanter(GivenFirstPlanter.builder()
                                .cutting(1.0)
                                .building(2.0)
                                .build())
                        .rejects(7))
                .isEqualTo(7);
    }

    @Test
    void aKerfReplacesThatOfTheSawMeasuredOnly() {
        SawSpec mitre = saw("mitre saw");
        SawSpec table = saw("table saw");
        FirstPlanter one = SupplyResolver.firstPlanter(GivenFirstPlanter.builder()
                .kerf(Length.ofMm(3.4))
                .saw("table saw")
                .build());
        FirstPlanter all = SupplyResolver.firstPlanter(
                GivenFirstPlanter.builder().kerf(Length.ofMm(3.4)).build());

        assertThat(kerfs(one, mitre, table)).containsExactly(2.5, 3.4);
        assertThat(kerfs(all, mitre, table)).containsExactly(3.4, 3.4);
    }

    @Test
    void aGardenWithoutAFirstPlanterIsItself() {
        Garden garden = TestGarden.with(null, null);
        assertThat(garden.asMeasured()).isSameAs(garden);
    }

    private static List<Double> kerfs(FirstPlanter first, SawSpec... saws) {
        Garden garden = TestGarden.taught(TestGarden.with(null, null), first, List.of(saws));
        return garden.asMeasured().saws().stream().map(SawSpec::kerfMm).toList();
    }

    private static SawSpec saw(String name) {
        return WoodResolver.saw(
                GivenSaw.builder(name, SawKind.MITRE_SAW).kerf(Length.ofMm(2.5)).build());
    }
}
