/**
 * From a finished box to what a person needs at the bench: where every piece and every screw goes.
 *
 * <p><b>Settles</b> for each wall, divider and floor the face that is worked on, the end that a tape hooks on, the running
 * distances and heights of everything on it, which wall carries an upright shared by two, and where each screw of the tally
 * goes.
 *
 * <p><b>Takes</b> a {@link borderwright.engine.buildup.parts.Box} and the sections; <b>gives</b> a {@link
 * borderwright.engine.assembly.BoxBench}.
 *
 * <p><b>Units.</b> Millimetres; kilograms. Distances run to the right from the hook, heights upwards from the bottom edge.
 *
 * <p><b>Method.</b> Nothing is placed anew: every figure is a corner of a piece's solid seen in the coordinates of a face
 * ({@code WorkFace}). The joints and the place of each screw are the box's own; a test holds them to the tally of every box.
 *
 * <p><b>Sources.</b> Which wall carries an upright at the bench: common practice, no source.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.assembly.BoxBench}.
 */
@NullMarked
package borderwright.engine.assembly;

import org.jspecify.annotations.NullMarked;
