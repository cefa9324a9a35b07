/**
 * The printed pack: sheets with their figures and drawings, laid out as pages of a PDF.
 *
 * <p><b>Settles</b> what is printed, in which order, and how a figure is written. It computes no quantity.
 *
 * <p><b>Takes</b> a plan and a paper size. <b>Gives</b> the bytes of a PDF, the same bytes for the same plan.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Each {@link borderwright.pack.sheets.Sheet} is a record with what its page template needs; the templates are in {@code
 *       src/main/jte} and are compiled with the module.
 *   <li>{@link borderwright.pack.pages.PackPages} renders all sheets as one XHTML document; drawings stand in it as objects
 *       with a number.
 *   <li>{@link borderwright.pack.pages.PdfRenderer} lays the document out and paints each drawing straight into the page in
 *       millimetres, its text as text.
 *   <li>Dates and the document's id are fixed, so that the bytes repeat.
 * </ol>
 *
 * <p><b>Does not cover</b> text set right to left, and characters that the shipped font lacks: they are printed as a hollow
 * square.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.pages.PackPages}.
 */
@NullMarked
package borderwright.pack.pages;

import org.jspecify.annotations.NullMarked;
