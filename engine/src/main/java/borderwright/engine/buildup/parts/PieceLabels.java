package borderwright.engine.buildup.parts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Short labels for pieces, unique in a garden whose planters have names of their own: the planter, a hyphen and the part.
 *
 * <p>{@code F3-2a} is the board of planter F3 in course 2 of side a; sides are lettered from {@code a} in the order of
 * the box's corners. A board over several planters is named after the one where its left end lies; where two of them
 * begin in one planter they are numbered, {@code F3-2a1} and {@code F3-2a2}. Other parts are written out, so that no part
 * reads like a planter or a board: {@code F3-post1}, {@code F3-brace1}, {@code F3-tie1}, {@code F3-bearer1},
 * {@code F3-leg1}, {@code F3-slat1}, {@code F3-divider2} the board of course 2 of the divider at the end of F3,
 * {@code F3-cap-a} the capping over side a. A label holds no blank, so that it can be typed back into the garden document.
 */
public final class PieceLabels {
    private final Map<String, Integer> used = new HashMap<>();

    /** Labels of the wall boards of one course on one side, by the planters where their left ends lie. */
    public static List<String> walls(List<String> planters, int course, int side) {
        return boards(planters, Integer.toString(course), side);
    }

    /** Labels of the capping boards over one side, by the planters where their left ends lie. */
    public static List<String> cappings(List<String> planters, int side) {
        return boards(planters, "cap-", side);
    }

    /** Label of a divider's board, by the planter at whose end it stands. */
    public static String divider(String planter, int course) {
        return planter + "-divider" + course;
    }

    private static List<String> boards(List<String> planters, String middle, int side) {
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

    /** The next label of a role in a planter, such as {@code F3-post1}. */
    public String next(String planter, Piece.Role role) {
        String stem = planter + "-" + role.name().toLowerCase(Locale.ROOT);
        return stem + used.merge(stem, 1, Integer::sum);
    }

    /** {@code a} to {@code z}, then {@code aa}. */
    public static String letter(int side) {
        String last = String.valueOf((char) ('a' + side % 26));
        return side < 26 ? last : letter(side / 26 - 1) + last;
    }
}
