package borderwright.engine.garden;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When the work can be done, by how many, and how fast they are.
 *
 * @param start first day of work; nothing where the plan has no calendar
 * @param workDays weekdays of work, at least one
 * @param away dates without work
 * @param hours of work in a day
 * @param people who work
 * @param deliveryDays from ordering to delivery
 * @param pace how fast one person works
 */
public record WorkSpec(
        Optional<LocalDate> start,
        List<DayOfWeek> workDays,
        List<LocalDate> away,
        double hours,
        int people,
        int deliveryDays,
        Pace pace) {
    public WorkSpec {
        workDays = List.copyOf(workDays);
        away = List.copyOf(away);
    }

    /** Whether work can be done on a day. */
    public boolean canWork(LocalDate day) {
        return workDays.contains(day.getDayOfWeek()) && !away.contains(day);
    }

    /**
     * How fast one person works.
     *
     * @param bench with wood
     * @param site with soil, sheets and brush
     */
    public record Pace(BenchPace bench, SitePace site) {
        public double cutMinutes() {
            return bench.cutMinutes();
        }

        public double setUpMinutes() {
            return bench.setUpMinutes();
        }

        public double screwMinutes() {
            return bench.screwMinutes();
        }

        public double placeMinutes() {
            return bench.placeMinutes();
        }

        public double turfM2AnHour() {
            return site.turfM2AnHour();
        }

        public double digHoursForM3() {
            return site.digHoursForM3();
        }

        public double gravelHoursForM3() {
            return site.gravelHoursForM3();
        }

        public double sheetM2AnHour() {
            return site.sheetM2AnHour();
        }

        public double fillHoursForM3() {
            return site.fillHoursForM3();
        }

        public double brushM2AnHour() {
            return site.brushM2AnHour();
        }
    }

    /** Minutes to mark and cut a piece at a stop, to set a saw up, to drive a screw, to place a piece. */
    public record BenchPace(double cutMinutes, double setUpMinutes, double screwMinutes, double placeMinutes) {}

    /** Square metres of turf, sheet and brushwork in an hour, and hours to dig, gravel and fill one cubic metre. */
    public record SitePace(
            double turfM2AnHour,
            double digHoursForM3,
            double gravelHoursForM3,
            double sheetM2AnHour,
            double fillHoursForM3,
            double brushM2AnHour) {}
}
