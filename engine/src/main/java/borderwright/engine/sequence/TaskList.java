package borderwright.engine.sequence;

import borderwright.engine.message.Message;
import borderwright.engine.sequence.WorkTask.Kind;
import java.util.ArrayList;
import java.util.List;

/** Tasks as they are written down, each after those that it waits for. */
final class TaskList {
    private final List<Draft> drafts = new ArrayList<>();
    private final int boxes;

    /**
     * @param boxes how many boxes a task for the whole garden is done to
     */
    TaskList(int boxes) {
        this.boxes = boxes;
    }

    /** A task before its times are known. */
    record Draft(Kind kind, List<String> boxes, Message what, double personHours, List<Integer> after, int waitDays) {
        Draft {
            boxes = List.copyOf(boxes);
            after = List.copyOf(after);
        }
    }

    /** Adds a task and gives its number; numbers of 0 among those it waits for stand for none. */
    int add(Kind kind, List<String> boxes, Message what, double personHours, int waitDays, int... after) {
        List<Integer> waitsFor = new ArrayList<>();
        for (int number : after) {
            if (number > 0 && !waitsFor.contains(number)) {
                waitsFor.add(number);
            }
        }
        drafts.add(new Draft(kind, boxes, what, personHours, waitsFor, waitDays));
        return drafts.size();
    }

    /** As {@link #add}, but where there is nothing to do the number given stands for it. */
    int addIfWork(int otherwise, Kind kind, List<String> boxes, Message what, double personHours, int... after) {
        return personHours > 0 ? add(kind, boxes, what, personHours, 0, after) : otherwise;
    }

    /** Times in days for so many people who work so many hours a day; waits count whole. */
    CriticalPath times(int people, double hoursADay) {
        List<CriticalPath.Activity> activities = new ArrayList<>();
        for (Draft draft : drafts) {
            int hands = Math.min(people, mostPeople(draft));
            double days = draft.personHours() / hands / hoursADay + draft.waitDays();
            activities.add(new CriticalPath.Activity(
                    days, draft.after().stream().map(number -> number - 1).toList()));
        }
        return CriticalPath.of(activities);
    }

    private int mostPeople(Draft draft) {
        return draft.kind()
                .mostPeople(draft.boxes().isEmpty() ? boxes : draft.boxes().size());
    }

    List<WorkTask> tasks(CriticalPath path) {
        List<WorkTask> tasks = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            CriticalPath.Times times = path.times().get(i);
            tasks.add(new WorkTask.Builder(i + 1, draft.kind(), draft.what())
                    .boxes(draft.boxes())
                    .hours(draft.personHours(), mostPeople(draft))
                    .after(draft.after(), draft.waitDays())
                    .times(times)
                    .build());
        }
        return tasks;
    }
}
