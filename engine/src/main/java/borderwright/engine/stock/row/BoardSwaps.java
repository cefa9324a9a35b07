package borderwright.engine.stock.row;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.OffcutWorth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Moves pieces between boards of one section, one or two at a time, while that is better: first so that
 * every board gives its pieces, then so that offcuts are worth more, then so that each board needs fewer settings of a saw,
 * then so that what is left over lies in one piece.
 *
 * <p>The boards stay as they are, so nothing more is bought.
 */
public final class BoardSwaps {
    /** Offcuts are only compared here, so any fine unit of money will do. */
    private static final int WORTH_DECIMALS = 4;

    private final CuttingJob job;
    private final Map<BoardInHand, List<Piece>> byBoard;
    private final Budget budget;
    private final OffcutWorth worth;
    private final Map<List<Object>, Score> known = new HashMap<>();
    private final IdentityHashMap<Piece, List<Object>> kinds = new IdentityHashMap<>();

    public BoardSwaps(CuttingJob job, Map<BoardInHand, List<Piece>> byBoard, Budget budget) {
        this.job = job;
        this.byBoard = byBoard;
        this.budget = budget;
        this.worth = OffcutWorth.of(job.rules(), WORTH_DECIMALS);
    }

    /**
     * How good a board is: less is better, the first before the second.
     *
     * @param overrunTicks how far its pieces reach beyond it
     * @param kept what an offcut that is long enough to keep is worth, taken off
     * @param settings different cuts that are made on it
     * @param scattered less for one long offcut than for two short ones: the square of the offcut in mm, taken off
     */
    private record Score(long overrunTicks, long kept, int settings, long scattered) {
        Score plus(Score other) {
            return new Score(
                    overrunTicks + other.overrunTicks,
                    kept + other.kept,
                    settings + other.settings,
                    scattered + other.scattered);
        }

        boolean isBetterThan(Score other) {
            if (overrunTicks != other.overrunTicks) {
                return overrunTicks < other.overrunTicks;
            }
            if (kept != other.kept) {
                return kept < other.kept;
            }
            return settings != other.settings ? settings < other.settings : scattered < other.scattered;
        }
    }

    /** Whether every board gives its pieces in the end. */
    public boolean makeFit() {
        boolean better = true;
        while (better && !budget.isSpent()) {
            better = false;
            for (BoardInHand board : List.copyOf(byBoard.keySet())) {
                if (score(board, pieces(board)).overrunTicks > 0) {
                    better |= improve(board);
                }
            }
        }
        return byBoard.keySet().stream().allMatch(b -> score(b, pieces(b)).overrunTicks == 0);
    }

    /** Puts pieces that are cut alike on one board where that costs nothing. */
    public void tidy() {
        boolean better = true;
        while (better && !budget.isSpent()) {
            better = false;
            for (BoardInHand board : List.copyOf(byBoard.keySet())) {
                better |= !pieces(board).isEmpty() && improve(board);
            }
        }
    }

    private List<Piece> pieces(BoardInHand board) {
        return byBoard.getOrDefault(board, List.of());
    }

    /** The best single move between this board and another; whether there was one. */
    private boolean improve(BoardInHand board) {
        List<Piece> mine = pieces(board);
        // A board like one that was tried in vain is tried in vain too: of sixty like beds most boards are alike.
        Set<List<Object>> tried = new HashSet<>();
        for (BoardInHand other : byBoard.keySet()) {
            if (other.equals(board)
                    || !other.section().equals(board.section())
                    || pieces(other).isEmpty()) {
                continue;
            }
            List<Piece> theirs = pieces(other);
            if (!tried.add(key(other, theirs))) {
                continue;
            }
            Score now = score(board, mine).plus(score(other, theirs));
            for (int i = -1; i < mine.size(); i++) {
                for (int j = -1; j < theirs.size(); j++) {
                    if (i + j == -2 || isSame(mine, i, theirs, j) || budget.isSpent()) {
                        continue;
                    }
                    List<Piece> mineThen = exchanged(mine, i, theirs, j);
                    List<Piece> theirsThen = exchanged(theirs, j, mine, i);
                    if (!mineThen.isEmpty()
                            && !theirsThen.isEmpty()
                            && score(board, mineThen)
                                    .plus(score(other, theirsThen))
                                    .isBetterThan(now)) {
                        byBoard.put(board, mineThen);
                        byBoard.put(other, theirsThen);
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean isSame(List<Piece> mine, int i, List<Piece> theirs, int j) {
        return i >= 0 && j >= 0 && kind(mine.get(i)).equals(kind(theirs.get(j)));
    }

    private static List<Piece> exchanged(List<Piece> mine, int i, List<Piece> theirs, int j) {
        List<Piece> then = new ArrayList<>(mine);
        if (i >= 0) {
            then.remove(i);
        }
        if (j >= 0) {
            then.add(theirs.get(j));
        }
        return then;
    }

    /** All that matters for how a piece is cut and laid. */
    private List<Object> kind(Piece piece) {
        return kinds.computeIfAbsent(piece, p -> List.of(p.length(), cut(p.left()), cut(p.right()), p.waits()));
    }

    private static List<Object> cut(EndCut end) {
        return List.of(end.tiltDeg(), end.fenceDeg(), end.longPoint());
    }

    private Score score(BoardInHand board, List<Piece> on) {
        return known.computeIfAbsent(key(board, on), k -> {
            budget.spend(1L << (2 + 2 * Math.min(on.size(), 8)));
            BoardRow row = BoardRow.of(job, board, on);
            long offcutMm = row.roomTicks() / Length.TICKS_PER_MM;
            long kept = worth.of(Math.max(0, row.roomTicks()));
            return new Score(row.overrunTicks(), -kept, settings(on), -offcutMm * offcutMm);
        });
    }

    /** All that a score depends on. */
    private List<Object> key(BoardInHand board, List<Piece> on) {
        List<Object> key = new ArrayList<>();
        key.add(board.length());
        key.add(board.trim());
        on.forEach(piece -> key.add(kind(piece)));
        return key;
    }

    private static int settings(List<Piece> on) {
        Set<List<Object>> settings = new HashSet<>();
        for (Piece piece : on) {
            if (!piece.waits()) {
                for (EndCut end : List.of(piece.left(), piece.right())) {
                    settings.add(List.of(piece.length(), end.tiltDeg(), end.fenceDeg()));
                }
            }
        }
        return settings.size();
    }
}
