/**
 * The false floor: slats, bearers and legs.
 *
 * <p><b>Settles</b> where slats and bearers lie and how slats are notched.
 *
 * <p><b>Takes</b> a draft with its uprights; <b>gives</b> pieces in the draft.
 *
 * <p><b>Units.</b> Millimetres.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.floor.FalseFloor}.
 */
@NullMarked
package borderwright.engine.buildup.floor;

import org.jspecify.annotations.NullMarked;
