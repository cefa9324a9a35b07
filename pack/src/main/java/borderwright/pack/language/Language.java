package borderwright.pack.language;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Sentences;
import borderwright.engine.message.Wording;
import borderwright.words.Catalogue;
import java.util.Map;

/** A language of the catalogue as the engine's sentences need it. */
public record Language(Catalogue catalogue) implements Wording {
    /** UK English, read once. */
    private static final Language ENGLISH = new Language(Catalogue.english());

    public static Language english() {
        return ENGLISH;
    }

    /**
     * A language by its tag, such as {@code en-US}; what its message files leave out is in UK English.
     *
     * @throws IllegalArgumentException when there are no message files for the tag
     */
    public static Language of(String tag) {
        return new Language(Catalogue.of(tag, "en-GB"));
    }

    /** Sentences in this language, with quantities in these units. */
    public Sentences in(UnitSystem units) {
        return new Sentences(this, new LengthFormat(units));
    }

    @Override
    public String text(String key, Map<String, Object> slots) {
        return catalogue.text(key, slots);
    }

    @Override
    public boolean has(String key) {
        return catalogue.has(key);
    }
}
