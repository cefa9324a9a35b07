/**
 * The {@code cut} command: lists of pieces and boards in, the cheapest boards and how each is cut out.
 *
 * <p><b>Settles</b> what the cells of its CSV files mean and how the answer is written.
 *
 * <p><b>Takes</b> files of pieces, boards and terms. <b>Gives</b> JSON or a table, and an exit code: 0 done, 1 sound but
 * cannot be met, 2 bad input or wrong use, 3 a fault of ours, 4 stopped before there was an answer.
 *
 * <p><b>Units.</b> A length column names its unit in the header ({@code length_mm}, {@code length_in} and so on). Lengths
 * of pieces are rounded up to a whole tick of 1/320 mm, lengths of boards down. Prices become whole units of the least
 * decimal place that the files use, two at least.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.cut.CutCommand}.
 */
@NullMarked
package borderwright.app.cut;

import org.jspecify.annotations.NullMarked;
