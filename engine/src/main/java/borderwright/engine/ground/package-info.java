/**
 * From the ground as levelled to the ground made ready: what is dug, where it goes, and what is laid in its place.
 *
 * <p><b>Settles</b> for each box the area dug, the level dug to, turf, earth, gravel, sheet and feet; for the garden the
 * spoil with its barrows and skips, and the least rolls for the sheet.
 *
 * <p><b>Demands</b> boxes with their bed levels, the border's outline and ground, and {@link
 * borderwright.engine.garden.GroundSpec}. <b>Promises</b> that no part of the ground is counted under two boxes, that what
 * is dug less what is made up equals the ground stripped less the level dug to, and that sums over boxes are the totals.
 *
 * <p><b>Units.</b> Millimetres for lengths and levels (above the garden's datum), m2, m3 (named in place, loose or
 * compacted), kg.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Area: each box's outline and a margin, inside the border, less every other box and what an earlier one took
 *       ({@link borderwright.engine.ground.DugAreas}).
 *   <li>Surface: the area is cut into triangles no longer than half a metre, each corner at the ground's level ({@link
 *       borderwright.engine.ground.SurfaceMesh}).
 *   <li>Volume: each triangle stands on an upright prism that the level dug to cuts in two; both parts are pyramids and
 *       prisms whose volumes are exact ({@link borderwright.engine.ground.CutAndFill}).
 *   <li>Sheet: strips side by side along the side of the box that gives fewest seams, or least sheet where that saves a roll ({@link
 *       borderwright.engine.ground.SheetStrips}), packed into the fewest rolls ({@link
 *       borderwright.engine.ground.RollPacking}).
 *   <li>Clearances: distances between what is dug or built and what has to be kept clear of ({@link
 *       borderwright.engine.ground.ClearanceFinder}, {@link borderwright.engine.ground.RunOff}).
 * </ol>
 *
 * <p><b>Sources.</b> Swell: US military soil conversion table (1.00 in place to loose: sand 1.11, common earth 1.25, clay
 * 1.43; the row for sand read in NAVEDTRA table 10-1, the others from memory of FM 5-434). Densities of excavated earth: the
 * appendix with DOI 10.1201/b12981-45. Overlaps, pins, gravel depth, 1.3 loose to compacted: common practice, no source.
 *
 * <p><b>Does not cover</b> shoring, drains, soakaways, or walls that hold back existing ground: those are an engineer's.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.ground.GroundWork}.
 */
@NullMarked
package borderwright.engine.ground;

import org.jspecify.annotations.NullMarked;
