/**
 * The one drawing model of the pack: marks on a sheet in millimetres of paper.
 *
 * <p><b>Settles</b> how anything is drawn: straight strokes with a pen, filled shapes, and text whose size is known before
 * it is drawn, so that no text covers another.
 *
 * <p><b>Takes</b> places on paper (mm, x to the right, y down from the top left corner). <b>Gives</b> a {@link
 * borderwright.pack.paper.Drawing}, written as SVG text by {@link borderwright.pack.paper.SvgWriter} and on a PDF page by
 * {@code borderwright.pack.pages}: the same marks, twice.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>{@link borderwright.pack.paper.View} turns places in the garden into places on paper, at a stated scale.
 *   <li>{@link borderwright.pack.paper.DrawingBuilder} gathers marks; each text is measured with the widths of the font that is
 *       shipped, and put at the first of its wanted places that is free, or beside a short leader line.
 *   <li>Hatches are worked out as strokes, so that they look the same in every viewer and survive a black-and-white print.
 * </ol>
 *
 * <p><b>Units.</b> Millimetres of paper; text sizes are the font's em in mm.
 *
 * <p><b>Does not cover</b> curves (an ellipse is a polygon of many sides), pictures, or text set right to left.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.paper.DrawingBuilder}.
 */
@NullMarked
package borderwright.pack.paper;

import org.jspecify.annotations.NullMarked;
