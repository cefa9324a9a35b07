/**
 * A box while it is being built.
 *
 * <p><b>Settles</b> the frame of each side, corner cuts, planters, courses, supports, and how a placed solid becomes
 * a piece.
 *
 * <p><b>Takes</b> a footprint and the means to build; <b>gives</b> a draft that walls, uprights and floor add to.
 *
 * <p><b>Units.</b> Millimetres; radians.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.draft.Draft}.
 */
@NullMarked
package borderwright.engine.buildup.draft;

import org.jspecify.annotations.NullMarked;
