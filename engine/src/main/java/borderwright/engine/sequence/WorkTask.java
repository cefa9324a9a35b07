package borderwright.engine.sequence;

import borderwright.engine.message.Message;
import java.util.List;

/**
 * One task.
 *
 * @param number from 1, in an order in which it can be worked
 * @param kind what is done
 * @param boxes boxes that it is done to; empty for the whole garden
 * @param what what is to be done
 * @param personHours hours of one person
 * @param mostPeople who can work on it at once without being in each other's way, all its boxes together
 * @param after numbers of the tasks that it waits for
 * @param waitDays whole days to wait after it: delivery, drying
 * @param critical whether a day lost here is lost at the end
 * @param slackDays days that it may be late
 */
public record WorkTask(
        int number,
        Kind kind,
        List<String> boxes,
        Message what,
        double personHours,
        int mostPeople,
        List<Integer> after,
        int waitDays,
        boolean critical,
        double slackDays) {
    public WorkTask {
        boxes = List.copyOf(boxes);
        after = List.copyOf(after);
    }

    /** A task, set part by part. */
    static final class Builder {
        private final int number;
        private final Kind kind;
        private final Message what;
        private List<String> boxes = List.of();
        private double personHours;
        private int mostPeople = 1;
        private List<Integer> after = List.of();
        private int waitDays;
        private boolean critical;
        private double slackDays;

        Builder(int number, Kind kind, Message what) {
            this.number = number;
            this.kind = kind;
            this.what = what;
        }

        Builder boxes(List<String> names) {
            boxes = names;
            return this;
        }

        Builder hours(double ofOnePerson, int peopleAtOnce) {
            personHours = ofOnePerson;
            mostPeople = peopleAtOnce;
            return this;
        }

        /** The tasks that it waits for, and the days to wait after it. */
        Builder after(List<Integer> numbers, int thenDays) {
            after = numbers;
            waitDays = thenDays;
            return this;
        }

        Builder times(CriticalPath.Times times) {
            critical = times.isCritical();
            slackDays = Math.max(0, times.slack());
            return this;
        }

        WorkTask build() {
            return new WorkTask(
                    number, kind, boxes, what, personHours, mostPeople, after, waitDays, critical, slackDays);
        }
    }

    /** What is done: how many can work on it at once, and what weather it wants. */
    public enum Kind {
        ORDER(1, Weather.ANY),
        SET_OUT(2, Weather.NO_DOWNPOUR),
        DIG(6, Weather.NO_DOWNPOUR),
        BED(4, Weather.NO_DOWNPOUR),
        CUT(2, Weather.ANY),
        BRUSH(2, Weather.DRY),
        BUILD(3, Weather.NO_DOWNPOUR),
        LINE(2, Weather.NO_DOWNPOUR),
        FILL(6, Weather.NO_DOWNPOUR),
        PLANT(4, Weather.NO_DOWNPOUR);

        private final int mostPeople;
        private final Weather weather;

        Kind(int mostPeople, Weather weather) {
            this.mostPeople = mostPeople;
            this.weather = weather;
        }

        /** In a word or two. */
        public Message inWords() {
            return SequenceMessage.TASK_KIND.of(this);
        }

        /**
         * People who can work on it without being in each other's way: at one box, or where it is done in one place, there
         * (common practice).
         *
         * @param boxes how many boxes it is done to
         */
        int mostPeople(int boxes) {
            boolean inOnePlace = this == ORDER || this == SET_OUT || this == CUT || this == BRUSH;
            return inOnePlace ? mostPeople : mostPeople * Math.max(1, boxes);
        }

        public Weather weather() {
            return weather;
        }
    }

    /** What weather a task wants. */
    public enum Weather {
        /** Under a roof or at a desk. */
        ANY,
        /** Outdoors: not in heavy rain. */
        NO_DOWNPOUR,
        /** Dry wood and no rain for a day: finish and glue. */
        DRY
    }
}
