package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.Garden;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.Origins.Kind;
import borderwright.engine.garden.resolve.GardenResolver;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** A default is no more than what a person could have written: written out, it changes nothing but who sets the value. */
class WrittenDefaultsTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final Pattern STEP = Pattern.compile("([^\\[]+)(?:\\[(\\d+)])?");

    /**
     * Defaults that no one value of the document says: two values at once, what an instrument takes, the section of another
     * part that is followed in variants too, nothing at all, and a charge that bands exclude.
     */
    private static final Pattern NOT_ONE_VALUE =
            Pattern.compile("ground\\.gravel|filling\\.finish\\.coverage|filling\\.mix"
                    + "|build\\.post footing|build\\.(braces|posts|ties|dividers|capping|bearers|slats)"
                    + "|.*\\.give or take|suppliers\\[\\d+]\\.delivery");

    static List<String> documents() {
        return Stream.concat(
                        Documents.examples().stream().map(WrittenDefaultsTest::text), Stream.of(Documents.everyKey()))
                .toList();
    }

    private static String text(Path example) {
        try {
            return Files.readString(example);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void changeNothingButTheirOrigin(String yaml) throws IOException {
        Map<String, Object> tree = tree(yaml);
        Garden plain = garden(tree);
        assertThat(garden(tree)).isEqualTo(plain);
        List<String> written = new ArrayList<>();
        plain.origins().byPath().forEach((path, origin) -> {
            if (origin.kind() == Kind.DEFAULT && !NOT_ONE_VALUE.matcher(path).matches()) {
                write(tree, path, origin.value());
                written.add(path);
            }
        });

        Garden explicit = garden(tree);

        assertThat(written).hasSizeGreaterThan(10);
        assertThat(written).allMatch(explicit.origins()::isGiven);
        assertThat(withoutOrigins(explicit)).isEqualTo(withoutOrigins(plain));
    }

    private static Garden withoutOrigins(Garden garden) {
        return new Garden(
                garden.heading(),
                garden.survey(),
                garden.design(),
                garden.supply(),
                garden.workshop(),
                garden.site(),
                Origins.NONE);
    }

    private static Garden garden(Map<String, Object> tree) throws JsonProcessingException {
        byte[] json = MAPPER.writeValueAsBytes(tree);
        assertThat(Documents.faults(json)).isEmpty();
        return GardenResolver.resolve(
                ((DocumentAnswer.Sound) GardenReader.read(json)).document().garden());
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> tree(String yaml) {
        Object loaded =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
        return (Map<String, Object>) loaded;
    }

    @SuppressWarnings("unchecked")
    private static void write(Map<String, Object> tree, String path, String value) {
        String[] steps = path.split("\\.");
        Map<String, Object> group = tree;
        for (int i = 0; i < steps.length - 1; i++) {
            Matcher step = STEP.matcher(steps[i]);
            assertThat(step.matches()).isTrue();
            Object next = group.computeIfAbsent(step.group(1), key -> new LinkedHashMap<>());
            group = (Map<String, Object>)
                    (step.group(2) == null ? next : ((List<Object>) next).get(Integer.parseInt(step.group(2))));
        }
        group.put(steps[steps.length - 1], written(path, value));
    }

    private static Object written(String path, String value) {
        if (path.equals("days.work days")) {
            return List.of(value.split(", "));
        }
        return value.matches("-?\\d+(\\.\\d+)?") ? new BigDecimal(value) : value;
    }
}
