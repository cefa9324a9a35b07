package borderwright.words;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.PluralRules;
import java.util.Map;

/**
 * One template, in the pattern syntax of ICU's message format, as far as it needs: plain slots, plurals without an offset and
 * selections. ICU's own formatter gives the same text (tested), but costs a cold start a quarter of a second.
 */
final class Template {
    private final MessagePattern pattern;
    private final String source;
    private final PluralRules plurals;

    Template(String source, PluralRules plurals) {
        this.source = source;
        this.pattern = new MessagePattern(source);
        this.plurals = plurals;
    }

    String text(Map<String, Object> slots) {
        StringBuilder out = new StringBuilder();
        write(0, slots, "", out);
        return out.toString();
    }

    /** Writes the message that starts at a part; {@code number} is what {@code #} stands for in it. */
    private void write(int start, Map<String, Object> slots, String number, StringBuilder out) {
        int from = pattern.getPart(start).getLimit();
        int limit = pattern.getLimitPartIndex(start);
        for (int i = start + 1; i <= limit; i++) {
            MessagePattern.Part part = pattern.getPart(i);
            switch (part.getType()) {
                case SKIP_SYNTAX, INSERT_CHAR, REPLACE_NUMBER, MSG_LIMIT, ARG_START -> {
                    out.append(source, from, part.getIndex());
                    if (part.getType() == MessagePattern.Part.Type.REPLACE_NUMBER) {
                        out.append(number);
                    } else if (part.getType() == MessagePattern.Part.Type.ARG_START) {
                        argument(i, slots, out);
                        i = pattern.getLimitPartIndex(i);
                    }
                    from = pattern.getPart(i).getLimit();
                }
                default -> {}
            }
        }
    }

    private void argument(int start, Map<String, Object> slots, StringBuilder out) {
        String name = pattern.getSubstring(pattern.getPart(start + 1));
        Object value = slots.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no value for the slot '" + name + "' of \"" + source + "\"");
        }
        switch (pattern.getPart(start).getArgType()) {
            case NONE -> out.append(value);
            case PLURAL -> write(form(start, plural(value, name)), slots, value.toString(), out);
            case SELECT -> write(selected(start, value.toString()), slots, "", out);
            default ->
                throw new IllegalArgumentException(
                        "the slot '" + name + "' of \"" + source + "\" is neither plain, a plural nor a selection");
        }
    }

    private static long plural(Object value, String name) {
        if (value instanceof Long count) {
            return count;
        }
        throw new IllegalArgumentException(
                "the slot '" + name + "' must be a whole number for its plural, got " + value);
    }

    /** The part where the form of a number starts: an exact form first, then its plural category, then {@code other}. */
    private int form(int start, long count) {
        int exact = selectedOr(start, "=" + count, -1);
        return exact >= 0 ? exact : selected(start, plurals.select((double) count));
    }

    private int selected(int start, String word) {
        return selectedOr(start, word, selectedOr(start, "other", start));
    }

    private int selectedOr(int start, String word, int otherwise) {
        int end = pattern.getLimitPartIndex(start);
        for (int i = start + 2; i < end; i++) {
            MessagePattern.Part part = pattern.getPart(i);
            if (part.getType() == MessagePattern.Part.Type.ARG_SELECTOR) {
                int message = i + 1;
                while (pattern.getPart(message).getType() != MessagePattern.Part.Type.MSG_START) {
                    message++;
                }
                if (pattern.partSubstringMatches(part, word)) {
                    return message;
                }
                i = pattern.getLimitPartIndex(message);
            }
        }
        return otherwise;
    }
}
