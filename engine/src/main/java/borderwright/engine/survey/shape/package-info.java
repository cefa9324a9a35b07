/**
 * Starting positions and the shape that fits best.
 *
 * <p><b>Settles</b> which of the shapes that fit the readings is the one that goes round as given.
 *
 * <p><b>Takes</b> a network; <b>gives</b> the best shape, or two that fit equally well.
 *
 * <p><b>Units.</b> Millimetres and radians.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.survey.shape.ShapeFinder}.
 */
@NullMarked
package borderwright.engine.survey.shape;

import org.jspecify.annotations.NullMarked;
