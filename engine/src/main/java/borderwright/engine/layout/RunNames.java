package borderwright.engine.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Short letters for runs, so that a planter's name such as {@code F3} fits on a piece.
 *
 * <p>The first letter of the run's name, or as many more of its letters as tell it from the runs before it; letters of
 * the alphabet where the names do not differ. Never B alone, which marks boards.
 */
final class RunNames {
    /** Boards are marked B1, B2 and so on. */
    private static final String BOARDS = "B";

    private RunNames() {}

    static List<String> lettersOf(List<String> names) {
        List<String> letters = new ArrayList<>();
        for (String name : names) {
            letters.add(letters(name, letters));
        }
        return letters;
    }

    private static String letters(String name, List<String> taken) {
        StringBuilder only = new StringBuilder();
        name.codePoints()
                .filter(Character::isLetter)
                .map(Character::toUpperCase)
                .forEach(only::appendCodePoint);
        String all = only.toString();
        for (int end = 1; end <= Math.min(3, all.length()); end++) {
            String start = all.substring(0, end);
            if (!taken.contains(start) && !start.equals(BOARDS)) {
                return start;
            }
        }
        for (int i = 0; ; i++) {
            String next =
                    i < 26 ? String.valueOf((char) ('A' + i)) : "R" + (char) ('A' + i / 26 - 1) + (char) ('A' + i % 26);
            if (!taken.contains(next) && !next.equals(BOARDS)) {
                return next;
            }
        }
    }
}
