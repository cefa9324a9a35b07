/**
 * Lengths, angles and the accuracy of a measure: the units everything else is written in.
 *
 * <p><b>Settles</b> how lengths and angles are held, and how they are written in metric or imperial. The room
 * {@code reading} reads them.
 *
 * <p><b>Takes</b> numbers whose unit is in the name; <b>gives</b> exact whole ticks for everything that is cut,
 * counted or paid; one {@link borderwright.engine.measure.Length} is the same length in either unit system.
 *
 * <p><b>Units.</b> 1 tick = 1/320 mm, exact for 0.1 mm (32 ticks) and for 1/64 in (127 ticks). Geometry and strength
 * use {@code double} millimetres. Angles are radians inside, degrees at the edges.
 *
 * <p><b>Sources.</b> 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.measure.Length}.
 */
@NullMarked
package borderwright.engine.measure;

import org.jspecify.annotations.NullMarked;
