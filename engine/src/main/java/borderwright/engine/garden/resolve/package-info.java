/**
 * From the document to the garden that is planned: every default, once.
 *
 * <p><b>Settles</b> what stands for each value that is left out, with its source or as common practice.
 *
 * <p><b>Takes</b> {@link borderwright.engine.garden.given.GivenGarden}; <b>gives</b> {@link
 * borderwright.engine.garden.Garden}, which knows for each value whether it was given.
 *
 * <p><b>Units.</b> As those of the two.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.resolve.GardenResolver}.
 */
@NullMarked
package borderwright.engine.garden.resolve;

import org.jspecify.annotations.NullMarked;
