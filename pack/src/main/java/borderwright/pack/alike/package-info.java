/**
 * Things of which the same is printed, together, so that sixty like boxes take one line.
 *
 * <p><b>Settles</b> what shares a row, a table or a drawing, and how many names are written in short.
 *
 * <p><b>Takes</b> parts of a plan; <b>gives</b> groups in the order of their first members.
 *
 * <p><b>Units.</b> None of its own: what reads the same after rounding is alike.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.alike.Alike}.
 */
@NullMarked
package borderwright.pack.alike;

import org.jspecify.annotations.NullMarked;
