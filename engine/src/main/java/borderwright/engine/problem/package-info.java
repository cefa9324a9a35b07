/**
 * What is wrong with something a person said, as a value.
 *
 * <p><b>Settles</b> how every stage reports a user's fault: never by an exception, always as a {@link
 * borderwright.engine.problem.Problem} in a list, so that all faults of a document are shown together.
 *
 * <p><b>Takes</b> what a stage knows of the fault; <b>gives</b> its sentence, its place, and the nearest known name.
 *
 * <p><b>Units.</b> None. Quantities inside sentences are written with their unit by the stage that found them.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.problem.Problem}.
 */
@NullMarked
package borderwright.engine.problem;

import org.jspecify.annotations.NullMarked;
