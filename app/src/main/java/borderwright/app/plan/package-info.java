/**
 * The {@code plan} and {@code estimate} commands: reading a garden document, planning it and writing the pack.
 *
 * <p><b>Takes</b> a document's path; <b>gives</b> files in a folder and a short report on the console.
 *
 * <p><b>Units.</b> Lengths are written in the garden's unit system.
 *
 * <p><b>Promises</b> that either all files of a plan are written or none: they are made in a folder beside the target and
 * moved into it at the end.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.plan.PlanCommand}.
 */
@NullMarked
package borderwright.app.plan;

import org.jspecify.annotations.NullMarked;
