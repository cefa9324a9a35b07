/**
 * Whether the walls hold.
 *
 * <p><b>Settles</b> nothing yet: no load path is modelled, so every box is "not shown to hold".
 *
 * <p><b>Takes</b> boxes; <b>gives</b> {@link borderwright.engine.strength.Verdict}.
 *
 * <p><b>Units.</b> None yet.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.Verdict}.
 */
@NullMarked
package borderwright.engine.strength;

import org.jspecify.annotations.NullMarked;
