/**
 * The language and the units in which a plan is written.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.language.Language}.
 */
@NullMarked
package borderwright.pack.language;

import org.jspecify.annotations.NullMarked;
