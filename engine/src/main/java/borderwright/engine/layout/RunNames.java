package borderwright.engine.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * Short letters for runs, so that a planter's name such as {@code F3} fits on a piece.
 *
 * <p>The first letter of the run's name, or as many more of its letters as tell it from the runs before it; letters of
 * the alphabet where the names do not differ. Never a letter that marks boards or pieces, and none that would give a
 * planter the name of a point of the survey: both stand side by side in the peg list.
 */
final class RunNames {
    /** Letters of boards, braces, capping, dividers, legs, posts, bearers, slats and ties. */
    private static final Set<String> PIECES = Set.of("B", "C", "D", "L", "P", "R", "S", "T");

    private final Collection<String> points;
    private final List<String> letters = new ArrayList<>();

    private RunNames(Collection<String> points) {
        this.points = points;
    }

    /**
     * Letters for each run.
     *
     * @param names of the runs, in order
     * @param points names of the survey's points
     */
    static List<String> lettersOf(List<String> names, Collection<String> points) {
        RunNames runs = new RunNames(points);
        names.forEach(name -> runs.letters.add(runs.lettersFor(name)));
        return runs.letters;
    }

    private String lettersFor(String name) {
        StringBuilder only = new StringBuilder();
        name.codePoints()
                .filter(Character::isLetter)
                .map(Character::toUpperCase)
                .forEach(only::appendCodePoint);
        String all = only.toString();
        for (int end = 1; end <= Math.min(3, all.length()); end++) {
            if (isFree(all.substring(0, end))) {
                return all.substring(0, end);
            }
        }
        for (int i = 0; ; i++) {
            String next =
                    i < 26 ? String.valueOf((char) ('A' + i)) : "R" + (char) ('A' + i / 26 - 1) + (char) ('A' + i % 26);
            if (isFree(next)) {
                return next;
            }
        }
    }

    private boolean isFree(String start) {
        return !letters.contains(start)
                && !PIECES.contains(start)
                && points.stream().noneMatch(p -> isPlanter(start, p));
    }

    /** Whether a point is named as a planter of these letters would be: the letters and a number. */
    private static boolean isPlanter(String start, String point) {
        return point.length() > start.length()
                && point.regionMatches(true, 0, start, 0, start.length())
                && point.substring(start.length()).chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
