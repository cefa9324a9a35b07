/**
 * From what has arrived and been cut to what is left to do.
 *
 * <p><b>Settles</b> which pieces are still to be cut, and what they can be cut from besides boards that must be bought.
 *
 * <p><b>Takes</b> a garden's {@code received} block and the pieces of its boxes. <b>Gives</b> open pieces, boards in hand, and
 * what is still needed of everything else.
 *
 * <p><b>Units.</b> Ticks of 1/320 mm.
 *
 * <p><b>Method.</b> A cut that is made stays made: its piece is taken off the list. A whole board that has arrived loses its
 * trim as a bought one does; of a board that is cut into the left end is a fresh cut, so that only the far end is trimmed.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.sitelog.OnSite}.
 */
@NullMarked
package borderwright.engine.sitelog;

import org.jspecify.annotations.NullMarked;
