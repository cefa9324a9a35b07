package borderwright.engine.sequence;

import borderwright.engine.garden.WorkSpec;
import borderwright.engine.sequence.WorkDay.Slot;
import borderwright.engine.sequence.WorkTask.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays tasks on days: at each moment the ready task that must start soonest has as many people as are there and it takes, the next
 * has those who are left over, and so on, until one is done or the day is over. A task that is not done goes on the next day.
 *
 * <p>See docs/decisions/0063.
 */
final class CalendarMaker {
    /** A start so far off that nobody can work for a year is a mistake. */
    private static final int MOST_DAYS = 1500;

    private static final double DONE = 1e-9;

    private final List<WorkTask> tasks;
    private final List<CriticalPath.Times> times;
    private final WorkSpec spec;
    private final double[] left;
    private final LocalDate[] endedOn;

    CalendarMaker(List<WorkTask> tasks, List<CriticalPath.Times> times, WorkSpec spec) {
        this.tasks = tasks;
        this.times = times;
        this.spec = spec;
        this.left = tasks.stream().mapToDouble(WorkTask::personHours).toArray();
        this.endedOn = new LocalDate[tasks.size()];
    }

    /** The days on which something is done, until all is done or 1,500 days have passed. */
    List<WorkDay> from(LocalDate start) {
        List<WorkDay> days = new ArrayList<>();
        LocalDate day = start;
        for (int n = 0; n < MOST_DAYS && !allDone(); n++, day = day.plusDays(1)) {
            if (spec.canWork(day)) {
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
        Map<Integer, Double> spent = new LinkedHashMap<>();
        double hours = spec.hours();
        Map<Integer, Integer> hands = hands(day);
        while (!hands.isEmpty() && hours > DONE) {
            double step = hours;
            for (Map.Entry<Integer, Integer> task : hands.entrySet()) {
                step = Math.min(step, left[task.getKey()] / task.getValue());
            }
            for (Map.Entry<Integer, Integer> task : hands.entrySet()) {
                int i = task.getKey();
                double personHours = step * task.getValue();
                left[i] -= personHours;
                spent.merge(i, personHours, Double::sum);
                if (left[i] <= DONE) {
                    endedOn[i] = day;
                }
            }
            hours -= step;
            hands = hands(day);
        }
        List<Slot> slots = new ArrayList<>();
        spent.forEach((i, personHours) -> {
            boolean ends = day.equals(endedOn[i]);
            slots.add(new Slot(tasks.get(i).number(), personHours, ends));
        });
        return slots;
    }

    /** Who works on what: people by the index of their task, the soonest needed first. */
    private Map<Integer, Integer> hands(LocalDate day) {
        List<Integer> ready = ready(day);
        ready.sort(Comparator.comparing((Integer i) -> times.get(i).lateStart()).thenComparing(i -> i));
        Map<Integer, Integer> hands = new LinkedHashMap<>();
        int free = spec.people();
        for (int i : ready) {
            int people = Math.min(free, tasks.get(i).mostPeople());
            if (people > 0) {
                hands.put(i, people);
                free -= people;
            }
        }
        return hands;
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
