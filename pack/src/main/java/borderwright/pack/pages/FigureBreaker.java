package borderwright.pack.pages;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.Set;

/** Places where a line may end: between words, and never inside a figure, a label, or between a figure and its unit. */
final class FigureBreaker implements FSTextBreaker {
    private static final Set<String> UNITS =
            Set.of("mm", "m", "m2", "m3", "kg", "litres", "h", "cu", "sq", "in", "lb", "N", "kN");

    private final BreakIterator words = BreakIterator.getLineInstance(Locale.ENGLISH);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        words.setText(newText);
    }

    /** The next place, or {@link BreakIterator#DONE}. */
    @Override
    public int next() {
        int at = words.next();
        while (at != BreakIterator.DONE && at < text.length() && isTogether(at)) {
            at = words.next();
        }
        return at;
    }

    private boolean isTogether(int at) {
        char before = text.charAt(at - 1);
        if (before == ' ') {
            return at > 1 && (isFollowedByUnit(at) || isFeetAndInches(at));
        }
        return before == '/' || text.charAt(at) == '/' || (before == '-' && at > 1 && isDigit(text.charAt(at - 2)));
    }

    private boolean isFollowedByUnit(int at) {
        int end = at;
        while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
            end++;
        }
        return isDigit(text.charAt(at - 2)) && UNITS.contains(text.substring(at, end));
    }

    private boolean isFeetAndInches(int at) {
        return text.charAt(at - 2) == '\'' && at > 2 && isDigit(text.charAt(at - 3)) && isDigit(text.charAt(at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
