/**
 * The known name that a person may have meant.
 *
 * <p><b>Settles</b> which of the names that are known is nearest to one that is not.
 *
 * <p><b>Takes</b> a name as written and the names that are known; <b>gives</b> the nearest, when one is near.
 *
 * <p><b>Units.</b> None.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.spelling.NearestName}.
 */
@NullMarked
package borderwright.engine.spelling;

import org.jspecify.annotations.NullMarked;
