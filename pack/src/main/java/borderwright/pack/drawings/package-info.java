/**
 * The drawings of a plan: from above, from the front, course by course, board by board, and full size.
 *
 * <p><b>Settles</b> what each drawing shows and at which scale. Each class draws one thing and reads top to bottom.
 *
 * <p><b>Takes</b> results of the engine, the units to write in, and the room on the page. <b>Gives</b> a {@link
 * borderwright.pack.paper.Drawing}.
 *
 * <p><b>Method.</b> A dimension says the distance between the two places that it touches, by the engine's own geometry; a
 * label is a name or figure of the plan. Nothing else is worked out here but where on the paper things come.
 *
 * <p><b>Units.</b> Garden places in mm, paper in mm.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.drawings.PlanDrawing}.
 */
@NullMarked
package borderwright.pack.drawings;

import org.jspecify.annotations.NullMarked;
