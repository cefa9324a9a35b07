package borderwright.app.document;

import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.vocabulary.Described;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes the table of every key of the garden document, in Markdown, by the same walk over the records as the reader. */
public final class FieldTable {
    private final StringBuilder out = new StringBuilder();
    private final Deque<RecordShape> waiting = new ArrayDeque<>();
    private final Map<Class<?>, String> titles = new HashMap<>();

    private FieldTable() {}

    /** The tables, group by group in the order in which a reader meets them. */
    public static String write() {
        FieldTable table = new FieldTable();
        table.meet(RecordShape.of(GivenGarden.class), "The garden");
        while (!table.waiting.isEmpty()) {
            table.group(table.waiting.remove());
        }
        return table.out.toString();
    }

    private void meet(RecordShape shape, String title) {
        if (titles.putIfAbsent(shape.type(), title) == null) {
            waiting.add(shape);
        }
    }

    private void group(RecordShape shape) {
        out.append("### ").append(capitalised(titles.get(shape.type()))).append("\n\n");
        out.append(sentence(shape.says())).append("\n\n");
        out.append("| key | what it is | written as | when left out |\n|---|---|---|---|\n");
        shape.fields().forEach(this::row);
        out.append('\n');
        for (FieldShape field : shape.fields()) {
            if (field.kind() == FieldKind.RECORD) {
                meet(RecordShape.of(field.type()), title(shape, field));
            } else if (field.kind() == FieldKind.MEASURE) {
                RecordShape.measures().forEach((key, measure) -> meet(measure, "a measure of kind `" + key + "`"));
            }
        }
    }

    private String title(RecordShape shape, FieldShape field) {
        String holder = shape.type() == GivenGarden.class ? "" : " in " + titles.get(shape.type());
        return (field.isList() ? "an item of `" : "`") + field.key() + "`" + holder;
    }

    private void row(FieldShape field) {
        String example = field.says().example().isEmpty()
                ? ""
                : ", such as `" + field.says().example() + "`";
        out.append("| `").append(field.key()).append("` | ");
        out.append(cell(field.says().value() + example)).append(" | ");
        out.append(cell(writtenAs(field))).append(" | ");
        out.append(cell(whenLeftOut(field))).append(" |\n");
    }

    private static String writtenAs(FieldShape field) {
        Limits limits = Limits.of(field);
        Limits usual = Limits.usual(field);
        String one = field.kind() == FieldKind.CHOICE
                ? choices(field)
                : field.kind().word()
                        + (limits.areSet() ? " " + limits.inEnglish() : "")
                        + (!usual.equals(limits) ? ", usually " + usual.inEnglish() : "");
        return field.isList() ? "list, each item a " + one : one;
    }

    private static String choices(FieldShape field) {
        StringBuilder all = new StringBuilder();
        for (Object constant : field.type().getEnumConstants()) {
            all.append(all.isEmpty() ? "" : "; ")
                    .append('`')
                    .append(FieldShape.words((Enum<?>) constant))
                    .append('`');
            String meaning = meaning((Enum<?>) constant);
            all.append(meaning.isEmpty() ? "" : " (" + meaning + ")");
        }
        return all.toString();
    }

    private static String meaning(Enum<?> constant) {
        try {
            Described says =
                    constant.getDeclaringClass().getField(constant.name()).getAnnotation(Described.class);
            return says == null ? "" : says.value();
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException("an enum without its own constant: " + constant, e);
        }
    }

    private static String whenLeftOut(FieldShape field) {
        if (!field.optional()) {
            return "**needed**";
        }
        return !field.says().otherwise().isEmpty() ? field.says().otherwise() : field.isList() ? "none" : "not given";
    }

    private static String sentence(String says) {
        return capitalised(says) + ".";
    }

    private static String capitalised(@Nullable String text) {
        return text == null ? "" : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
