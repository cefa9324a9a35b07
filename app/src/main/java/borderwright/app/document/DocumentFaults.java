package borderwright.app.document;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers faults as they are found, each once, up to the number that a person would read. */
final class DocumentFaults {
    private static final int MOST_QUOTED = 60;

    private final Set<LocatedProblem> found = new LinkedHashSet<>();

    /** No more are taken: whoever is looking for faults may stop. */
    boolean isFull() {
        return found.size() >= DocumentLimits.MOST_FAULTS;
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    void add(Place place, Message fault) {
        Message oneLine = new Message(
                fault.code(),
                fault.values().stream()
                        .map(value -> value instanceof String text ? oneLine(text) : value)
                        .toList());
        add(new LocatedProblem(place.line(), place.column(), new Problem(oneLine(place.path()), oneLine)));
    }

    void add(LocatedProblem fault) {
        if (!isFull()) {
            found.add(fault);
        }
    }

    boolean contains(LocatedProblem fault) {
        return found.contains(fault);
    }

    /** In the order found. */
    List<LocatedProblem> found() {
        return List.copyOf(found);
    }

    /** In the order of the document. */
    List<LocatedProblem> inOrder() {
        List<LocatedProblem> all = new ArrayList<>(found);
        all.sort(LocatedProblem.BY_PLACE);
        if (isFull()) {
            LocatedProblem last = all.get(all.size() - 1);
            all.add(new LocatedProblem(
                    last.line(),
                    last.column(),
                    new Problem("", DocumentMessage.TOO_MANY_FAULTS.of(DocumentLimits.MOST_FAULTS))));
        }
        return all;
    }

    /** A text of the document as it may stand in a sentence: short, on one line. */
    static String shortened(String text) {
        String line = oneLine(text);
        if (line.length() <= MOST_QUOTED) {
            return line;
        }
        int end = line.offsetByCodePoints(0, Math.min(MOST_QUOTED - 3, line.codePointCount(0, line.length())));
        return line.substring(0, end) + "...";
    }

    private static String oneLine(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(isLineBreakOrControl(c) ? ' ' : c));
        return out.toString();
    }

    private static boolean isLineBreakOrControl(int c) {
        return Character.isISOControl(c) || c == 0x2028 || c == 0x2029;
    }
}
