/**
 * How figures and names are written, the same on every sheet, drawing and table.
 *
 * <p><b>Settles</b> rounding for the reader, units beside numbers, and short words for parts and names.
 *
 * <p><b>Takes</b> figures of the engine in mm, m3, kg, degrees; <b>gives</b> text in the garden's unit system.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.figures.PrintedFigures}.
 */
@NullMarked
package borderwright.pack.figures;

import org.jspecify.annotations.NullMarked;
