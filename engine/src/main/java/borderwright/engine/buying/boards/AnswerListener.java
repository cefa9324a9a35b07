package borderwright.engine.buying.boards;

import borderwright.engine.stock.Packing;
import java.util.List;

/** Told of every answer that a search finds. */
public interface AnswerListener {
    /**
     * An answer.
     *
     * @param packings how the boards of each part are cut
     * @param packs packs bought of each board of each part, at least what the packings need; empty for no more than that
     * @param extras how many of each extra
     * @return the new target: only answers that cost no more are of interest
     */
    long accept(List<Packing> packings, int[][] packs, int[] extras);
}
