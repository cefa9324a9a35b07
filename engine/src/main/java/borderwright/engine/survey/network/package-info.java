/**
 * A network of points and observations, and its least-squares adjustment.
 *
 * <p><b>Settles</b> positions with their cofactors, and whether the observations hold every point.
 *
 * <p><b>Takes</b> observations with standard deviations; <b>gives</b> an adjusted network.
 *
 * <p><b>Units.</b> Millimetres and radians; variances in mm2.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.survey.network.Adjustment}.
 */
@NullMarked
package borderwright.engine.survey.network;

import org.jspecify.annotations.NullMarked;
