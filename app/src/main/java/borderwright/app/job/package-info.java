/**
 * The main job, for every front: a garden document in, a plan, its comparison and the files of its pack out.
 *
 * <p><b>Settles</b> which designs are planned side by side, and what is made of them.
 *
 * <p><b>Takes</b> a {@link borderwright.app.job.PlanOrder}; <b>gives</b> a {@link borderwright.app.job.JobResult}. Progress goes to a
 * listener as typed steps; a {@link borderwright.app.job.StopSignal} raised from any thread ends the job early.
 *
 * <p><b>Promises</b> to print nothing, to write no file and to ask no clock.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.job.PlanJob}.
 */
@NullMarked
package borderwright.app.job;

import org.jspecify.annotations.NullMarked;
