package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Described;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** When the work can be done, by how many, and how fast they are. */
@Described("when the work can be done, by how many, and how fast they are")
public record DaysWish(
        @Described(value = "first day of work; with it the plan has a calendar", example = "2026-04-03") @Nullable
        LocalDate start,

        @Described(value = "weekdays on which you can work; Saturday and Sunday when left out")
        List<DayOfWeek> free,

        @Described("dates on which you cannot") List<LocalDate> away,

        @Described(value = "hours of work in a day", otherwise = "6", atLeast = 0.5, atMost = 16) @Nullable
        Double hours,

        @Described(value = "people besides yourself", otherwise = "0", atLeast = 0, atMost = 100) @Nullable
        Integer helpers,

        @Described(value = "days from ordering to delivery", otherwise = "5", atLeast = 0, atMost = 120) @Nullable
        Integer delivery,

        @Described(value = "your own pace", otherwise = "habits of careful amateurs") @Nullable
        PaceWish pace) {
    public DaysWish {
        free = List.copyOf(free);
        away = List.copyOf(away);
    }

    /** Habits when nothing is said. */
    public static final DaysWish HABIT = new DaysWish(null, List.of(), List.of(), null, null, null, null);

    /** Whether work can be done on a day. */
    public boolean canWork(LocalDate day) {
        List<DayOfWeek> weekdays = free.isEmpty() ? List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY) : free;
        return weekdays.contains(day.getDayOfWeek()) && !away.contains(day);
    }

    public double hoursOrHabit() {
        return hours == null ? 6 : hours;
    }

    public int people() {
        return 1 + (helpers == null ? 0 : helpers);
    }

    public int deliveryDays() {
        return delivery == null ? 5 : delivery;
    }

    public PaceWish paceOrHabit() {
        return pace == null ? PaceWish.HABIT : pace;
    }

    /** How fast one person works. */
    @Described("how fast one person works; time one planter and write what it took")
    public record PaceWish(
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
        /** Habits (common practice, no source: published rates differ by a factor of two). */
        static final PaceWish HABIT = new PaceWish(null, null, null, null, null, null, null, null, null, null);

        public double cutMinutes() {
            return or(cut, 2);
        }

        public double setUpMinutes() {
            return or(setUp, 6);
        }

        public double screwMinutes() {
            return or(screw, 0.5);
        }

        public double placeMinutes() {
            return or(place, 3);
        }

        public double turfM2AnHour() {
            return or(turf, 3);
        }

        public double digHoursForM3() {
            return or(dig, 2.5);
        }

        public double gravelHoursForM3() {
            return or(gravel, 1.4);
        }

        public double sheetM2AnHour() {
            return or(sheet, 12);
        }

        public double fillHoursForM3() {
            return or(fill, 1.5);
        }

        public double brushM2AnHour() {
            return or(brush, 8);
        }

        private static double or(@Nullable Double said, double habit) {
            return said == null ? habit : said;
        }
    }
}
