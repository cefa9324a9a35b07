package borderwright.engine.buying.why;

import borderwright.engine.buying.list.LaidBoard;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.prices.BoardOffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How likely the boards of a section are to run short when some turn out unusable, and how many spares cure it.
 *
 * <p>Each board is unusable with the same chance, independently of the others; a spare of the longest length in use can
 * stand in for any board. The boards then run short exactly when more of them, spares included, are unusable than there
 * are spares: a binomial tail, summed term by term, so no simulation is needed.
 *
 * <p>See docs/decisions/0052.
 *
 * @param section the section
 * @param boards boards that are cut, owned ones left out
 * @param spares boards bought but not cut that are as long as the longest that is cut
 * @param longestTicks length of that board, ticks
 * @param chance chance of running short, 0 to 1
 * @param sparesNeeded spares that bring the chance to the accepted risk or below
 */
public record ShortageRisk(String section, int boards, int spares, long longestTicks, double chance, int sparesNeeded) {
    /**
     * For each section that is bought, in the order in which the answer cuts them.
     *
     * @param answer what is bought
     * @param reject chance that a board is unusable, at least 0 and below 1
     * @param risk chance of running short that is accepted, above 0
     */
    public static List<ShortageRisk> of(ShoppingAnswer answer, double reject, double risk) {
        Map<String, Integer> cut = new LinkedHashMap<>();
        Map<String, Long> longest = new LinkedHashMap<>();
        for (LaidBoard board : answer.boards()) {
            if (!board.owned() && !board.isHeldBack()) {
                cut.merge(board.section(), board.count(), Integer::sum);
                longest.merge(board.section(), board.lengthTicks(), Math::max);
            }
        }
        List<ShortageRisk> sections = new ArrayList<>();
        cut.forEach((section, boards) -> {
            long length = longest.getOrDefault(section, 0L);
            int spares = spares(answer, section, length);
            sections.add(new ShortageRisk(
                    section, boards, spares, length, chance(boards, spares, reject), sparesFor(boards, reject, risk)));
        });
        return sections;
    }

    private static int spares(ShoppingAnswer answer, String section, long least) {
        int spares = 0;
        for (ShoppingAnswer.Order order : answer.orders()) {
            for (ShoppingAnswer.BoardLine line : order.boards()) {
                BoardOffer offer = line.offer();
                spares += offer.section().equals(section) && offer.lengthTicks() >= least
                        ? line.packs() * offer.pack()
                        : 0;
            }
        }
        for (LaidBoard board : answer.boards()) {
            spares -= !board.owned()
                            && !board.isHeldBack()
                            && board.section().equals(section)
                            && board.lengthTicks() >= least
                    ? board.count()
                    : 0;
        }
        return spares;
    }

    /**
     * Chance that more than {@code spares} of {@code boards + spares} boards are unusable.
     *
     * @param boards boards that are needed, at least 0
     * @param spares boards beyond these, at least 0
     * @param reject chance that a board is unusable, at least 0 and below 1
     */
    static double chance(int boards, int spares, double reject) {
        if (boards < 0 || spares < 0 || !(reject >= 0 && reject < 1)) {
            throw new IllegalArgumentException(
                    "boards and spares must be 0 or more and the reject rate from 0 to below 1, got " + boards + ", "
                            + spares + ", " + reject);
        }
        int all = boards + spares;
        // In logarithms, since the first term of a long list of boards is too small for a double.
        double logTerm = all * StrictMath.log1p(-reject);
        double enough = 0;
        for (int bad = 0; bad <= spares && bad <= all; bad++) {
            enough += StrictMath.exp(logTerm);
            logTerm += StrictMath.log((all - bad) / (bad + 1.0)) + StrictMath.log(reject / (1 - reject));
        }
        return Math.min(1, Math.max(0, 1 - enough));
    }

    /** The least number of spares with which the chance is no more than {@code risk}. */
    static int sparesFor(int boards, double reject, double risk) {
        int spares = 0;
        while (chance(boards, spares, reject) > risk) {
            spares++;
        }
        return spares;
    }
}
