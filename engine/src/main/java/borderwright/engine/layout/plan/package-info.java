/**
 * The result of the layout: boxes on the plan.
 *
 * <p><b>Settles</b> what later stages know of the layout.
 *
 * <p><b>Takes</b> nothing; <b>gives</b> footprints, sides, divider lines, openings.
 *
 * <p><b>Units.</b> Millimetres, radians; levels in mm above the datum.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.layout.plan.Layout}.
 */
@NullMarked
package borderwright.engine.layout.plan;

import org.jspecify.annotations.NullMarked;
