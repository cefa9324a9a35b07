package borderwright.engine.buying.nesting;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Buys boards that are kept uncut until the last planter stands, each as long as the longest piece of its section at least.
 *
 * <p>A board to hold back is asked for as a piece as long as the shortest board that is long enough. Where the cheapest basket
 * would cut something else from the same board, and nothing can change places, the piece is made as long as the next length
 * of board, and so on until each lies alone. The first list is a bound for all: whatever board is held back is as long.
 */
public final class HeldBoards {
    private final CuttingJob job;
    private final ShoppingProblem full;
    private final Map<String, TreeSet<Long>> lengths = new TreeMap<>();

    private HeldBoards(CuttingJob job, ShoppingProblem full) {
        this.job = job;
        this.full = full;
        for (Piece piece : job.pieces()) {
            if (piece.role() == Piece.Role.WALL) {
                lengths.computeIfAbsent(piece.section(), s -> new TreeSet<>());
            }
        }
        lengths.forEach((section, all) -> {
            long longest = job.pieces().stream()
                    .filter(p -> p.section().equals(section))
                    .mapToLong(p -> DemandMaker.boughtTicks(p, job.rules(), job.kerf()))
                    .max()
                    .orElse(1);
            full.usableLengths(section).filter(usable -> usable >= longest).forEach(all::add);
        });
    }

    /**
     * What is bought.
     *
     * @param basket the basket
     * @param full the list that it serves, boards to hold back included
     * @param met whether every board to hold back is in it
     */
    public record Bought(NestedBasket.Bought basket, ShoppingProblem full, boolean met) {
        private static Bought asAsked(NestedBasket.Bought basket, ShoppingProblem full) {
            return new Bought(basket, full, true);
        }

        private static Bought withoutHeld(NestedBasket.Bought basket, ShoppingProblem full) {
            return new Bought(basket, full, false);
        }
    }

    /**
     * Buys.
     *
     * @param job pieces, sections, saws and how the person cuts; its boards are not used
     * @param full each piece with its whole length, and anything else
     * @param budget for all lists together
     */
    public static Bought buy(CuttingJob job, ShoppingProblem full, Budget budget) {
        return new HeldBoards(job, full).buy(budget);
    }

    private Bought buy(Budget budget) {
        int boards = job.rules().keepWhole();
        int steps = lengths.values().stream().anyMatch(TreeSet::isEmpty)
                ? 0
                : lengths.values().stream().mapToInt(TreeSet::size).max().orElse(0);
        long bound = 0;
        ShoppingProblem bare = full;
        for (int step = 0; step < steps && boards > 0; step++) {
            ShoppingProblem asked = asking(boards, step);
            NestedBasket.Bought bought = NestedBasket.buy(job, asked, budget);
            ShoppingAnswer answer = apart(bought.answer());
            if (answer.status() != ShoppingAnswer.Status.FOUND) {
                break;
            }
            if (step == 0) {
                bound = answer.bound();
                bare = bought.bare();
            }
            if (answer.boards().stream().allMatch(b -> b.isHeldBack() || !b.holdsBack())) {
                return Bought.asAsked(new NestedBasket.Bought(answer.withBound(bound), bare, bought.saved()), asked);
            }
        }
        NestedBasket.Bought without = NestedBasket.buy(job, full, budget);
        return boards == 0 || lengths.isEmpty() ? Bought.asAsked(without, full) : Bought.withoutHeld(without, full);
    }

    /** The same boards; where a board to hold back is cut besides, its other pieces go where they leave one whole. */
    private ShoppingAnswer apart(ShoppingAnswer answer) {
        List<LaidBoard> boards = new ArrayList<>(answer.boards());
        for (int i = 0; i < boards.size(); i++) {
            LaidBoard sharing = boards.get(i);
            for (int j = 0; j < boards.size() && sharing.holdsBack() && !sharing.isHeldBack(); j++) {
                LaidBoard other = boards.get(j);
                LaidBoard.LaidPiece held = sharing.pieces().stream()
                        .filter(p -> Demand.isHeldBack(p.label()))
                        .findFirst()
                        .orElseThrow();
                List<LaidBoard.LaidPiece> rest = new ArrayList<>(sharing.pieces());
                rest.remove(held);
                rest.addAll(other.pieces());
                boolean swaps = i != j
                        && !other.holdsBack()
                        && other.section().equals(sharing.section())
                        && fits(other, List.of(held))
                        && fits(sharing, rest);
                if (swaps) {
                    boards.set(i, sharing.with(rest));
                    boards.set(j, other.with(List.of(held)));
                    break;
                }
            }
        }
        return answer.withBoards(boards);
    }

    private boolean fits(LaidBoard board, List<LaidBoard.LaidPiece> laid) {
        long used = 0;
        for (LaidBoard.LaidPiece piece : laid) {
            used += piece.lengthTicks() + full.kerfTicks();
        }
        return used <= board.lengthTicks() - 2 * board.trimTicks() + full.kerfTicks();
    }

    private ShoppingProblem asking(int boards, int step) {
        List<Demand> demands = new ArrayList<>(full.demands());
        lengths.forEach((section, all) -> {
            List<Long> rising = new ArrayList<>(all);
            long length = rising.get(Math.min(step, rising.size() - 1));
            for (int n = 1; n <= boards; n++) {
                demands.add(Demand.heldBack(section, length, n));
            }
        });
        return full.withDemands(demands);
    }
}
