package borderwright.engine.sequence;

import java.util.ArrayList;
import java.util.List;

/**
 * Days of work.
 *
 * @param tasks in an order in which they can be worked
 * @param days the calendar; empty without a start date
 * @param people how many work
 * @param shortestDays working days and waits along the critical path
 * @param cutFactor what cutting takes against the paces said, from the first planter timed; 1 before
 * @param buildFactor the same of building
 * @param notes what a person should know, each a sentence with numbers
 */
public record WorkPlan(
        List<WorkTask> tasks,
        List<WorkDay> days,
        int people,
        double shortestDays,
        double cutFactor,
        double buildFactor,
        List<String> notes) {
    public WorkPlan {
        tasks = List.copyOf(tasks);
        days = List.copyOf(days);
        notes = List.copyOf(notes);
    }

    /** The same plan with more to know. */
    public WorkPlan withNotes(List<String> more) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(more);
        return new WorkPlan(tasks, days, people, shortestDays, cutFactor, buildFactor, all);
    }

    /** Whether the first planter was timed. */
    public boolean isTimed() {
        return cutFactor != 1 || buildFactor != 1;
    }

    public double personHours() {
        return tasks.stream().mapToDouble(WorkTask::personHours).sum();
    }
}
