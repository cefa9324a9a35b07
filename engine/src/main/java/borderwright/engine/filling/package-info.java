/**
 * What goes into a box and onto it: soil and the layers under it, liner, finish, preservative; and what all of it weighs.
 *
 * <p><b>Settles</b> volumes planter by planter as built, what to order of each material, how far it settles, how the liner is
 * cut, litres of finish and preservative, weights of pieces and boxes dry and filled wet, and loads on a roof.
 *
 * <p><b>Demands</b> {@link borderwright.engine.buildup.parts.Box}es, their ground made ready, sections, and what is given for soil,
 * filling and ground. <b>Promises</b> that planters' volumes add up to their boxes' and these to the totals.
 *
 * <p><b>Units.</b> m2, m3 (filled: once settled; ordered: loose as delivered), litres, kg.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Soil: the inside of each planter times the depth from bed or floor to a stated distance below the rim, less uprights,
 *       ties and bearers in it, less ground left standing inside ({@link borderwright.engine.filling.SoilVolume}).
 *   <li>Layers from the bottom: drainage gravel, coarse base, then the mix in parts by volume, less earth that is used again
 *       ({@link borderwright.engine.filling.Layers}).
 *   <li>Settlement as a range about what is ordered, and the yearly top-up as a range of depth.
 *   <li>Liner: one strip round each planter, in lanes side by side across the roll, lanes packed into the fewest lengths.
 *   <li>Finish: area times coats over spread. Preservative: the ends of pieces of treated sections, two coats.
 *   <li>Weights: volume times density; soil at its soaked weight.
 * </ol>
 *
 * <p><b>Sources.</b> Volume of bags: 1 ft3 is 28.3168 litres, exact. Densities: appendix with DOI 10.1201/b12981-45. Settlement
 * of fresh mixes 10 to 25 % in the first season and 50 to 75 mm of top-up a year, coverage of finishes, staples, 25 kg as
 * what one person lifts: common practice, no source. The lift is a screening figure, not a safe limit.
 *
 * <p><b>Does not cover</b> irrigation pipes, chemistry of soil, or what a roof can bear: that is for its engineer.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.filling.Filling}.
 */
@NullMarked
package borderwright.engine.filling;

import org.jspecify.annotations.NullMarked;
