package borderwright.app.job;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.garden.given.GardenDocument;
import borderwright.engine.plan.PlanStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanJobTest {
    private static final Path EXAMPLE = Path.of("..", "examples", "patio-planter.yaml");

    private static GardenDocument document() throws IOException {
        DocumentAnswer answer = GardenReader.read(Files.readAllBytes(EXAMPLE));
        return ((DocumentAnswer.Sound) answer).document();
    }

    private static PlanOrder order(GardenDocument document, long work) {
        return new PlanOrder(document, work, Optional.empty(), Optional.empty());
    }

    private static List<PlanStage> stages(List<JobStep> steps, int design) {
        return steps.stream()
                .filter(JobStep.Planning.class::isInstance)
                .map(JobStep.Planning.class::cast)
                .filter(step -> step.design() == design)
                .map(JobStep.Planning::stage)
                .toList();
    }

    @Test
    void stepsOfEachDesignComeInOrderThenTheComparisonThenThePack() throws IOException {
        GardenDocument document = document();
        List<JobStep> steps = new ArrayList<>();

        JobResult result = PlanJob.run(order(document, 1_000), steps::add, new StopSignal());

        assertThat(document.variants()).isNotEmpty();
        for (int design = 0; design <= document.variants().size(); design++) {
            assertThat(stages(steps, design)).containsExactly(PlanStage.values());
        }
        assertThat(steps.subList(steps.size() - 2, steps.size()))
                .containsExactly(new JobStep.Comparing(), new JobStep.MakingPack());
        JobResult.Planned planned = (JobResult.Planned) result;
        assertThat(planned.comparison().rows()).hasSize(document.variants().size() + 1);
        assertThat(planned.files()).containsKeys("plan.json", "pack.pdf", "cutting.csv", "shopping.csv");
    }

    @ParameterizedTest
    @EnumSource
    void aJobThatIsStoppedAtAStageBeginsNoLaterOneAndGivesNothing(PlanStage at) throws IOException {
        GardenDocument alone = new GardenDocument(document().garden(), List.of());
        List<JobStep> steps = new ArrayList<>();
        StopSignal stop = new StopSignal();

        JobResult result = PlanJob.run(
                order(alone, Long.MAX_VALUE),
                step -> {
                    steps.add(step);
                    if (step.equals(new JobStep.Planning(0, at))) {
                        stop.raise();
                    }
                },
                stop);

        assertThat(result).isEqualTo(new JobResult.Stopped());
        assertThat(steps).last().isEqualTo(new JobStep.Planning(0, at));
    }

    @Test
    void aJobThatIsStoppedBeforeItStartsDoesNothing() throws IOException {
        StopSignal stop = new StopSignal();
        stop.raise();
        List<JobStep> steps = new ArrayList<>();

        JobResult result = PlanJob.run(order(document(), Long.MAX_VALUE), steps::add, stop);

        assertThat(result).isEqualTo(new JobResult.Stopped());
        assertThat(steps).isEmpty();
    }
}
