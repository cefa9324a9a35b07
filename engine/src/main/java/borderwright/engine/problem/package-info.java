/**
 * What is wrong with something a person gave, as a value.
 *
 * <p><b>Settles</b> how every stage reports a user's fault: never by an exception, always as a {@link
 * borderwright.engine.problem.Problem} in a list, so that all faults of a document are shown together.
 *
 * <p><b>Takes</b> what a stage knows of the fault; <b>gives</b> its message and its place.
 *
 * <p><b>Units.</b> None. Quantities are typed values of the message.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.problem.Problem}.
 */
@NullMarked
package borderwright.engine.problem;

import org.jspecify.annotations.NullMarked;
