package borderwright.engine.cutting;

import borderwright.engine.buying.LaidBoard;
import borderwright.engine.buying.ShoppingAnswer;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A board that is there, or will be when the order comes.
 *
 * @param id mark chalked on it, unique
 * @param section its section
 * @param length its true length
 * @param from supplier, or where in the shed it lies
 * @param owned whether it is already in the shed; such a board loses no trim
 * @param meantFor labels of the pieces that the basket cuts from it, in order; empty when nothing is known
 */
public record BoardInHand(String id, String section, Length length, String from, boolean owned, List<String> meantFor) {
    public BoardInHand {
        meantFor = List.copyOf(meantFor);
    }

    /** Whether it is kept whole until the last planter stands. */
    boolean isHeldBack() {
        return meantFor.stream().anyMatch(label -> label.startsWith(LaidBoard.HELD_BACK));
    }

    /** Every board of a basket, the spare ones of packs included, numbered B01 and on. */
    public static List<BoardInHand> of(ShoppingAnswer answer) {
        List<BoardInHand> boards = new ArrayList<>();
        for (LaidBoard laid : answer.boards()) {
            for (int n = 0; n < laid.count(); n++) {
                List<String> labels =
                        laid.pieces().stream().map(LaidBoard.LaidPiece::label).toList();
                boards.add(new BoardInHand(
                        name(boards.size()),
                        laid.section(),
                        new Length(laid.lengthTicks()),
                        laid.supplier(),
                        laid.owned(),
                        labels));
            }
        }
        for (ShoppingAnswer.Order order : answer.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                addSpares(order.supplier(), line, boards);
            }
        }
        return boards;
    }

    private static void addSpares(String supplier, ShoppingAnswer.BoardLine line, List<BoardInHand> boards) {
        String section = line.offer().section();
        Length length = new Length(line.offer().lengthTicks());
        long there = boards.stream()
                .filter(b ->
                        !b.owned && b.section.equals(section) && b.length.equals(length) && b.from.equals(supplier))
                .count();
        for (long n = there; n < (long) line.packs() * line.offer().pack(); n++) {
            boards.add(new BoardInHand(name(boards.size()), section, length, supplier, false, List.of()));
        }
    }

    private static String name(int index) {
        return String.format(Locale.ROOT, "B%02d", index + 1);
    }
}
