package borderwright.pack.alike;

import borderwright.engine.cutting.CuttingPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts boards together that are cut at the same places, wherever they come, so that they share a drawing and a table.
 */
public final class AlikeBoards {
    /** As many columns of labels as fit beside the figures. */
    public static final int MOST = 3;

    private AlikeBoards() {}

    /** Groups in the order of cutting. */
    public static List<List<CuttingPlan.BoardCuts>> group(CuttingPlan cutting) {
        Set<String> waiting = Set.copyOf(cutting.waiting());
        Map<String, List<CuttingPlan.BoardCuts>> all = new LinkedHashMap<>();
        cutting.boards()
                .forEach(board -> all.computeIfAbsent(signature(board, cutting, waiting), k -> new ArrayList<>())
                        .add(board));
        return List.copyOf(all.values());
    }

    /** All that a sheet prints of a board but its number and the labels. */
    private static String signature(CuttingPlan.BoardCuts board, CuttingPlan cutting, Set<String> waiting) {
        StringBuilder all = new StringBuilder();
        all.append(board.section()).append('|').append(board.length().ticks());
        all.append('|').append(board.from()).append('|').append(board.owned());
        all.append('|').append(board.trim().ticks());
        for (CuttingPlan.Cut cut : board.cuts()) {
            all.append('|')
                    .append(cut.start().ticks())
                    .append(' ')
                    .append(cut.length().ticks());
            all.append(' ')
                    .append(cut.setUp())
                    .append(cut.turnedOver())
                    .append(cut.endForEnd())
                    .append(cut.sharesCut());
            all.append(waiting.contains(cut.label()));
            cutting.leftSetUp(cut).ifPresent(setUp -> all.append(' ').append(setUp.number()));
        }
        cutting.reservesOn(board.number())
                .forEach(reserve -> all.append('|').append(reserve.length().ticks()));
        all.append('|').append(cutting.heldBack().contains(board.number()));
        return all.toString();
    }
}
