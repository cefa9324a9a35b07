/**
 * The free room in the border.
 *
 * <p><b>Settles</b> where along an edge a planter can stand clear of everything.
 *
 * <p><b>Takes</b> edges with clearances, planters already placed; <b>gives</b> free spans.
 *
 * <p><b>Units.</b> Millimetres.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.layout.room.FreeRoom}.
 */
@NullMarked
package borderwright.engine.layout.room;

import org.jspecify.annotations.NullMarked;
