package borderwright.engine.problem;

import java.util.Collection;
import java.util.Locale;
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
    private static final int MOST_LETTERS = 80;

    private NearestName() {}

    /** The nearest of {@code known} when one is near; of two equally near the first. */
    public static Optional<String> of(String said, Collection<String> known) {
        String nearest = null;
        int least = Integer.MAX_VALUE;
        String plainSaid = plain(said);
        for (String name : known) {
            String plainName = plain(name);
            if (plainSaid.length() > MOST_LETTERS || plainName.length() > MOST_LETTERS) {
                continue;
            }
            int distance = distance(plainSaid, plainName);
            int allowed = Math.max(1, Math.max(plainSaid.length(), plainName.length()) / 3);
            if (distance < least && distance <= allowed && distance < plainName.length()) {
                least = distance;
                nearest = name;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** {@code " Perhaps you meant `name`."}, or nothing when no name is near. */
    public static String perhaps(String said, Collection<String> known) {
        return of(said, known).map(name -> " Perhaps you meant `" + name + "`.").orElse("");
    }

    private static String plain(String name) {
        // camelCase and snake_case are words too
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .replace('-', ' ')
                .replace('_', ' ')
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
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
