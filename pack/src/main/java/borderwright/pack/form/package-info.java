/**
 * The survey form: two pages to fill in outside with a pencil, and to copy into a garden document at home.
 *
 * <p><b>Settles</b> what is asked for on site, in which order, and how much room there is to write.
 *
 * <p><b>Takes</b> a paper size and a unit system. <b>Gives</b> tables, choices and drawings; {@code pack.pages} lays them out.
 *
 * <p><b>Method.</b> Each table is a group of the document's {@code survey} or {@code ground}: its columns are the keys of that
 * group, read from the record itself, so that they have the same words in the same order as the document.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.form.SurveyForm}.
 */
@NullMarked
package borderwright.pack.form;

import org.jspecify.annotations.NullMarked;
