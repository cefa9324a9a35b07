package borderwright.engine.sequence;

import java.time.LocalDate;
import java.util.List;

/**
 * A day of work.
 *
 * @param date the day
 * @param slots what is done, in order
 * @param whenItRains numbers of tasks that could be done under a roof instead, ready that morning; none where there are none
 */
public record WorkDay(LocalDate date, List<Slot> slots, List<Integer> whenItRains) {
    public WorkDay {
        slots = List.copyOf(slots);
        whenItRains = List.copyOf(whenItRains);
    }

    /**
     * Part of a task.
     *
     * @param task its number
     * @param personHours hours of one person spent on it that day
     * @param ends whether it is done then
     */
    public record Slot(int task, double personHours, boolean ends) {}
}
