/**
 * The cautions that a garden gives cause for, and who lifts what.
 *
 * <p><b>Settles</b> which cautions go with which stage of the work, when a wall is for an engineer to look at, and how many
 * people lift each piece.
 *
 * <p><b>Demands</b> the garden, its border and {@link borderwright.engine.buildup.parts.Box}es, and their filling.
 * <b>Promises</b> messages: codes with typed values, without words.
 *
 * <p><b>Units.</b> mm, kg.
 *
 * <p><b>Sources.</b> The height of a fall is that of EN 1176-1 and NHBC Standards 2020, 10.2.5 (from summaries). All other
 * cautions and limits are common practice, no source; local codes and licensed people decide, and each tool's own
 * manual comes first. Each limit stands once: the wall height, the fall and a day's load here, the weight that one person lifts in {@link
 * borderwright.engine.filling.Filling#LIFT_KG}, the distance below a damp-proof course in {@link
 * borderwright.engine.ground.GroundWork#BELOW_DAMP_COURSE_MM}.
 *
 * <p><b>Does not cover</b> what a wall bears: see {@code strength}.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.cautions.CautionFinder}.
 */
@NullMarked
package borderwright.engine.cautions;

import org.jspecify.annotations.NullMarked;
