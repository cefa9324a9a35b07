/**
 * From a box on the plan to every piece of wood in it, with its end cuts and its place.
 *
 * <p><b>Settles</b> how many courses make the height; how each corner is built; where boards are joined; where posts,
 * braces, dividers, ties, platform and capping stand; how each piece is cut; which screws go
 * where.
 *
 * <p><b>Takes</b> a {@link borderwright.engine.layout.plan.FootprintPlan} (any simple polygon with inside angles of 45 to 315
 * degrees; others are built too, with a note), the rules, the sections as measured, the saws, the longest piece of each
 * section, and a {@link borderwright.engine.buildup.parts.BracingScheme}. <b>Gives</b> a {@link
 * borderwright.engine.buildup.parts.Box}; its {@code unmet} lists what could not be built as requested.
 *
 * <p><b>Units.</b> Millimetres; degrees in cuts, radians inside; lengths of pieces in whole ticks.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Courses: the count whose dried height is nearest to the height requested ({@code CourseStack}).
 *   <li>Corners: lapped or mitred as requested where the saws tilt that far ({@code CornerChoice}, {@code LapOrMitre}). With
 *       upright walls every board is a strip of its side, each end clipped by one straight line ({@code Strip}).
 *   <li>Posts in the corners ({@code CornerPosts}, {@code NookUprights}), an upright at each end of each divider
 *       ({@code Dividers}), ties with their braces ({@code Ties}), braces in what is then wider than the spacing and
 *       joints on them ({@code Braces}, {@code BoardJoining}). Each asks {@code PlacedSolids} for room first.
 *   <li>Boards, divider boards, ties, platform ({@code FalseFloor}, {@code Bearers}, {@code Slats}), capping.
 *   <li>The place of every screw of the joints that the steps before settled ({@code JointMaker}).
 *   <li>End cuts ({@code CutWords}) and how the saws at hand make them ({@code SawBench}).
 * </ol>
 *
 * <p><b>Sources.</b> Shrinkage in width and thickness: D. W. Green, FPL-RP-489, Forest Products Laboratory 1989. Numbered
 * screws: ASME B18.6.1. Screw distances: EN 1995-1-1 table 8.2. The rest is common practice, no source, and marked so beside
 * its figure.
 *
 * <p><b>Does not cover</b> whether the box is strong enough (the strength stage asks for other spacings), leaning sides, boards ripped to a narrower width.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.BoxBuilder}.
 */
@NullMarked
package borderwright.engine.buildup;

import org.jspecify.annotations.NullMarked;
