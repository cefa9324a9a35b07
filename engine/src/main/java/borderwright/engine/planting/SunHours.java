package borderwright.engine.planting;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import java.time.LocalDate;
import java.time.temporal.JulianFields;
import java.util.ArrayList;
import java.util.List;

/**
 * Hours of possible sun at a place, between walls.
 *
 * @param latitudeDeg degrees, north positive
 * @param northRad direction of true north on the plan, radians anticlockwise from x
 * @param walls what throws shade
 */
record SunHours(double latitudeDeg, double northRad, List<Wall> walls) {
    private static final int STEP_MINUTES = 10;
    private static final int STEPS_A_DAY = 24 * 60 / STEP_MINUTES;
    private static final double HOURS_A_STEP = STEP_MINUTES / 60.0;

    /** The sun just over the horizon warms nothing and is hidden by anything: counted from 3 degrees (common practice). */
    private static final double LEAST_ELEVATION = StrictMath.toRadians(3);

    SunHours {
        walls = List.copyOf(walls);
    }

    /**
     * An upright wall.
     *
     * @param line where it stands on the plan
     * @param topMm level of its top, mm above the datum
     */
    record Wall(Segment line, double topMm) {}

    /**
     * Where the sun stands through a day, the same for every place in the garden.
     *
     * @param date the day
     * @param sun every ten minutes while it counts
     */
    record Day(LocalDate date, List<SolarPosition> sun) {
        Day {
            sun = List.copyOf(sun);
        }
    }

    Day day(LocalDate date) {
        double midnight = date.getLong(JulianFields.JULIAN_DAY) - 0.5;
        List<SolarPosition> sun = new ArrayList<>();
        for (int step = 0; step < STEPS_A_DAY; step++) {
            // At longitude 0 the clock is the sun's to within the equation of time, which moves hours, not their sum.
            SolarPosition position = SolarPosition.at(midnight + (step + 0.5) / STEPS_A_DAY, latitudeDeg, 0);
            if (position.elevation() >= LEAST_ELEVATION) {
                sun.add(position);
            }
        }
        return new Day(date, sun);
    }

    /** Hours on one day at a place, mm above the datum. */
    double hours(Day day, Point at, double levelMm) {
        return HOURS_A_STEP
                * day.sun().stream().filter(sun -> !isShaded(sun, at, levelMm)).count();
    }

    /** One day a week from the first day to the last. */
    static List<LocalDate> days(LocalDate from, LocalDate to) {
        List<LocalDate> days = new ArrayList<>();
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(7)) {
            days.add(day);
        }
        return days;
    }

    private boolean isShaded(SolarPosition sun, Point at, double levelMm) {
        double bearing = northRad - sun.azimuth();
        Point towards = new Point(StrictMath.cos(bearing), StrictMath.sin(bearing));
        double rise = StrictMath.tan(sun.elevation());
        for (Wall wall : walls) {
            Point along = wall.line().to().minus(wall.line().from());
            Point off = wall.line().from().minus(at);
            double across = towards.cross(along);
            if (Math.abs(across) < 1e-9) {
                continue;
            }
            double distance = off.cross(along) / across;
            double fraction = off.cross(towards) / across;
            if (distance > 0 && fraction >= 0 && fraction <= 1 && levelMm + distance * rise < wall.topMm()) {
                return true;
            }
        }
        return false;
    }
}
