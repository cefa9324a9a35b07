/**
 * From a fitted run to boxes, and the last checks.
 *
 * <p><b>Settles</b> outlines, names and sides of boxes; overlap, reach and open ground.
 *
 * <p><b>Takes</b> a fitted run; <b>gives</b> laid boxes.
 *
 * <p><b>Units.</b> Millimetres, radians.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.layout.boxes.RunLayout}.
 */
@NullMarked
package borderwright.engine.layout.boxes;

import org.jspecify.annotations.NullMarked;
