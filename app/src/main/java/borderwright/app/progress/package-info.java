/**
 * What is being worked out, on the console, while there is no answer yet.
 *
 * <p><b>Settles</b> when a line is written: after two seconds without an answer, then every two seconds at most, and only where
 * something else is worked out than at the last line. The clock is here and nowhere else: what is planned depends on none.
 *
 * <p><b>Takes</b> messages, from any thread; <b>gives</b> lines on standard error, none with {@code --quiet}.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.progress.ProgressReport}.
 */
@NullMarked
package borderwright.app.progress;

import org.jspecify.annotations.NullMarked;
