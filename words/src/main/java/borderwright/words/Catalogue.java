package borderwright.words;

import com.ibm.icu.text.PluralRules;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.ParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The templates of one language. A language is complete with those that it falls back on; UK English is the source.
 *
 * <p>Safe for use by several threads.
 */
public final class Catalogue {
    /** The files of a language, one for each group of rooms; a language may leave any of them out. */
    public static final List<String> FILES = List.of(
            "language",
            "app",
            "assembly",
            "bench",
            "buildup",
            "buying",
            "cautions",
            "commands",
            "cutting",
            "document",
            "drawings",
            "estimate",
            "form",
            "garden",
            "layout",
            "pack",
            "plan",
            "reading",
            "site",
            "start",
            "strength",
            "survey");

    private static final String PLURALS = "plural-rules";

    private final Map<String, String> patterns;
    private final Map<String, Template> templates = new ConcurrentHashMap<>();
    private final PluralRules plurals;

    private Catalogue(Map<String, String> patterns) {
        this.patterns = Map.copyOf(patterns);
        try {
            // Rules stand in the language's own file: looking them up in the library's data costs a cold start a tenth
            // of a second.
            this.plurals = PluralRules.parseDescription(patterns.getOrDefault(PLURALS, ""));
        } catch (ParseException e) {
            throw new IllegalArgumentException("'" + PLURALS + "' is no plural rule: " + patterns.get(PLURALS), e);
        }
    }

    /** UK English. */
    public static Catalogue english() {
        return of("en-GB");
    }

    /**
     * The catalogue of a language.
     *
     * @param languages folders of message files, the language itself first, then what it falls back on, such as {@code en-US},
     *     {@code en-GB}
     * @throws IllegalArgumentException when one of them has no message file
     */
    public static Catalogue of(String... languages) {
        Map<String, String> patterns = new HashMap<>();
        for (String language : languages) {
            Map<String, String> own = new HashMap<>();
            for (String file : FILES) {
                own.putAll(read(language + "/" + file + ".properties"));
            }
            if (own.isEmpty()) {
                throw new IllegalArgumentException("there are no message files for the language '" + language + "'");
            }
            own.forEach(patterns::putIfAbsent);
        }
        return new Catalogue(patterns);
    }

    /** A catalogue of these templates, for languages that are kept elsewhere. */
    public static Catalogue of(Map<String, String> patterns) {
        return new Catalogue(patterns);
    }

    /** The keys of all templates, in alphabetical order. */
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>(patterns.keySet());
        keys.remove(PLURALS);
        return keys;
    }

    public boolean has(String key) {
        return patterns.containsKey(key);
    }

    /** The template of a key as it stands in the file. */
    public String pattern(String key) {
        String pattern = patterns.get(key);
        if (pattern == null) {
            throw new IllegalArgumentException("no message file has the key '" + key + "'");
        }
        return pattern;
    }

    /**
     * A sentence.
     *
     * @param key of the template
     * @param slots what to put in by name: text, or {@link Long} where a plural depends on it
     */
    public String text(String key, Map<String, Object> slots) {
        return templates
                .computeIfAbsent(key, k -> new Template(pattern(k), plurals))
                .text(slots);
    }

    private static Map<String, String> read(String path) {
        Map<String, String> read = new HashMap<>();
        try (@Nullable InputStream in = Catalogue.class.getResourceAsStream(path)) {
            if (in != null) {
                Properties properties = new UniqueKeys(path);
                properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
                properties.stringPropertyNames().forEach(key -> read.put(key, properties.getProperty(key)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the message file " + path + " cannot be read", e);
        }
        return read;
    }

    /** Refuses a key that stands twice in a file: the later one would win without a word. */
    private static final class UniqueKeys extends Properties {
        private static final long serialVersionUID = 1L;
        private final String path;

        UniqueKeys(String path) {
            this.path = path;
        }

        @Override
        public synchronized @Nullable Object put(Object key, Object value) {
            if (containsKey(key)) {
                throw new IllegalArgumentException("the key '" + key + "' stands twice in " + path);
            }
            return super.put(key, value);
        }
    }
}
