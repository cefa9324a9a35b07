package borderwright.engine.message;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.words.Catalogue;
import java.util.Map;

/** UK English sentences for tests. */
public final class English {
    private static final Catalogue CATALOGUE = Catalogue.english();

    public static final Sentences METRIC = in(UnitSystem.METRIC);
    public static final Sentences IMPERIAL = in(UnitSystem.IMPERIAL);

    private English() {}

    public static Sentences in(UnitSystem units) {
        return new Sentences(
                new Wording() {
                    @Override
                    public String text(String key, Map<String, Object> slots) {
                        return CATALOGUE.text(key, slots);
                    }

                    @Override
                    public boolean has(String key) {
                        return CATALOGUE.has(key);
                    }
                },
                new LengthFormat(units));
    }
}
