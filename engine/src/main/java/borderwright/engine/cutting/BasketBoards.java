package borderwright.engine.cutting;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.row.BoardInHand;
import java.util.ArrayList;
import java.util.List;

/** The boards in hand once a basket has come. */
public final class BasketBoards {
    private BasketBoards() {}

    /**
     * Every board of a basket, the spare ones of packs included, numbered from 1.
     *
     * @param trim of a board that is bought
     */
    public static List<BoardInHand> of(ShoppingAnswer answer, Length trim) {
        List<BoardInHand> boards = new ArrayList<>();
        for (LaidBoard laid : answer.boards()) {
            for (int n = 0; n < laid.count(); n++) {
                List<String> labels =
                        laid.pieces().stream().map(LaidBoard.LaidPiece::label).toList();
                boards.add(new BoardInHand(
                        boards.size() + 1,
                        laid.section(),
                        new Length(laid.lengthTicks()),
                        laid.supplier(),
                        laid.owned(),
                        new Length(laid.trimTicks()),
                        labels));
            }
        }
        for (ShoppingAnswer.Order order : answer.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                addSpares(order.supplier(), line, trim, boards);
            }
        }
        return boards;
    }

    private static void addSpares(
            String supplier, ShoppingAnswer.BoardLine line, Length trim, List<BoardInHand> boards) {
        String section = line.offer().section();
        Length length = new Length(line.offer().lengthTicks());
        long there = boards.stream()
                .filter(b -> !b.owned()
                        && b.section().equals(section)
                        && b.length().equals(length)
                        && b.from().equals(supplier))
                .count();
        for (long n = there; n < (long) line.packs() * line.offer().pack(); n++) {
            boards.add(BoardInHand.bought(boards.size() + 1, section, length, supplier, trim));
        }
    }
}
