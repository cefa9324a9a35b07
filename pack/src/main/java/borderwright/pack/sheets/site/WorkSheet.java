package borderwright.pack.sheets.site;

import borderwright.engine.plan.Plan;
import borderwright.engine.sequence.WorkDay;
import borderwright.engine.sequence.WorkTask;
import borderwright.pack.bench.BenchViews;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.time.format.TextStyle;
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

    @Override
    public Part part() {
        return Part.GARDEN;
    }

    /** Whether coats are brushed on while a box is built, on sides that no brush reaches later. */
    public boolean brushesBeforeMoving() {
        return plan.boxes().stream()
                .anyMatch(box -> BenchViews.around(plan, box).areSidesBrushedFirst());
    }

    /** Numbers of the tasks that one waits for. */
    public String after(WorkTask task) {
        return task.after().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** A day's name and date. */
    public String day(WorkDay day) {
        return day.date().getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + day.date();
    }

    /** What to do that day when it rains. */
    public String rain(WorkDay day, PrintedFigures f) {
        return plan.work().inRain(day).map(f::text).orElse("");
    }
}
