/**
 * From a whole plan to days of work: tasks, what each waits for, hours, the critical path, and a calendar.
 *
 * <p><b>Settles</b> the tasks in an order that can be worked, person-hours from the gardener's own pace, which tasks a day
 * lost would put off the end, and what is done on which date when a start is given.
 *
 * <p><b>Demands</b> boxes, ground, filling, cutting and {@link borderwright.engine.garden.WorkSpec}. <b>Promises</b> that no
 * task starts before what it waits for has ended, that a day holds no more hours than people have, and that every task's hours are
 * in the calendar exactly once. No clock is read: dates are arguments.
 *
 * <p><b>Units.</b> Person-hours; days for the critical path.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Tasks: order, setting out, ground, gravel; the first planter is cut and built alone, as a prototype; then the rest is cut,
 *       brushed, built in run order, lined, filled, planted. More than a dozen boxes are worked in groups.
 *   <li>Hours by pace; once the first planter is timed, cutting and building of the rest are scaled by what it took.
 *   <li>Critical path: forward and backward pass over the tasks ({@link borderwright.engine.sequence.CriticalPath}).
 *   <li>Calendar: day by day, the ready task with the least late start first, all people on it up to its limit ({@link
 *       borderwright.engine.sequence.CalendarMaker}). A heuristic: it need not be the shortest calendar.
 * </ol>
 *
 * <p><b>Sources.</b> Forward and backward pass: B. W. Taylor, Introduction to Management Science, chapter 8. Paces: common
 * practice, no source.
 *
 * <p><b>Does not cover</b> several crews at once, hire periods of tools, or the weather itself.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.sequence.BuildSequence}.
 */
@NullMarked
package borderwright.engine.sequence;

import org.jspecify.annotations.NullMarked;
