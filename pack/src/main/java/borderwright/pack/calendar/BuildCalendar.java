package borderwright.pack.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.util.ICalDate;
import borderwright.engine.message.Sentences;
import borderwright.engine.plan.Plan;
import borderwright.engine.sequence.WorkDay;
import borderwright.pack.language.Language;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Date;

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
        Sentences sentences = Language.english().in(plan.garden().units());
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Borderwright//Build sequence//EN");
        for (WorkDay day : plan.work().days()) {
            calendar.addEvent(event(plan, day, sentences));
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

    private static VEvent event(Plan plan, WorkDay day, Sentences sentences) {
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
        event.setSummary(sentences.text(plan.work().title(plan.garden().name(), day)));
        event.setDescription(String.join(
                "\n", plan.work().description(day).stream().map(sentences::text).toList()));
        return event;
    }
}
