package borderwright.engine.garden.resolve;

import borderwright.engine.garden.Origins;
import borderwright.engine.garden.Origins.Kind;
import borderwright.engine.garden.Origins.Origin;
import borderwright.engine.measure.Angle;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Takes what is given or its default, and writes down which, under one path of the document. */
final class Ledger {
    /** What most defaults rest on. */
    static final String PRACTICE = "common practice, no source";

    private final Map<String, Origin> written;
    private final String path;

    private Ledger(Map<String, Origin> written, String path) {
        this.written = written;
        this.path = path;
    }

    static Ledger empty() {
        return new Ledger(new TreeMap<>(), "");
    }

    /** The ledger of a group within this one, written as given or left out. */
    Ledger in(String key, @Nullable Object group) {
        Ledger inner = new Ledger(written, path(key));
        if (group != null) {
            written.put(inner.path, new Origin(Kind.GIVEN, "", ""));
        }
        return inner;
    }

    <T> T or(String key, @Nullable T given, T otherwise, String source) {
        return given == null ? byDefault(key, otherwise, source) : given(key, given, "");
    }

    /** An angle in degrees; the default is exact, though an angle is kept in radians. */
    double degrees(String key, @Nullable Angle given, double otherwise, String source) {
        if (given == null) {
            byDefault(key, Angle.ofDegrees(otherwise), source);
            return otherwise;
        }
        return given(key, given, "").degrees();
    }

    /** A value that the document gives, perhaps under another key. */
    <T> T given(String key, T value, String note) {
        written.put(path(key), new Origin(Kind.GIVEN, OriginText.of(value), note));
        return value;
    }

    /** A value that the document does not give. */
    <T> T byDefault(String key, T value, String source) {
        written.put(path(key), new Origin(Kind.DEFAULT, OriginText.of(value), source));
        return value;
    }

    Origins origins() {
        return new Origins(new TreeMap<>(written));
    }

    private String path(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
