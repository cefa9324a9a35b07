package borderwright.app.job;

import borderwright.engine.effort.Budget;
import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.given.GardenDocument;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.PlanAnswer;
import borderwright.engine.plan.Planner;
import borderwright.pack.PackWriter;
import borderwright.pack.paper.PaperSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Plans a garden and its variants side by side, compares them, and makes the files of the pack. */
public final class PlanJob {
    private final PlanOrder order;
    private final Consumer<JobStep> listener;
    private final StopSignal stop;

    private PlanJob(PlanOrder order, Consumer<JobStep> listener, StopSignal stop) {
        this.order = order;
        this.listener = listener;
        this.stop = stop;
    }

    /**
     * Does the whole job, on the calling thread and those of the common pool.
     *
     * @param listener called with each step as it begins, one at a time but from several threads
     * @param stop asked at each step and by every search
     */
    public static JobResult run(PlanOrder order, Consumer<JobStep> listener, StopSignal stop) {
        try {
            return new PlanJob(order, listener, stop).run();
        } catch (CancellationException stopped) {
            return new JobResult.Stopped();
        }
    }

    private JobResult run() {
        List<Comparison.Design> designs = plan();
        if (designs.get(0).answer() instanceof PlanAnswer.NotPlanned notPlanned) {
            return new JobResult.NotPlanned(
                    GardenResolver.resolve(order.document().garden()).units(), notPlanned.reasons());
        }
        PlanAnswer.Planned planned = (PlanAnswer.Planned) designs.get(0).answer();
        UnitSystem units = planned.plan().garden().units();
        begin(new JobStep.Comparing());
        Comparison comparison = Comparison.of(designs);
        begin(new JobStep.MakingPack());
        Map<String, byte[]> files =
                PackWriter.write(planned.plan(), comparison, order.paper().orElse(usualPaper(units)), order.date());
        goOn();
        return new JobResult.Planned(planned.plan(), comparison, files);
    }

    /** Designs know nothing of each other, so they are planned side by side; the order of the list stays. */
    private List<Comparison.Design> plan() {
        List<GardenDocument.Variant> wanted = new ArrayList<>();
        wanted.add(new GardenDocument.Variant(
                "as given", List.of(), order.document().garden()));
        wanted.addAll(order.document().variants());
        return IntStream.range(0, wanted.size())
                .parallel()
                .mapToObj(i -> new Comparison.Design(
                        wanted.get(i).name(),
                        wanted.get(i).changed(),
                        plan(i, wanted.get(i).garden())))
                .toList();
    }

    private PlanAnswer plan(int design, GivenGarden garden) {
        Budget budget = new Budget(order.searchSteps(), stop::isRaised);
        WorkListener steps = step -> begin(new JobStep.Planning(design, step));
        // Only the garden as given is shown with its other ways to build.
        PlanAnswer answer = design == 0
                ? Planner.plan(GardenResolver.resolve(garden), budget, steps)
                : Planner.planVariant(GardenResolver.resolve(garden), budget, steps);
        // What a search had in hand when it was stopped is no answer.
        goOn();
        return answer;
    }

    private synchronized void begin(JobStep step) {
        goOn();
        listener.accept(step);
    }

    private void goOn() {
        if (stop.isRaised()) {
            throw new CancellationException("the job was stopped");
        }
    }

    private static PaperSize usualPaper(UnitSystem units) {
        return units == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER;
    }
}
