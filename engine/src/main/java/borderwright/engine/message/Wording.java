package borderwright.engine.message;

import java.util.Map;

/** The templates of a language; the engine is given them and reads no file. */
public interface Wording {
    /**
     * The sentence of a key.
     *
     * @param key of the template
     * @param slots values by name: text with its unit, or a {@link Long} where a plural may depend on it
     */
    String text(String key, Map<String, Object> slots);

    /** Whether there is a template of that key. */
    boolean has(String key);
}
