/**
 * Set-up cards for the saw.
 *
 * <p><b>Settles</b> what a card says, and how cards stand on their pages.
 *
 * <p><b>Takes</b> a cutting plan; <b>gives</b> the words of each card in columns.
 *
 * <p><b>Units.</b> mm on paper, points for type.
 *
 * <p><b>Does not</b> decide how a saw is set.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.sheets.saw.SetUpSheet}.
 */
@NullMarked
package borderwright.pack.sheets.saw;

import org.jspecify.annotations.NullMarked;
