package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.effort.Budget;
import borderwright.engine.floors.FloorOption;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.measure.Length;
import borderwright.engine.plan.Plan;
import borderwright.engine.plan.PlanAnswer;
import borderwright.engine.plan.Planner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Floors are compared by whole baskets: that of the garden as requested, and that of one other floor planned as a garden. */
class FloorBasketsTest {
    private static Garden patio() throws IOException {
        byte[] document = Files.readAllBytes(Path.of("..", "examples", "patio-planter.yaml"));
        return GardenResolver.resolve(
                ((DocumentAnswer.Sound) GardenReader.read(document)).document().garden());
    }

    private static Plan plan(Garden garden) {
        return ((PlanAnswer.Planned) Planner.plan(garden, Budget.ofSteps(4_000_000))).plan();
    }

    @Test
    void theOtherFloorCostsWhatAGardenBuiltSoCosts() throws IOException {
        Garden garden = patio();
        Plan plan = plan(garden);
        List<FloorOption> rows = plan.site().platforms();
        assertThat(rows.stream().filter(FloorOption::asGiven))
                .hasSize(1)
                .allSatisfy(row -> assertThat(row.basket())
                        .isEqualTo(plan.totals().costs().inAll())
                        .isPresent());
        List<FloorOption> others = rows.stream()
                .filter(row -> !row.asGiven() && row.basket().isPresent())
                .toList();
        assertThat(others).hasSize(1);
        FloorOption other = others.get(0);
        // It is the one that the cheapest prices favour.
        assertThat(rows.stream().filter(row -> !row.asGiven()))
                .allMatch(row -> row.total().compareTo(other.total()) >= 0);
        Plan floored = plan(garden.withRuns(garden.runs().stream()
                .map(run -> run.withPlatform(Length.ofMm(other.heightMm())))
                .toList()));
        assertThat(floored.basket().proven()).isTrue();
        assertThat(other.basket()).isEqualTo(floored.totals().costs().inAll()).isPresent();
        assertThat(other.unmet()).hasSameSizeAs(floored.shortfalls());
    }
}
