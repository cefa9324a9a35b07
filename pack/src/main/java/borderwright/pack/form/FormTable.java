package borderwright.pack.form;

import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.message.Message;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * A table to fill in; each row is an item of the garden document.
 *
 * @param title what is measured
 * @param how how to measure and write it
 * @param columns the document's keys, in its order
 * @param rows how many rows there is room for
 */
public record FormTable(Message title, Message how, List<Column> columns, int rows) {
    public FormTable {
        columns = List.copyOf(columns);
    }

    /**
     * A column.
     *
     * @param key as the document spells it
     * @param percent its share of the table's width
     */
    public record Column(String key, int percent) {}

    /** A table of all keys of a group but those that are hardly ever needed outside. */
    static FormTable of(Class<? extends Record> group, Set<String> leftOut, Message title, Message how, int rows) {
        List<RecordComponent> shown = Arrays.stream(group.getRecordComponents())
                .filter(component -> !leftOut.contains(DocumentKeys.key(component)))
                .toList();
        int all = shown.stream().mapToInt(FormTable::room).sum();
        List<Column> columns = shown.stream()
                .map(component -> new Column(DocumentKeys.key(component), room(component) * 100 / all))
                .toList();
        return new FormTable(title, how, columns, rows);
    }

    /** Room that a value takes when it is written in pencil: a list of lengths most, a point's letter least. */
    private static int room(RecordComponent component) {
        if (component.getType() == List.class) {
            return 48;
        }
        return component.getType() == String.class || component.getType() == Names.class ? 9 : 11;
    }
}
