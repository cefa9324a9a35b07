package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** When the work can be done, by how many, and how fast they are. */
@Described("when the work can be done, by how many, and how fast they are")
public record GivenDays(
        @Described(value = "first day of work; with it the plan has a calendar", example = "2026-04-03") @Nullable
        LocalDate start,

        @Described(value = "weekdays on which you can work; Saturday and Sunday when left out")
        List<DayOfWeek> workDays,

        @Described("dates on which you cannot") List<LocalDate> away,

        @Described(value = "hours of work in a day", otherwise = "6", atLeast = 0.5, atMost = 16) @Nullable
        Double hours,

        @Described(value = "people besides yourself", otherwise = "0", atLeast = 0, atMost = 100) @Nullable
        Integer helpers,

        @Described(value = "days from ordering to delivery", otherwise = "5", atLeast = 0, atMost = 120) @Nullable
        Integer delivery,

        @Described(value = "your own pace", otherwise = "that of careful amateurs") @Nullable
        GivenPace pace) {
    public GivenDays {
        workDays = List.copyOf(workDays);
        away = List.copyOf(away);
    }

    /** How fast one person works. */
    @Described("how fast one person works; time one planter and write what it took")
    public record GivenPace(
            @Described(value = "minutes to mark and cut one piece at a stop", otherwise = "2", atLeast = 0.1) @Nullable
            Double cut,

            @Described(value = "minutes to set a saw up", otherwise = "6", atLeast = 0) @Nullable
            Double setUp,

            @Described(value = "minutes to drill for and drive one screw", otherwise = "0.5", atLeast = 0.05) @Nullable
            Double screw,

            @Described(value = "minutes to place one piece", otherwise = "3", atLeast = 0.1) @Nullable
            Double place,

            @Described(value = "square metres of turf stripped in an hour", otherwise = "3", atLeast = 0.1) @Nullable
            Double turf,

            @Described(
                    value = "hours to dig one cubic metre, as it lies, and wheel it away",
                    otherwise = "2.5",
                    atLeast = 0.1)
            @Nullable
            Double dig,

            @Described(value = "hours to lay and tamp one cubic metre of gravel", otherwise = "1.4", atLeast = 0.1)
            @Nullable
            Double gravel,

            @Described(value = "square metres of membrane or liner laid in an hour", otherwise = "12", atLeast = 0.1)
            @Nullable
            Double sheet,

            @Described(value = "hours to wheel in and level one cubic metre of soil", otherwise = "1.5", atLeast = 0.1)
            @Nullable
            Double fill,

            @Described(value = "square metres brushed in an hour", otherwise = "8", atLeast = 0.1) @Nullable
            Double brush) {
        /** Begins with what is needed; what is not given is absent. */
        public static Builder builder() {
            return new Builder();
        }

        /** Gives it key by key. */
        public static final class Builder {
            private @Nullable Double cut;
            private @Nullable Double setUp;
            private @Nullable Double screw;
            private @Nullable Double place;
            private @Nullable Double turf;
            private @Nullable Double dig;
            private @Nullable Double gravel;
            private @Nullable Double sheet;
            private @Nullable Double fill;
            private @Nullable Double brush;

            private Builder() {}

            public Builder cut(@Nullable Double given) {
                cut = given;
                return this;
            }

            public Builder setUp(@Nullable Double given) {
                setUp = given;
                return this;
            }

            public Builder screw(@Nullable Double given) {
                screw = given;
                return this;
            }

            public Builder place(@Nullable Double given) {
                place = given;
                return this;
            }

            public Builder turf(@Nullable Double given) {
                turf = given;
                return this;
            }

            public Builder dig(@Nullable Double given) {
                dig = given;
                return this;
            }

            public Builder gravel(@Nullable Double given) {
                gravel = given;
                return this;
            }

            public Builder sheet(@Nullable Double given) {
                sheet = given;
                return this;
            }

            public Builder fill(@Nullable Double given) {
                fill = given;
                return this;
            }

            public Builder brush(@Nullable Double given) {
                brush = given;
                return this;
            }

            public GivenPace build() {
                return new GivenPace(cut, setUp, screw, place, turf, dig, gravel, sheet, fill, brush);
            }
        }
    }

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder() {
        return new Builder();
    }

    /** Gives it key by key. */
    public static final class Builder {
        private @Nullable LocalDate start;
        private List<DayOfWeek> workDays = List.of();
        private List<LocalDate> away = List.of();
        private @Nullable Double hours;
        private @Nullable Integer helpers;
        private @Nullable Integer delivery;
        private @Nullable GivenPace pace;

        private Builder() {}

        public Builder start(@Nullable LocalDate given) {
            start = given;
            return this;
        }

        public Builder workDays(List<DayOfWeek> given) {
            workDays = given;
            return this;
        }

        public Builder away(List<LocalDate> given) {
            away = given;
            return this;
        }

        public Builder hours(@Nullable Double given) {
            hours = given;
            return this;
        }

        public Builder helpers(@Nullable Integer given) {
            helpers = given;
            return this;
        }

        public Builder delivery(@Nullable Integer given) {
            delivery = given;
            return this;
        }

        public Builder pace(@Nullable GivenPace given) {
            pace = given;
            return this;
        }

        public GivenDays build() {
            return new GivenDays(start, workDays, away, hours, helpers, delivery, pace);
        }
    }
}
