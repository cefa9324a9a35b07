/**
 * The garden that is planned.
 *
 * <p><b>Settles</b> nothing: it is what {@link borderwright.engine.garden.resolve.GardenResolver} makes of the document.
 * Every later stage takes only these records.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.Garden}.
 */
@NullMarked
package borderwright.engine.garden;

import org.jspecify.annotations.NullMarked;
