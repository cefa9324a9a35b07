package borderwright.engine.sequence;

import java.util.List;

/**
 * One task.
 *
 * @param number from 1, in an order in which it can be worked
 * @param kind what is done
 * @param boxes boxes that it is done to; empty for the whole garden
 * @param what in words
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
        String what,
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

    /** What is done: how many can work on it at once, and what weather it wants. */
    public enum Kind {
        ORDER("order", 1, Weather.ANY),
        PEGS("set pegs", 2, Weather.NO_DOWNPOUR),
        DIG("strip and dig", 6, Weather.NO_DOWNPOUR),
        BED("membrane and gravel", 4, Weather.NO_DOWNPOUR),
        CUT("cut", 2, Weather.ANY),
        BRUSH("brush on", 2, Weather.DRY),
        BUILD("build", 3, Weather.NO_DOWNPOUR),
        LINE("line", 2, Weather.NO_DOWNPOUR),
        FILL("fill", 6, Weather.NO_DOWNPOUR),
        PLANT("plant", 4, Weather.NO_DOWNPOUR);

        private final String words;
        private final int mostPeople;
        private final Weather weather;

        Kind(String words, int mostPeople, Weather weather) {
            this.words = words;
            this.mostPeople = mostPeople;
            this.weather = weather;
        }

        public String words() {
            return words;
        }

        /**
         * People who can work on it without being in each other's way: at one box, or where it is done in one place, there
         * (common practice).
         *
         * @param boxes how many boxes it is done to
         */
        int mostPeople(int boxes) {
            boolean inOnePlace = this == ORDER || this == PEGS || this == CUT || this == BRUSH;
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
