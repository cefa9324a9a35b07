/**
 * The garden that is planned: resolved, without anything left open.
 *
 * <p><b>Settles</b> what every later stage knows of a garden; it is made by {@link
 * borderwright.engine.garden.resolve.GardenResolver} alone.
 *
 * <p><b>Takes</b> nothing; <b>gives</b> {@link borderwright.engine.garden.Garden} with a specification for each part
 * of the job, and {@link borderwright.engine.garden.Origins}: for each value whether it was given or is a default.
 *
 * <p><b>Units.</b> Lengths as {@link borderwright.engine.measure.Length} or in mm, angles in radians where a name
 * ends so, weights in kg or kN/m3 as the name tells, money in the currency of the garden.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.Garden}.
 */
@NullMarked
package borderwright.engine.garden;

import org.jspecify.annotations.NullMarked;
