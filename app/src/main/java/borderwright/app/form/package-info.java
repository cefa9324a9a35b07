/**
 * The {@code form} command: a survey form to fill in outside.
 *
 * <p><b>Takes</b> a paper size and a unit system; <b>gives</b> one PDF in a folder.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.form.FormCommand}.
 */
@NullMarked
package borderwright.app.form;

import org.jspecify.annotations.NullMarked;
