/**
 * How hard soil and water push on a wall, and what the ground under it bears.
 *
 * <p><b>Settles</b> pressures by depth, their sum and its place; whether a strip of wall that holds back ground slides,
 * tips or sinks.
 *
 * <p><b>Takes</b> unit weights, friction angles, water levels, surcharges; <b>gives</b> kN/m2 and kN per metre of wall.
 *
 * <p><b>Units.</b> kN, m, kN/m3, kN/m2, radians: the soil engineer's own. The box turns them into N and mm.
 *
 * <p><b>Sources.</b> Rankine as in Das, Principles of Foundation Engineering; Jaky's at-rest value; Janssen's
 * arching; IBC 2012 table 1806.2. The tests name the worked examples.
 *
 * <p><b>Does not cover</b> frost heave, swelling clay, roots, earthquakes, layered slopes, groundwater flow.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.soil.PressureProfile}.
 */
@NullMarked
package borderwright.engine.strength.soil;

import org.jspecify.annotations.NullMarked;
