/**
 * What goes into a box: soil, and later liner, finish and weights.
 *
 * <p><b>Settles</b> how much soil fills the planters as built.
 *
 * <p><b>Takes</b> {@link borderwright.engine.buildup.Box} and {@link borderwright.engine.garden.SoilWish}; <b>gives</b>
 * {@link borderwright.engine.filling.SoilVolume}.
 *
 * <p><b>Units.</b> Cubic metres, loose as delivered.
 *
 * <p><b>Method.</b> The inside of each planter (between the inner faces of its walls) times the depth from the bed or
 * platform to a stated distance below the rim, less the uprights, ties and bearers that stand in it, plus a stated share
 * for settlement.
 *
 * <p><b>Sources.</b> Settlement of fresh mixes: common practice, no source.
 *
 * <p><b>Does not cover</b> layers, drainage, bags against bulk, or the yearly top-up.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.filling.SoilVolume}.
 */
@NullMarked
package borderwright.engine.filling;

import org.jspecify.annotations.NullMarked;
