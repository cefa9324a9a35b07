package borderwright.app.language;

import borderwright.engine.message.MessageCode;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The codes of every module, found in the compiled classes: the enums that declare them are not public. */
final class Codes {
    private static final Map<String, List<MessageCode>> BY_ENUM = find();

    private Codes() {}

    /** All codes, enum by enum. */
    static List<MessageCode> all() {
        return BY_ENUM.values().stream().flatMap(Collection::stream).toList();
    }

    /** The code of a key. */
    static MessageCode of(String key) {
        return all().stream()
                .filter(code -> code.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no code has the key " + key));
    }

    private static Map<String, List<MessageCode>> find() {
        Map<String, List<MessageCode>> found = new TreeMap<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(location -> !location.contains("test-classes"))
                .importPackages("borderwright")) {
            if (type.isEnum() && type.isAssignableTo(MessageCode.class)) {
                List<MessageCode> codes = new ArrayList<>();
                for (Object constant : type.reflect().getEnumConstants()) {
                    codes.add((MessageCode) constant);
                }
                found.put(type.getName(), codes);
            }
        }
        return found;
    }
}
