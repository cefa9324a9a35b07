/**
 * Whether the crops given can grow in the planters as built: depth for roots, reach for hands, hours of sun, water.
 *
 * <p><b>Settles</b> for each crop and each depth of soil whether roots have room; for each box whether its rim suits the
 * gardener; for each planter the hours of possible sun; and a rule for watering.
 *
 * <p><b>Demands</b> boxes, what fills them, the border's outline with its edges, and {@link
 * borderwright.engine.garden.PlantingSpec}. <b>Promises</b> tables only: nothing here changes what is built.
 *
 * <p><b>Units.</b> Millimetres, hours a day, mm of water, litres for each m2. Angles in radians inside.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Roots: depth of soil against the least depth in a box and the rooting depth in open ground ({@link
 *       borderwright.engine.planting.CropTable}).
 *   <li>Sun: position of the sun by Meeus' low-accuracy formulas every ten minutes of one day a week; a ray from the soil
 *       towards the sun is stopped by an edge of the border that is higher than the ray where it crosses ({@link
 *       borderwright.engine.planting.SunHours}).
 *   <li>Water: readily available water RAW = p 1000 (fc - wp) Zr with Zr no more than the soil's depth ({@link
 *       borderwright.engine.planting.Watering}).
 * </ol>
 *
 * <p><b>Sources.</b> Rooting depth Zr and depletion p: Allen et al. 1998, FAO Irrigation and Drainage Paper 56, table 22; RAW: its
 * equations 82 and 83. Sun: J. Meeus, Astronomical Algorithms; checked against Reda and Andreas, NREL/TP-560-34302 (2008),
 * appendix A.5. Least depths in boxes: university extension guidance, from memory. Rim heights: pages of accessible gardening
 * (Infinitec; Grow Appalachia 2016). Full sun from six hours: common practice, no source.
 *
 * <p><b>Does not cover</b> clouds, trees, neighbours' houses beyond the border's edges, varieties, or when to sow.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.planting.Planting}.
 *
 * <p>See docs/decisions/0062.
 */
@NullMarked
package borderwright.engine.planting;

import org.jspecify.annotations.NullMarked;
