package borderwright.engine.sequence;

import borderwright.engine.garden.DaysWish;
import borderwright.engine.sequence.WorkDay.Slot;
import borderwright.engine.sequence.WorkTask.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lays tasks on days: each day, the ready task that must start soonest first, with as many people as are there and it takes; the
 * others rest or sweep. A task that is not done goes on the next day.
 */
final class CalendarMaker {
    /** A start so far off that nobody can work for a year is a mistake. */
    private static final int MOST_DAYS = 1500;

    private static final double DONE = 1e-9;

    private final List<WorkTask> tasks;
    private final List<CriticalPath.Times> times;
    private final DaysWish wish;
    private final double[] left;
    private final LocalDate[] endedOn;

    CalendarMaker(List<WorkTask> tasks, List<CriticalPath.Times> times, DaysWish wish) {
        this.tasks = tasks;
        this.times = times;
        this.wish = wish;
        this.left = tasks.stream().mapToDouble(WorkTask::personHours).toArray();
        this.endedOn = new LocalDate[tasks.size()];
    }

    /** The days on which something is done, until all is done or 1,500 days have passed. */
    List<WorkDay> from(LocalDate start) {
        List<WorkDay> days = new ArrayList<>();
        LocalDate day = start;
        for (int n = 0; n < MOST_DAYS && !allDone(); n++, day = day.plusDays(1)) {
            if (wish.canWork(day)) {
                List<Integer> rain = underARoof(day);
                List<Slot> slots = work(day);
                if (!slots.isEmpty()) {
                    days.add(new WorkDay(day, slots, rain));
                }
            }
        }
        return days;
    }

    boolean allDone() {
        for (LocalDate ended : endedOn) {
            if (ended == null) {
                return false;
            }
        }
        return true;
    }

    private List<Slot> work(LocalDate day) {
        List<Slot> slots = new ArrayList<>();
        double hours = wish.hoursOrHabit();
        Optional<Integer> next = next(day);
        while (next.isPresent() && hours > DONE) {
            int i = next.get();
            int people = Math.min(wish.people(), tasks.get(i).kind().mostPeople());
            double spent = Math.min(left[i] / people, hours);
            double personHours = spent * people;
            left[i] -= personHours;
            hours -= spent;
            boolean ends = left[i] <= DONE;
            if (ends) {
                endedOn[i] = day;
            }
            slots.add(new Slot(tasks.get(i).number(), personHours, ends));
            next = next(day);
        }
        return slots;
    }

    private Optional<Integer> next(LocalDate day) {
        return ready(day).stream()
                .min(Comparator.comparing((Integer i) -> times.get(i).lateStart())
                        .thenComparing(i -> i));
    }

    private List<Integer> underARoof(LocalDate day) {
        return ready(day).stream()
                .filter(i -> tasks.get(i).kind().weather() == Weather.ANY)
                .map(i -> tasks.get(i).number())
                .toList();
    }

    private List<Integer> ready(LocalDate day) {
        List<Integer> ready = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            if (endedOn[i] == null && isReady(tasks.get(i), day)) {
                ready.add(i);
            }
        }
        return ready;
    }

    private boolean isReady(WorkTask task, LocalDate day) {
        for (int number : task.after()) {
            LocalDate ended = endedOn[number - 1];
            if (ended == null
                    || ended.plusDays(tasks.get(number - 1).waitDays()).isAfter(day)) {
                return false;
            }
        }
        return true;
    }
}
