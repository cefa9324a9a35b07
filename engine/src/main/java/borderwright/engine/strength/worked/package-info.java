/**
 * Calculations that can be followed by hand.
 *
 * <p><b>Settles</b> how a check shows its steps: the same method computes the figure and writes the line, so the sheet cannot
 * drift from the answer.
 *
 * <p><b>Takes</b> the steps of a check; <b>gives</b> {@link borderwright.engine.strength.worked.SheetLine}s and
 * {@link borderwright.engine.strength.worked.Check}s.
 *
 * <p><b>Units.</b> Named on every line.
 *
 * <p><b>Method.</b> A {@link borderwright.engine.strength.worked.Working} is passed down; {@code SILENT} costs nothing, so
 * the search for a cure can run the same methods thousands of times.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.worked.Working}.
 */
@NullMarked
package borderwright.engine.strength.worked;

import org.jspecify.annotations.NullMarked;
