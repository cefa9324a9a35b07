/**
 * The place of every screw that holds the walls of a box together.
 *
 * <p><b>Settles</b> for each joint that was settled while pieces were placed where its screws enter, which way they run and
 * on which side their heads lie, so that each has wood round it and none meets another.
 *
 * <p><b>Takes</b> a {@link borderwright.engine.buildup.draft.Draft} with all its pieces; <b>gives</b> {@link
 * borderwright.engine.buildup.parts.Joint}s, in the order in which they were settled.
 *
 * <p><b>Units.</b> Millimetres.
 *
 * <p><b>Method.</b> Each joint has its screws where a carpenter sets them first: a quarter of the board's width from its
 * edges, in the middle of the faces that touch. Where a screw that stands already is too near, the joint's screws move
 * together by small steps, up to the edge distance.
 *
 * <p><b>Sources.</b> Edge and end distances of screws in drilled holes: EN 1995-1-1 table 8.2. Three diameters between screws
 * that cross are its least a2; 1.5 diameters, the least that is accepted, is common practice, no source. So are the quarters.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.joints.JointMaker}.
 */
@NullMarked
package borderwright.engine.buildup.joints;

import org.jspecify.annotations.NullMarked;
