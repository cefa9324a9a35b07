package borderwright.engine.cutting;

import borderwright.engine.cutting.CuttingPlan.BoardCuts;
import borderwright.engine.cutting.CuttingPlan.Reserve;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The numbers chalked on boards. */
public final class BoardNumbers {
    private BoardNumbers() {}

    /** The same plan with boards numbered from 1 in the order in which they are cut, those that stay whole after them. */
    public static CuttingPlan asCut(CuttingPlan plan) {
        Map<Integer, Integer> numbers = new HashMap<>();
        List<BoardCuts> boards = new ArrayList<>();
        for (BoardCuts board : plan.boards()) {
            numbers.put(board.number(), numbers.size() + 1);
            boards.add(board.numbered(numbers.size()));
        }
        List<Integer> heldBack = new ArrayList<>();
        for (int board : plan.heldBack()) {
            numbers.put(board, numbers.size() + 1);
            heldBack.add(numbers.size());
        }
        List<Reserve> reserves = new ArrayList<>();
        for (Reserve reserve : plan.reserves()) {
            reserves.add(new Reserve(
                    numbers.getOrDefault(reserve.board(), reserve.board()), reserve.label(), reserve.length()));
        }
        return new CuttingPlan(boards, plan.setUps(), plan.waiting(), heldBack, plan.uncut(), reserves, plan.done());
    }
}
