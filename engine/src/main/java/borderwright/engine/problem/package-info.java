/**
 * What is wrong with something a person said, as a value.
 *
 * <p><b>Settles</b> how every stage reports a user's fault: never by an exception, always as a {@link
 * borderwright.engine.problem.Problem} in a list, so that all faults of a document are shown together.
 *
 * <p><b>Units.</b> None. Quantities inside sentences are written with their unit by the stage that found them.
 */
@NullMarked
package borderwright.engine.problem;

import org.jspecify.annotations.NullMarked;
