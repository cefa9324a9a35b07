/**
 * From the document to the garden that is planned: every default is applied here, once.
 *
 * <p><b>Settles</b> what holds where the document gives nothing, each default with its source. <b>Takes</b> {@link
 * borderwright.engine.garden.given.GivenGarden}, its names found by the checks;
 * <b>gives</b> {@link borderwright.engine.garden.Garden}.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.resolve.GardenResolver}.
 */
@NullMarked
package borderwright.engine.garden.resolve;

import org.jspecify.annotations.NullMarked;
