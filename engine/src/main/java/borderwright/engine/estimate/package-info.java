/**
 * A first range of boards, soil and money from three lengths, before any survey.
 *
 * <p><b>Settles</b> what a run costs about, at least and at most.
 *
 * <p><b>Takes</b> run, depth, height and default prices; <b>gives</b> a range.
 *
 * <p><b>Units.</b> Millimetres, m3, money in the currency given.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.estimate.EstimateMaker}.
 */
@NullMarked
package borderwright.engine.estimate;

import org.jspecify.annotations.NullMarked;
