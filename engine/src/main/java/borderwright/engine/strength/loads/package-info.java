/**
 * What loads a box: its fill, dry, soaked and trodden down, a person on the edge of a wall, higher ground outside.
 *
 * <p><b>Settles</b> the load cases that a box is checked for, each as loads on the bars of its frame.
 *
 * <p><b>Takes</b> a {@link borderwright.engine.strength.box.BoxFrame} and the {@link
 * borderwright.engine.strength.soil.Fill}; <b>gives</b> {@link borderwright.engine.strength.loads.LoadCase}s with lasting and
 * passing loads apart, without any rule set's factors.
 *
 * <p><b>Units.</b> N and mm.
 *
 * <p><b>Method.</b> The pressure at the middle of what is buried of a course, times its height, pushes it out evenly. Every
 * other planter of a joined run is filled alone as well. A person's weight stands where a wall has the least to hold it.
 *
 * <p><b>Sources.</b> docs/strength.md.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.loads.BoxLoads}.
 */
@NullMarked
package borderwright.engine.strength.loads;

import org.jspecify.annotations.NullMarked;
