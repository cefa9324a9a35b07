/**
 * Faults of a garden document that span records: unknown names, keys that exclude or demand each other, counts that must
 * agree.
 *
 * <p><b>Settles</b> whether a document can be planned at all. <b>Takes</b> {@link
 * borderwright.engine.garden.given.GivenGarden}; <b>gives</b> {@link borderwright.engine.problem.Problem}s, all together.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.checks.GardenChecks}.
 */
@NullMarked
package borderwright.engine.garden.checks;

import org.jspecify.annotations.NullMarked;
