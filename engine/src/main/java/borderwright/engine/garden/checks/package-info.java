/**
 * Faults of a garden document that one value alone does not show.
 *
 * <p><b>Settles</b> which names are unknown, which stand twice and which values contradict each other.
 *
 * <p><b>Takes</b> {@link borderwright.engine.garden.given.GivenGarden}; <b>gives</b> problems, all of a document
 * together.
 *
 * <p><b>Units.</b> None.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.checks.GardenChecks}.
 */
@NullMarked
package borderwright.engine.garden.checks;

import org.jspecify.annotations.NullMarked;
