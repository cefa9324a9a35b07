package borderwright.pack.form;

import java.util.List;

/**
 * A key with few possible values: one is ticked.
 *
 * @param key as the document spells it
 * @param choices what may be ticked, as the document spells it
 */
public record FormChoice(String key, List<String> choices) {
    public FormChoice {
        choices = List.copyOf(choices);
    }

    /** The choice of a key of one of the document's groups. */
    static FormChoice of(Class<? extends Record> group, Class<? extends Enum<?>> type) {
        for (var component : group.getRecordComponents()) {
            if (component.getType() == type) {
                return new FormChoice(DocumentKeys.key(component), DocumentKeys.choices(type));
            }
        }
        throw new IllegalArgumentException(group.getSimpleName() + " has no choice of " + type.getSimpleName());
    }
}
