package borderwright.engine.sequence;

import java.util.List;

/**
 * Days of work.
 *
 * @param tasks in an order in which they can be worked
 * @param days the calendar; empty without a start date
 * @param people how many work
 * @param shortestDays working days and waits along the critical path
 * @param paceFactor what cutting and building take against the paces said, from the first planter timed; 1 before
 * @param notes what a person should know, each a sentence with numbers
 */
public record WorkPlan(
        List<WorkTask> tasks,
        List<WorkDay> days,
        int people,
        double shortestDays,
        double paceFactor,
        List<String> notes) {
    public WorkPlan {
        tasks = List.copyOf(tasks);
        days = List.copyOf(days);
        notes = List.copyOf(notes);
    }

    public double personHours() {
        return tasks.stream().mapToDouble(WorkTask::personHours).sum();
    }
}
