package borderwright.app.document;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Described a fault of YAML itself, which the parser reports in its own terms, in a person's. */
final class SyntaxWords {
    private SyntaxWords() {}

    static void report(YamlEngineException fault, DocumentFaults faults) {
        if (!(fault instanceof MarkedYamlEngineException marked)) {
            faults.add(Place.START, "syntax", "This is not YAML or JSON.", "Look at its first lines.");
            return;
        }
        String problem = String.valueOf(marked.getProblem());
        boolean atItsStart =
                problem.contains("unexpected end of stream") || problem.contains("could not find expected ':'");
        Place place = place(
                atItsStart
                        ? marked.getContextMark().or(marked::getProblemMark)
                        : marked.getProblemMark().or(marked::getContextMark));
        String opened = marked.getContextMark()
                .map(m -> "line " + (m.getLine() + 1) + ", column " + (m.getColumn() + 1))
                .orElse("an earlier line");
        String[] sentence = sentence(problem, String.valueOf(marked.getContext()), opened);
        faults.add(place, "syntax", sentence[0], sentence[1]);
    }

    private static Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine() + 1, m.getColumn() + 1, "")).orElse(Place.START);
    }

    private static String[] sentence(String problem, String context, String opened) {
        if (problem.contains("\\t(TAB)")) {
            return say("A tab stands where only spaces may.", "Indent with spaces.");
        }
        if (problem.contains("cannot start any token")) {
            return say(
                    "A text cannot begin with " + firstQuoted(problem) + ".", "Put the whole text in double quotes.");
        }
        if (problem.contains("mapping values are not allowed")) {
            return say(
                    "A key with a colon cannot stand here.",
                    "Line up the keys of a group, put a space after each colon, and put a text that holds `: ` in double quotes.");
        }
        if (context.contains("flow sequence") || context.contains("flow mapping")) {
            String bracket = context.contains("sequence") ? "`]`" : "`}`";
            return say(
                    "The bracket opened at " + opened + " is not closed before this.",
                    "Put a comma between its parts and " + bracket + " at its end.");
        }
        if (context.contains("quoted scalar") && problem.contains("unexpected end")) {
            return say("The quotes opened here are not closed.", "Put the same quote at the end.");
        }
        if (context.contains("double-quoted")) {
            return say(
                    "A backslash in double quotes begins an escape, and this is none.",
                    "Write two backslashes for one, or use single quotes.");
        }
        if (problem.contains("could not find expected ':'")) {
            return say("This line has no colon after its key.", "Write `key: value`.");
        }
        if (problem.contains("expected <block end>")) {
            return say(
                    "This does not belong to the group that begins at " + opened + ".",
                    "Line up the keys of a group; put a text that begins with a quote, such as 5' 3\" in quotes, wholly in the other kind of quotes.");
        }
        if (problem.contains("expected '<document start>'")) {
            return say("The document is over before this.", "Line up the keys of a group; one document to a file.");
        }
        return say("This is neither YAML nor JSON from here on.", "Look at this line and the one before it.");
    }

    private static String[] say(String what, String right) {
        return new String[] {what, right};
    }

    private static String firstQuoted(String problem) {
        int from = problem.indexOf('\'');
        return from < 0 || from + 1 >= problem.length() ? "this character" : "`" + problem.charAt(from + 1) + "`";
    }
}
