/**
 * Ties the stages together: a garden in, a whole plan out; and a first estimate before there is a garden.
 *
 * <p><b>Settles</b> nothing of its own but the order of the stages and what counts as a shortfall.
 *
 * <p><b>Takes</b> {@link borderwright.engine.garden.Garden}; <b>gives</b> {@link borderwright.engine.plan.Plan}, or the
 * reasons why there is none. {@link borderwright.engine.plan.Comparison} lays several plans side by side; {@link
 * borderwright.engine.estimate.EstimateMaker} works from three lengths.
 *
 * <p><b>Units.</b> As each stage's.
 *
 * <p><b>Method.</b> Survey, layout, build-up of each box, its strength, ground, filling and
 * planting, shopping list, basket, cutting, days of work; then totals and
 * shortfalls. The longest piece of each section follows from the price lists before build-up, so that joints fall where
 * boards end.
 *
 * <p><b>Sources.</b> Usual prices of the estimate: common practice, no source.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.plan.Planner}.
 */
@NullMarked
package borderwright.engine.plan;

import org.jspecify.annotations.NullMarked;
