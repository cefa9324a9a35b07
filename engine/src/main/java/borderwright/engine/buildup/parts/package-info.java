/**
 * What a box is made of: pieces, end cuts, fixings, and the rules that choose them.
 *
 * <p><b>Settles</b> the data of a box, its names, saws, screws and sections.
 *
 * <p><b>Takes</b> rules and sections as given; <b>gives</b> pieces, boxes and their helpers.
 *
 * <p><b>Units.</b> Millimetres; degrees in cuts; lengths of pieces in ticks.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.parts.Box}.
 */
@NullMarked
package borderwright.engine.buildup.parts;

import org.jspecify.annotations.NullMarked;
