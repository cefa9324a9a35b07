package borderwright.pack.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.util.ICalDate;
import borderwright.engine.plan.Plan;
import borderwright.engine.sequence.WorkDay;
import borderwright.engine.sequence.WorkTask;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One all-day event for each day of work: what is done, how long it takes, what wants dry weather, what to do in rain.
 *
 * <p>See docs/decisions/0064.
 */
public final class BuildCalendar {
    /** Lines hold at most 75 octets (RFC 5545, section 3.1); the library counts characters, and not the blank of a fold. */
    private static final int FOLD = 70;

    private BuildCalendar() {}

    /** The calendar of a plan that has days of work. */
    public static byte[] write(Plan plan) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Borderwright//Build sequence//EN");
        for (WorkDay day : plan.work().days()) {
            calendar.addEvent(event(plan, day));
        }
        StringWriter out = new StringWriter();
        try (ICalWriter writer = new ICalWriter(out, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(FOLD);
            writer.write(calendar);
        } catch (IOException e) {
            throw new UncheckedIOException("a calendar in memory could not be written", e);
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static VEvent event(Plan plan, WorkDay day) {
        Date midnight = Date.from(day.date().atStartOfDay(ZoneOffset.UTC).toInstant());
        VEvent event = new VEvent();
        event.setUid(day.date() + "@" + Integer.toHexString(plan.garden().name().hashCode()) + ".borderwright");
        event.setDateTimeStamp(midnight);
        // A date without a time has no zone: its parts are given as they stand.
        event.setDateStart(new ICalDate(
                new biweekly.util.DateTimeComponents(
                        day.date().getYear(),
                        day.date().getMonthValue(),
                        day.date().getDayOfMonth(),
                        0,
                        0,
                        0,
                        false),
                false));
        event.setSummary(plan.garden().name() + ": " + kinds(plan, day));
        event.setDescription(description(plan, day));
        return event;
    }

    private static String kinds(Plan plan, WorkDay day) {
        Set<String> kinds = new LinkedHashSet<>();
        for (WorkDay.Slot slot : day.slots()) {
            kinds.add(task(plan, slot.task()).kind().words());
        }
        return String.join(", ", kinds);
    }

    private static String description(Plan plan, WorkDay day) {
        List<String> lines = new ArrayList<>();
        boolean dry = false;
        for (WorkDay.Slot slot : day.slots()) {
            WorkTask task = task(plan, slot.task());
            dry |= task.kind().weather() == WorkTask.Weather.DRY;
            lines.add(task.number() + ". " + task.what() + (slot.ends() ? "" : " (goes on)") + ": "
                    + hours(slot.personHours()) + " person-hours");
        }
        if (dry) {
            lines.add("Needs a dry day and dry wood.");
        }
        if (!day.whenItRains().isEmpty()) {
            lines.add("When it rains: "
                    + String.join(
                            "; ",
                            day.whenItRains().stream()
                                    .map(n -> task(plan, n).what())
                                    .toList())
                    + ".");
        }
        return String.join("\n", lines);
    }

    private static WorkTask task(Plan plan, int number) {
        return plan.work().tasks().get(number - 1);
    }

    private static String hours(double hours) {
        return java.math.BigDecimal.valueOf(hours)
                .setScale(1, java.math.RoundingMode.HALF_UP)
                .toPlainString();
    }
}
