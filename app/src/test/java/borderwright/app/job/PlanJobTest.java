package borderwright.app.job;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.garden.given.GardenDocument;
import borderwright.engine.message.Message;
import borderwright.engine.plan.PlanStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

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
                .flatMap(step -> step.step().values().stream())
                .filter(PlanStage.class::isInstance)
                .map(PlanStage.class::cast)
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
                    if (step.equals(new JobStep.Planning(0, at.begins()))) {
                        stop.raise();
                    }
                },
                stop);

        assertThat(result).isEqualTo(new JobResult.Stopped());
        assertThat(steps).last().isEqualTo(new JobStep.Planning(0, at.begins()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"seeking-bracing", "settling-shape", "checking-box"})
    void aJobThatIsStoppedWithinAStageBeginsNoLaterStepAndGivesNothing(String key) throws IOException {
        List<JobStep> steps = new ArrayList<>();
        StopSignal stop = new StopSignal();

        JobResult result = PlanJob.run(
                order(document(), Long.MAX_VALUE),
                step -> {
                    steps.add(step);
                    if (step instanceof JobStep.Planning planning
                            && planning.step().key().equals(key)) {
                        stop.raise();
                    }
                },
                stop);

        assertThat(result).isEqualTo(new JobResult.Stopped());
        assertThat(((JobStep.Planning) steps.get(steps.size() - 1)).step().key())
                .isEqualTo(key);
    }

    @Test
    void everyBoxIsHeardOfByItsNumber() throws IOException {
        List<JobStep> steps = new ArrayList<>();

        PlanJob.run(order(new GardenDocument(document().garden(), List.of()), 1_000), steps::add, new StopSignal());

        List<List<Object>> checked = steps.stream()
                .filter(JobStep.Planning.class::isInstance)
                .map(step -> ((JobStep.Planning) step).step())
                .filter(step -> step.key().equals("checking-box"))
                .map(Message::values)
                .toList();
        assertThat(checked)
                .isNotEmpty()
                .allSatisfy(values -> assertThat(values.get(2)).isEqualTo(checked.size()));
        assertThat(checked)
                .extracting(values -> values.get(1))
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, checked.size()).boxed().toList());
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
