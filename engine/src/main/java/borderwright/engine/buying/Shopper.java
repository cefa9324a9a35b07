package borderwright.engine.buying;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.Progress;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.suppliers.AnswerWriter;
import borderwright.engine.buying.suppliers.BoardSource;
import borderwright.engine.buying.suppliers.CaseSearch;
import borderwright.engine.buying.suppliers.Purchase;
import borderwright.engine.buying.suppliers.ShoppingCase;
import borderwright.engine.buying.suppliers.ShoppingSection;
import borderwright.engine.effort.Budget;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.problem.FailedCheckException;
import borderwright.engine.stock.CutVerifier;
import borderwright.engine.stock.Demand;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the cheapest basket that serves a list, and how much cheaper any other could be. */
public final class Shopper {
    private Shopper() {}

    /** {@link #buy(ShoppingProblem, Budget, Progress)} with nobody watching. */
    public static ShoppingAnswer buy(ShoppingProblem problem, Budget budget) {
        return buy(problem, budget, (cost, bound) -> {});
    }

    /**
     * The cheapest basket that is found within the budget.
     *
     * @param problem what to serve from what
     * @param budget how much work may be done
     * @param progress called with every better basket
     */
    public static ShoppingAnswer buy(ShoppingProblem problem, Budget budget, Progress progress) {
        return buy(problem, null, budget, progress);
    }

    /**
     * The same with something to begin with.
     *
     * @param known an answer to another list of the same pieces; what it cuts from a board must fit by this list's lengths too
     */
    public static ShoppingAnswer buy(
            ShoppingProblem problem, @Nullable ShoppingAnswer known, Budget budget, Progress progress) {
        ShoppingCase shopping = new ShoppingCase(problem);
        List<Message> impossible = impossible(shopping);
        if (!impossible.isEmpty()) {
            return without(ShoppingAnswer.Status.IMPOSSIBLE, shopping, impossible);
        }
        List<Packing> packings = known == null ? null : shopping.packings(known).orElse(null);
        CaseSearch search = new CaseSearch(shopping, packings, budget, progress).run();
        Purchase best = search.best();
        if (best == null) {
            return search.bound() == Long.MAX_VALUE
                    ? without(ShoppingAnswer.Status.IMPOSSIBLE, shopping, List.of(tooFew(shopping)))
                    : without(ShoppingAnswer.Status.STOPPED, shopping, List.of(NoBasketMessage.SEARCH_STOPPED.of()));
        }
        long bound = Math.min(best.cost, search.bound());
        List<ShoppingAnswer.Alternative> alternatives = search.alternatives();
        AnswerWriter writer = new AnswerWriter(shopping, best);
        List<LaidBoard> boards = writer.boards();
        check(shopping, best, boards);
        return ShoppingAnswer.builder(ShoppingAnswer.Status.FOUND)
                .cost(best.cost)
                .bound(bound)
                .orders(writer.orders())
                .boards(boards)
                .unpriced(shopping.unpriced)
                .alternatives(alternatives)
                .build();
    }

    /** Refuses a basket that does not give every piece from the boards that it names: the search must have gone wrong. */
    private static void check(ShoppingCase shopping, Purchase best, List<LaidBoard> boards) {
        for (int s = 0; s < shopping.sections.size(); s++) {
            CutVerifier.verified(shopping.sections.get(s).stock, best.packing(s));
        }
        for (LaidBoard board : boards) {
            List<Long> lengths = board.pieces().stream()
                    .map(LaidBoard.LaidPiece::lengthTicks)
                    .toList();
            FailedCheckException.refuse(
                    "A board of " + board.section(),
                    CutVerifier.faultsOfBoard(
                            board.lengthTicks(), board.trimTicks(), shopping.problem.kerfTicks(), lengths));
        }
    }

    private static ShoppingAnswer without(ShoppingAnswer.Status status, ShoppingCase shopping, List<Message> reasons) {
        return ShoppingAnswer.builder(status)
                .unpriced(shopping.unpriced)
                .reasons(reasons)
                .build();
    }

    private static Message tooFew(ShoppingCase shopping) {
        List<String> names = shopping.sections.stream()
                .map(s -> s.name)
                .filter(name -> !name.isEmpty())
                .toList();
        return NoBasketMessage.TOO_FEW_BOARDS.of(names, names.size());
    }

    /** Pieces that no board can give, a message for each length. */
    private static List<Message> impossible(ShoppingCase shopping) {
        List<Message> reasons = new ArrayList<>();
        for (ShoppingSection section : shopping.sections) {
            long longest = 0;
            for (int j = 0; j < section.stock.boards(); j++) {
                if (section.stock.available(j) > 0) {
                    BoardSource source = section.source(j);
                    long trims = 2 * source.trimTicks(shopping.problem.trimTicks());
                    longest = Math.max(longest, source.lengthTicks() - trims);
                }
            }
            for (int i : section.tooLong()) {
                reasons.add(tooLong(section.name, section.demands(i).get(0), longest));
            }
        }
        return reasons;
    }

    private static Message tooLong(String section, Demand piece, long longest) {
        int pieces = piece.label().isEmpty() ? 0 : 1;
        int sections = section.isEmpty() ? 0 : 1;
        return longest > 0
                ? NoBasketMessage.PIECE_TOO_LONG.of(
                        piece.label(),
                        pieces,
                        section,
                        sections,
                        mm(piece.lengthTicks()),
                        mm(longest),
                        mm(piece.lengthTicks() - longest))
                : NoBasketMessage.PIECE_WITHOUT_BOARDS.of(
                        piece.label(), pieces, section, sections, mm(piece.lengthTicks()));
    }

    private static double mm(long ticks) {
        return new Length(ticks).mm();
    }
}
