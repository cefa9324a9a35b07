/**
 * The days of work as a calendar file.
 *
 * <p>Takes {@link borderwright.engine.sequence.WorkPlan}; gives iCalendar text (RFC 5545). The writing is the library's; here is
 * only what each day says. The same plan gives the same bytes: stamps are the day's own date.
 *
 * <p>Start reading at {@link borderwright.pack.calendar.BuildCalendar}.
 */
@NullMarked
package borderwright.pack.calendar;

import org.jspecify.annotations.NullMarked;
