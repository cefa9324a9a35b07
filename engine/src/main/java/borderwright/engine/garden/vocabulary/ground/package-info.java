/**
 * The choices of the garden document about ground and soil.
 *
 * <p><b>Settles</b> which words may stand for the surface, the subsoil, the gravel bed, the soil that is dug, and what wet
 * soil in the boxes is assumed to do.
 *
 * <p><b>Takes</b> nothing; <b>gives</b> enums that the document and the resolved garden share.
 *
 * <p><b>Units.</b> None.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.vocabulary.ground.SoilPush}.
 */
@NullMarked
package borderwright.engine.garden.vocabulary.ground;

import org.jspecify.annotations.NullMarked;
