/**
 * How the pieces of one board lie: their order, which way round, and how slanted ends of neighbours nest.
 *
 * <p><b>Settles</b> whether pieces can be cut from one board, and what is left of it.
 *
 * <p><b>Takes</b> boards in hand, pieces, sections and the saws' kerf. <b>Gives</b> rows of pieces and moves pieces between
 * boards. What is bought and at which set-up a cut is made is settled elsewhere.
 *
 * <p><b>Units.</b> Ticks of 1/320 mm.
 *
 * <p><b>Method.</b> Exact dynamic programming over the sets of pieces that lie already where a board has up to 12, a nearest
 * neighbour beyond (Held and Karp, A dynamic programming approach to sequencing problems, 1962, from memory).
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.stock.row.BoardRow}.
 */
@NullMarked
package borderwright.engine.stock.row;

import org.jspecify.annotations.NullMarked;
