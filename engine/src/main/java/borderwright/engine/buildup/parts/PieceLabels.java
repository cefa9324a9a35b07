package borderwright.engine.buildup.parts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Short marks for pieces, unique in a garden whose planters have names of their own.
 *
 * <p>{@code F3-2a} is the board of planter F3 in course 2 of side a; sides are lettered from {@code a} in the order of
 * the box's corners. A board over several planters is called after the one where its left end lies; where two of them
 * begin in one planter they are numbered, {@code F3-2a1} and {@code F3-2a2}. Other parts carry a capital: {@code F3-P1}
 * post, {@code B} brace, {@code 2D} divider board of course 2 (the divider at the end of F3), {@code T} tie, {@code R}
 * bearer, {@code L} leg, {@code S} slat, {@code Ca} capping over side a.
 */
public final class PieceLabels {
    private final Map<String, Integer> used = new HashMap<>();

    /** Marks of the boards of one course on one side, by the planters where their left ends lie. */
    public static List<String> boards(List<String> planters, String middle, int side) {
        Map<String, Integer> total = new HashMap<>();
        planters.forEach(planter -> total.merge(planter, 1, Integer::sum));
        Map<String, Integer> seen = new HashMap<>();
        List<String> labels = new ArrayList<>();
        for (String planter : planters) {
            int number = seen.merge(planter, 1, Integer::sum);
            boolean alone = total.getOrDefault(planter, 0) == 1;
            labels.add(planter + "-" + middle + letter(side) + (alone ? "" : Integer.toString(number)));
        }
        return labels;
    }

    /** The next mark of a kind in a planter, such as {@code F3-P1}. */
    public String next(String planter, String kind) {
        String stem = planter + "-" + kind;
        return stem + used.merge(stem, 1, Integer::sum);
    }

    /** {@code a} to {@code z}, then {@code aa}. */
    public static String letter(int side) {
        String last = String.valueOf((char) ('a' + side % 26));
        return side < 26 ? last : letter(side / 26 - 1) + last;
    }
}
