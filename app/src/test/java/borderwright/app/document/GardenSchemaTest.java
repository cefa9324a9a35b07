package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The committed schema is the generated one, and agrees with the reader wherever it can express what the reader asks. */
class GardenSchemaTest {
    private static final Path COMMITTED =
            Documents.ROOT.resolve("app/src/main/resources/borderwright/app/document/garden.schema.json");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(GardenSchema.write());

    @Test
    void theCommittedSchemaIsTheGeneratedOne() throws IOException {
        Renewal.renew(COMMITTED, GardenSchema.write());
        assertThat(COMMITTED).as(Renewal.HOW).hasContent(GardenSchema.write());
    }

    @Test
    void theSchemaIsItselfSound() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(GardenSchema.write(), InputFormat.JSON)).isEmpty();
    }

    static List<Path> examples() {
        return Documents.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleFollowsIt(Path example) throws IOException {
        assertThat(faults(Files.readString(example))).isEmpty();
    }

    @Test
    void theGardenThatUsesEveryKeyFollowsItAndUsesEveryKey() throws IOException {
        assertThat(faults(Documents.everyKey())).isEmpty();
        // a border is a ring or a strip, never both
        String text = Documents.everyKey() + Documents.resource("small.yaml");
        for (RecordShape shape : shapes().toList()) {
            for (FieldShape field : shape.fields()) {
                assertThat(text).as("%s", shape.type()).containsPattern("\\b" + field.key() + ":");
            }
        }
    }

    private static Stream<RecordShape> shapes() {
        return Stream.concat(
                below(RecordShape.of(borderwright.engine.garden.given.GivenGarden.class)),
                RecordShape.measures().values().stream());
    }

    private static Stream<RecordShape> below(RecordShape shape) {
        return Stream.concat(
                Stream.of(shape),
                shape.fields().stream()
                        .filter(f -> f.kind() == FieldKind.RECORD)
                        .flatMap(f -> below(RecordShape.of(f.type()))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "length-without-unit.yaml",
                "length-is-a-list.yaml",
                "length-clock.yaml",
                "length-empty.yaml",
                "range-half.yaml",
                "range-wrong-key.yaml",
                "angle-without-unit.yaml",
                "key-misspelt.yaml",
                "key-in-another-spelling.yaml",
                "key-unknown.yaml",
                "key-missing.yaml",
                "key-empty.yaml",
                "text-for-a-list.yaml",
                "group-for-a-list.yaml",
                "text-for-a-group.yaml",
                "list-for-a-text.yaml",
                "number-with-sign.yaml",
                "number-in-quotes.yaml",
                "number-negative.yaml",
                "number-not-whole.yaml",
                "yes-or-no.yaml",
                "choice-misspelt.yaml",
                "choice-unknown.yaml",
                "measure-misspelt.yaml",
                "measure-of-two-kinds.yaml",
                "measure-is-a-text.yaml",
                "measure-wrong-key.yaml",
                "variant-faults.yaml",
                "many-at-once.yaml",
                "json-faults.json",
                "yaml-list-at-the-top.yaml",
                "nothing.yaml"
            })
    void whatTheSchemaCanExpressFailsIt(String broken) throws IOException {
        assertThat(faults(Documents.resource("broken/" + broken))).isNotEmpty();
    }

    /** A person writes lengths in many ways: what the reader takes, the schema must not refuse. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1850 mm",
                "1.85 m",
                "1,85 m",
                "6' 4 1/2\"",
                "6' 4",
                "½ in",
                "-452 mm",
                "5'-3-1/2\"",
                "6′ 4½″",
                "18 ft 4-3/8 in",
                "0",
                "2 yd",
                "1 m 85 cm",
                ".5 m"
            })
    void lengthsInAnyUnitFollowIt(String length) throws IOException {
        String yaml = Documents.resource("small.yaml")
                .replace("strip width: 600 mm", "strip width: " + MAPPER.writeValueAsString(length));
        assertThat(faults(yaml)).isEmpty();
    }

    private List<?> faults(String yaml) throws IOException {
        Object loaded =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
        JsonNode node = MAPPER.valueToTree(loaded);
        return SCHEMA.validate(node);
    }
}
