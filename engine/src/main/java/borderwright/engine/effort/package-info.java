/**
 * How much a search may do, as a value, and who hears what it does.
 *
 * <p><b>Settles</b> how every search of the engine is stopped: by counted search steps, and by a stop asked for from
 * outside.
 *
 * <p><b>Takes</b> the steps that a caller grants; <b>gives</b> a budget that is shared, split and asked whether it is
 * spent. A {@link borderwright.engine.effort.WorkListener} hears each step of work as it begins.
 *
 * <p><b>Units.</b> Search steps; no seconds, so that the same input gives the same answer on any machine.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.effort.Budget}.
 */
@NullMarked
package borderwright.engine.effort;

import org.jspecify.annotations.NullMarked;
