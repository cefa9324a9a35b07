/**
 * One run: its legs, joints, lengths and bed levels.
 *
 * <p><b>Settles</b> what becomes of a run at each bend, how long its planters are and at which level they stand.
 *
 * <p><b>Takes</b> the edges of a run and the free room; <b>gives</b> a fitted run.
 *
 * <p><b>Units.</b> Millimetres, radians.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.layout.run.RunChain}.
 */
@NullMarked
package borderwright.engine.layout.run;

import org.jspecify.annotations.NullMarked;
