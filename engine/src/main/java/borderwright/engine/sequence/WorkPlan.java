package borderwright.engine.sequence;

import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Days of work.
 *
 * @param tasks in an order in which they can be worked
 * @param days the calendar; empty without a start date
 * @param people how many work
 * @param shortestDays working days and waits along the critical path
 * @param cutFactor what cutting takes against the pace given, from the first planter timed; 1 before
 * @param buildFactor the same of building
 * @param notes what a person should know
 */
public record WorkPlan(
        List<WorkTask> tasks,
        List<WorkDay> days,
        int people,
        double shortestDays,
        double cutFactor,
        double buildFactor,
        List<Message> notes) {
    private static final double LEAST_SHOWN_HOURS = 0.05;

    public WorkPlan {
        tasks = List.copyOf(tasks);
        days = List.copyOf(days);
        notes = List.copyOf(notes);
    }

    /** The same plan with more to know. */
    public WorkPlan withNotes(List<Message> more) {
        List<Message> all = new ArrayList<>(notes);
        all.addAll(more);
        return new WorkPlan(tasks, days, people, shortestDays, cutFactor, buildFactor, all);
    }

    /** Whether the first planter was timed. */
    public boolean isTimed() {
        return cutFactor != 1 || buildFactor != 1;
    }

    /** A task by its number. */
    public WorkTask task(int number) {
        return tasks.get(number - 1);
    }

    /** What is done on a day and is worth a line: less than three minutes is a crumb of rounding. */
    public List<WorkDay.Slot> shown(WorkDay day) {
        return day.slots().stream()
                .filter(slot -> slot.personHours() >= LEAST_SHOWN_HOURS || slot.ends())
                .toList();
    }

    /** What to do on a day with work outdoors when it rains: tasks under a roof, else that the day moves. */
    public Optional<Message> inRain(WorkDay day) {
        boolean outdoors =
                day.slots().stream().anyMatch(slot -> task(slot.task()).kind().weather() != WorkTask.Weather.ANY);
        if (!outdoors) {
            return Optional.empty();
        }
        List<Message> tasks = day.whenItRains().stream()
                .map(number ->
                        SequenceMessage.NUMBERED_TASK.of(number, task(number).what()))
                .toList();
        return Optional.of(
                tasks.isEmpty()
                        ? SequenceMessage.RAIN_MOVES_THE_DAY.of()
                        : SequenceMessage.RAIN_LEAVES_TASKS.of(tasks));
    }

    /** A day's title in a calendar. */
    public Message title(String garden, WorkDay day) {
        return SequenceMessage.DAY_SUMMARY.of(
                garden,
                day.slots().stream()
                        .map(slot -> task(slot.task()).kind())
                        .distinct()
                        .map(WorkTask.Kind::inWords)
                        .toList());
    }

    /** A day's text in a calendar, line by line. */
    public List<Message> description(WorkDay day) {
        List<Message> lines = new ArrayList<>();
        for (WorkDay.Slot slot : day.slots()) {
            lines.add(SequenceMessage.DAY_TASK.of(
                    slot.task(),
                    task(slot.task()).what(),
                    slot.ends() ? SequenceMessage.State.ENDS : SequenceMessage.State.GOES_ON,
                    slot.personHours()));
        }
        if (day.slots().stream().anyMatch(slot -> task(slot.task()).kind().weather() == WorkTask.Weather.DRY)) {
            lines.add(SequenceMessage.DAY_NEEDS_DRY_WEATHER.of());
        }
        if (!day.whenItRains().isEmpty()) {
            lines.add(SequenceMessage.DAY_IN_RAIN.of(day.whenItRains().stream()
                    .map(number -> task(number).what())
                    .toList()));
        }
        return lines;
    }

    public double personHours() {
        return tasks.stream().mapToDouble(WorkTask::personHours).sum();
    }
}
