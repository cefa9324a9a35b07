/**
 * The {@code start} command: a garden document that holds at once, for a kind of border.
 *
 * <p><b>Takes</b> a kind and a path; <b>gives</b> a new file there, never in the place of another.
 *
 * <p><b>Promises</b> that each document planned as it is meets everything and has a proven basket; a test plans them all. They
 * are resources of this package, whole and commented, so that they read as a person's own file would.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.start.StartCommand}.
 */
@NullMarked
package borderwright.app.start;

import org.jspecify.annotations.NullMarked;
