package borderwright.engine.spelling;

import borderwright.engine.message.Message;
import java.util.Collection;
import java.util.Optional;

/**
 * The known name that a person may have meant.
 *
 * <p>Distance is the number of single letters put in, left out, changed, or swapped with a neighbour (optimal string
 * alignment); case, hyphens and underscores do not count. A name is near when no more than a third of its letters, and
 * at least one, would have to change.
 */
public final class NearestName {
    /** Longer texts are not compared: the work grows with the product of the lengths. */
    private static final int MOST_LETTERS = 40;

    /** Of a longer list only the first so many are compared. */
    private static final int MOST_KNOWN = 500;

    private NearestName() {}

    /** The nearest of {@code known} when one is near; of two equally near the first. */
    public static Optional<String> of(String written, Collection<String> known) {
        if (written.length() > MOST_LETTERS) {
            return Optional.empty();
        }
        String nearest = null;
        int least = Integer.MAX_VALUE;
        String plainWritten = plain(written);
        for (String name : known.stream().limit(MOST_KNOWN).toList()) {
            if (name.length() <= MOST_LETTERS) {
                String plainName = plain(name);
                int third = Math.max(1, Math.max(plainWritten.length(), plainName.length()) / 3);
                int limit = Math.min(Math.min(third, plainName.length() - 1), least - 1);
                int distance = distance(plainWritten, plainName, limit);
                if (distance <= limit) {
                    least = distance;
                    nearest = name;
                }
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** {@code Perhaps you meant `name`.}, or nothing when no name is near. */
    public static Optional<Message> perhaps(String written, Collection<String> known) {
        return of(written, known).map(SpellingMessage.PERHAPS_YOU_MEANT::of);
    }

    /** Lower-case words: camelCase, hyphens and underscores separate words too. */
    private static String plain(String name) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (Character.isUpperCase(c) && i > 0 && Character.isLowerCase(name.charAt(i - 1))) {
                out.append(' ');
            }
            out.append(c == '-' || c == '_' ? ' ' : Character.toLowerCase(c));
        }
        return out.toString().strip();
    }

    /** The distance when it is at most {@code limit}, else something greater; only cells that can matter are filled. */
    private static int distance(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return Integer.MAX_VALUE;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            int least = Integer.MAX_VALUE;
            for (int j = 0; j <= b.length(); j++) {
                boolean matters = Math.abs(i - j) <= limit;
                d[i][j] = !matters ? limit + 1 : i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
                least = Math.min(least, d[i][j]);
            }
            if (least > limit) {
                return least;
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
