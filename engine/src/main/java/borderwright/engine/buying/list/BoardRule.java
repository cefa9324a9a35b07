package borderwright.engine.buying.list;

import java.util.List;

/** What may lie on one board together, beyond what lengths say; fewer pieces of what may lie together may do so too. */
public interface BoardRule {
    /** Lengths say it all. */
    BoardRule LENGTHS_ALONE = (section, usableTicks, labels) -> true;

    /**
     * Whether some pieces can be cut from one board.
     *
     * @param section of the board
     * @param usableTicks its length between its trims
     * @param labels of the pieces; a label stands there as often as its pieces
     */
    boolean admits(String section, long usableTicks, List<String> labels);
}
