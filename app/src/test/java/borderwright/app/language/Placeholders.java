package borderwright.app.language;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A template as it stands in documentation: every slot by its name, every choice with all its words. */
final class Placeholders {
    private final MessagePattern pattern;
    private final String source;

    private Placeholders(String source) {
        this.source = source;
        this.pattern = new MessagePattern(source);
    }

    /** {@code No ‹section / run› is named `‹name›`.} */
    static String of(String template) {
        Placeholders placeholders = new Placeholders(template);
        StringBuilder out = new StringBuilder();
        placeholders.write(0, "", out);
        return out.toString();
    }

    /** The first word of each slot that selects: a value that its template knows. */
    static Map<String, String> firstChoices(String template) {
        MessagePattern pattern = new MessagePattern(template);
        Map<String, String> choices = new TreeMap<>();
        for (int i = 0; i < pattern.countParts(); i++) {
            if (pattern.getPart(i).getType() == Part.Type.ARG_START
                    && pattern.getPart(i).getArgType() == ArgType.SELECT) {
                choices.putIfAbsent(
                        pattern.getSubstring(pattern.getPart(i + 1)), pattern.getSubstring(pattern.getPart(i + 2)));
            }
        }
        return choices;
    }

    private void write(int start, String number, StringBuilder out) {
        int from = pattern.getPart(start).getLimit();
        int limit = pattern.getLimitPartIndex(start);
        for (int i = start + 1; i <= limit; i++) {
            Part part = pattern.getPart(i);
            switch (part.getType()) {
                case SKIP_SYNTAX, INSERT_CHAR, REPLACE_NUMBER, MSG_LIMIT, ARG_START -> {
                    out.append(source, from, part.getIndex());
                    if (part.getType() == Part.Type.REPLACE_NUMBER) {
                        out.append('‹').append(number).append('›');
                    } else if (part.getType() == Part.Type.ARG_START) {
                        argument(i, out);
                        i = pattern.getLimitPartIndex(i);
                    }
                    from = pattern.getPart(i).getLimit();
                }
                default -> {}
            }
        }
    }

    private void argument(int start, StringBuilder out) {
        String name = pattern.getSubstring(pattern.getPart(start + 1));
        List<String> forms = new ArrayList<>();
        int end = pattern.getLimitPartIndex(start);
        for (int i = start + 2; i < end; i++) {
            if (pattern.getPart(i).getType() == Part.Type.MSG_START) {
                StringBuilder form = new StringBuilder();
                write(i, name, form);
                forms.add(form.toString());
                i = pattern.getLimitPartIndex(i);
            }
        }
        switch (pattern.getPart(start).getArgType()) {
            case NONE -> out.append('‹').append(name).append('›');
            // the last form is that of other numbers
            case PLURAL -> out.append(forms.get(forms.size() - 1));
            default -> out.append('‹').append(String.join(" / ", forms)).append('›');
        }
    }
}
