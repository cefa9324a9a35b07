package borderwright.app.document;

import borderwright.engine.message.Message;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Tells a fault of YAML itself, which the parser reports in its own terms, in a person's. */
final class SyntaxWords {
    private SyntaxWords() {}

    static void report(YamlEngineException fault, DocumentFaults faults) {
        if (!(fault instanceof MarkedYamlEngineException marked)) {
            faults.add(Place.START, DocumentMessage.SYNTAX_NEITHER_YAML_NOR_JSON.of());
            return;
        }
        String problem = String.valueOf(marked.getProblem());
        boolean atItsStart =
                problem.contains("unexpected end of stream") || problem.contains("could not find expected ':'");
        Place place = place(
                atItsStart
                        ? marked.getContextMark().or(marked::getProblemMark)
                        : marked.getProblemMark().or(marked::getContextMark));
        Message opened = marked.getContextMark()
                .map(m -> DocumentMessage.OPENED_AT.of(m.getLine() + 1, m.getColumn() + 1))
                .orElseGet(DocumentMessage.OPENED_EARLIER::of);
        faults.add(place, fault(problem, String.valueOf(marked.getContext()), opened));
    }

    private static Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine() + 1, m.getColumn() + 1, "")).orElse(Place.START);
    }

    private static Message fault(String problem, String context, Message opened) {
        if (problem.contains("\\t(TAB)")) {
            return DocumentMessage.SYNTAX_TAB.of();
        }
        if (problem.contains("cannot start any token")) {
            return DocumentMessage.SYNTAX_FIRST_CHARACTER.of(firstQuoted(problem));
        }
        if (problem.contains("mapping values are not allowed")) {
            return DocumentMessage.SYNTAX_COLON.of();
        }
        if (context.contains("flow sequence") || context.contains("flow mapping")) {
            return DocumentMessage.SYNTAX_BRACKET.of(opened, context.contains("sequence") ? "]" : "}");
        }
        if (context.contains("quoted scalar") && problem.contains("unexpected end")) {
            return DocumentMessage.SYNTAX_QUOTES.of();
        }
        if (context.contains("double-quoted")) {
            return DocumentMessage.SYNTAX_ESCAPE.of();
        }
        if (problem.contains("could not find expected ':'")) {
            return DocumentMessage.SYNTAX_COLON_MISSING.of();
        }
        if (problem.contains("expected <block end>")) {
            return DocumentMessage.SYNTAX_INDENTATION.of(opened);
        }
        if (problem.contains("expected '<document start>'")) {
            return DocumentMessage.SYNTAX_AFTER_END.of();
        }
        return DocumentMessage.SYNTAX_FROM_HERE.of();
    }

    private static String firstQuoted(String problem) {
        int from = problem.indexOf('\'');
        return from < 0 || from + 1 >= problem.length() ? "" : problem.substring(from + 1, from + 2);
    }
}
