package borderwright.app.start;

import borderwright.engine.measure.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Kinds of border that a garden document can be started from. */
enum GardenKind {
    /** One run along a fence or wall. */
    STRAIGHT,
    /** Along two walls and round the corner between them. */
    BEND,
    /** Beds in a lawn, reached from all sides. */
    ISLAND,
    /** On paving, with a floor and feet. */
    TERRACE,
    /** On a roof or balcony, with a load limit and light soil. */
    ROOF;

    /** As a person writes it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
        return Arrays.stream(values()).map(GardenKind::word).toList();
    }

    static Optional<GardenKind> of(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word().equalsIgnoreCase(word))
                .findFirst();
    }

    /** The document, in UTF-8. */
    byte[] document(UnitSystem units) {
        String file = word() + (units == UnitSystem.IMPERIAL ? "-imperial" : "") + ".yaml";
        try (InputStream in = GardenKind.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the document " + file + " is missing from the class path");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the document " + file + " cannot be read", e);
        }
    }
}
