package borderwright.pack.sheets;

import borderwright.engine.plan.Plan;
import borderwright.engine.sequence.WorkDay;
import borderwright.engine.sequence.WorkTask;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Tasks and days.
 *
 * @param plan the plan
 */
public record WorkSheet(Plan plan) implements Sheet {
    @Override
    public String title() {
        return "Build sequence";
    }

    /** Slots that are worth a line: less than three minutes is a crumb of rounding. */
    public List<WorkDay.Slot> slots(WorkDay day) {
        return day.slots().stream()
                .filter(slot -> slot.personHours() >= 0.05 || slot.ends())
                .toList();
    }

    public WorkTask task(int number) {
        return plan.work().tasks().get(number - 1);
    }

    /** Numbers of the tasks that one waits for. */
    public String after(WorkTask task) {
        return task.after().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** A day's name and date. */
    public String day(WorkDay day) {
        return day.date().getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + day.date();
    }

    /** What can be done under a roof that day; else that the day moves. */
    public String rain(WorkDay day) {
        boolean outdoors =
                day.slots().stream().anyMatch(slot -> task(slot.task()).kind().weather() != WorkTask.Weather.ANY);
        if (!outdoors) {
            return "";
        }
        return day.whenItRains().isEmpty()
                ? "move the day on"
                : day.whenItRains().stream()
                        .map(number -> number + ". " + task(number).what())
                        .collect(Collectors.joining("; "));
    }
}
