/**
 * A box as one structure.
 *
 * <p><b>Settles</b> how the push of the fill finds its way through boards, screws, posts, braces, ties and dividers, and
 * how far each course moves under it.
 *
 * <p><b>Demands</b> a {@link borderwright.engine.buildup.parts.Box} whose pieces lie where they will stand, and the sections'
 * grades. <b>Promises</b> forces in balance to 1e-9 of the load, the same answer for a box and its mirror image, and no
 * support that is not built: a loose upright shares load between courses and supports nothing by itself.
 *
 * <p><b>Units.</b> N and mm; heights above the garden's datum.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Every board of every course is a level beam on the middle line of its wall, broken where boards are joined. It
 *       bends on the plan only: it stands on the boards below it. A board and its neighbour above share nothing but the
 *       uprights that both are screwed to.
 *   <li>At a corner both boards end where the middle lines meet and hang on the corner's post. Boards are hinged there. At a
 *       lap the end of one stands against the face of the other, in compression only, and the screws through the lap are
 *       sheared, as far as their design load; into end grain they count for nothing when pulled.
 *   <li>Posts and braces are upright beams that stand on nothing, or between springs at two depths where they are let into the
 *       ground. Each board is joined to each by its screws as springs:
 *       in shear by EN 1995-1-1 table 7.1 (two, half the board's width apart, also keep the upright square to a board,
 *       which stays level because it stands on the boards below), pulled by a declared stiffness or that of shear (careful default), and by the
 *       contact of the faces, in compression only.
 *   <li>The capping bends through its width on the top course's screws, which give way at their design load.
 *   <li>Dividers and ties go from middle line to middle line; their screws are sheared sideways by the uprights at their
 *       ends. What meets an upright by a bracket alone counts for nothing.
 *   <li>The pressure at the middle of what is buried of a course, times its height, pushes it out evenly.
 *   <li>The fill stands against walls that come in, in compression only, as a spring that comes to Rankine's
 *       passive state at 10 mm (careful default); what goes out it does not hold.
 *   <li>The box's movement as a whole is taken off before its courses' movements are read.
 * </ol>
 *
 * <p><b>Sources.</b> EN 1995-1-1:2004+A1:2008, 2.2.2, 2.2.3, 2.3.2.2, table 7.1; the rest is this model's own and stands in
 * docs/strength.md.
 *
 * <p><b>Does not cover</b> friction between courses, leaning walls, boards that buckle, roots
 * and frost.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.box.BoxFrame}.
 */
@NullMarked
package borderwright.engine.strength.box;

import org.jspecify.annotations.NullMarked;
