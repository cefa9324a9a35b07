/**
 * From boards in hand, pieces and saws to which piece comes from which board, at which set-up, in which order.
 *
 * <p><b>Settles</b> the order of work at the saw.
 *
 * <p><b>Takes</b> the boards that are there (ordered or received), pieces, saws and how the person cuts. <b>Gives</b> a cutting plan.
 *
 * <p><b>Units.</b> Ticks of 1/320 mm; angles in degrees from square.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>What the basket meant for a board stays there if it still fits; the rest is solved anew over the other boards.
 *   <li>On a board: the row that takes the least length, slanted ends nested ({@code BoardRow}); among equals, factory ends
 *       to pieces that touch the ground, then long pieces; pieces that wait keep the far end.
 *   <li>Each cut goes to the saw that suits it best ({@code SawBench}); how saws are listed changes nothing.
 *   <li>Cuts are grouped by setting; a setting is made once.
 * </ol>
 *
 * <p><b>Sources.</b> Order of work and shortest piece that may be held: common practice, no source.
 *
 * <p><b>Checked</b> by {@link borderwright.engine.cutting.PlaneVerifier}, which shares no code with the planner.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.cutting.CuttingPlanner}.
 */
@NullMarked
package borderwright.engine.cutting;

import org.jspecify.annotations.NullMarked;
