package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.pack.alike.AlikeBoards;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.figures.NameRanges;
import borderwright.pack.paper.Drawing;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Boards that are cut alike, drawn once.
 *
 * @param alike the boards, in the order in which they are cut
 * @param drawing one for all: it names the pieces of a single board, and numbers those of several
 */
public record BoardCard(List<CuttingPlan.BoardCuts> alike, Drawing drawing) {
    /** As many labels as are found again in one line of the table. */
    private static final int MOST_NAMED = 8;

    private static final int LEAST_FOR_TWO = 3;

    public BoardCard {
        alike = List.copyOf(alike);
    }

    /** Whether so many boards are cut alike that it counts them and says in short what they give. */
    public boolean counts() {
        return alike.size() > MOST_NAMED;
    }

    /** Whether each board has a column of its own for what it gives. */
    public boolean hasColumns() {
        return alike.size() <= AlikeBoards.MOST;
    }

    /** The cuts in rows: of a single board two stand side by side, first those of the left half. */
    public List<List<Integer>> rows(List<CutText> cuts) {
        boolean two = alike.size() == 1
                && cuts.size() >= LEAST_FOR_TWO
                && cuts.stream().allMatch(cut -> cut.how().isEmpty());
        int rows = two ? (cuts.size() + 1) / 2 : cuts.size();
        return IntStream.range(0, rows)
                .mapToObj(row -> IntStream.iterate(row, i -> i < cuts.size(), i -> i + rows)
                        .boxed()
                        .toList())
                .toList();
    }

    /** The boards' numbers in short. */
    public String names() {
        return NameRanges.numbers(
                alike.stream().map(CuttingPlan.BoardCuts::number).toList());
    }

    /** What the cuts at one place of all the boards give, in short. */
    public List<String> parts(int cut) {
        return PartLabels.inShort(
                alike.stream().map(board -> board.cuts().get(cut).label()).toList());
    }

    public CuttingPlan.BoardCuts first() {
        return alike.get(0);
    }
}
