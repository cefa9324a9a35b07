/**
 * Corner posts, braces, ties and dividers.
 *
 * <p><b>Settles</b> where uprights and cross-pieces stand.
 *
 * <p><b>Takes</b> a draft and a bracing scheme; <b>gives</b> pieces in the draft.
 *
 * <p><b>Units.</b> Millimetres.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.uprights.UprightBuilder}.
 */
@NullMarked
package borderwright.engine.buildup.uprights;

import org.jspecify.annotations.NullMarked;
