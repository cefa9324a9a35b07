/**
 * The contents of a pack: which sheets a plan has, and in which order.
 *
 * <p><b>Settles</b> the list of sheets, from the brief to the labels.
 *
 * <p><b>Takes</b> a plan, its variants, the paper and the date; <b>gives</b> {@link borderwright.pack.sheets.Sheet}s with their
 * drawings.
 *
 * <p><b>Units.</b> As in the plan.
 *
 * <p><b>Does not</b> compute a quantity, nor draw a page.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.contents.SheetList}.
 */
@NullMarked
package borderwright.pack.contents;

import org.jspecify.annotations.NullMarked;
