/**
 * Plan geometry shared by the stages: points, simple polygons and upright prisms.
 *
 * <p><b>Settles</b> one convention for all drawings on the ground: x to the right, y away from the reader, seen from
 * above, rings going round <em>anticlockwise</em> (inside on the left hand), heights z upwards from the garden's datum.
 *
 * <p><b>Demands</b> finite coordinates in millimetres. <b>Promises</b> values only, no operation changes its input.
 *
 * <p>Every piece of a planter with upright walls is an upright prism (a plan polygon between two heights), whatever its
 * end cuts: so overlap and gaps are exact plan questions. The polygon work itself is JTS's.
 *
 * <p>Constructions, each named as in a textbook: {@link borderwright.engine.geometry.Line} (offset, meeting, foot, turn),
 * {@link borderwright.engine.geometry.Segment} (nearest place), {@link borderwright.engine.geometry.Arc} (chord and rise).
 *
 * <p><b>Units.</b> Millimetres, square millimetres, radians.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.geometry.Ring}.
 */
@NullMarked
package borderwright.engine.geometry;

import org.jspecify.annotations.NullMarked;
