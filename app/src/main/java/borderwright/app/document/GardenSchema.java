package borderwright.app.document;

import borderwright.engine.garden.given.GivenGarden;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * Makes the JSON Schema (draft 2020-12) of the garden document by the same walk over the records as the reader.
 *
 * <p>It expresses keys, kinds of value, choices and the limits of numbers. It does not express what spans keys, nor the
 * limits of lengths and angles, because those are texts with any unit.
 */
public final class GardenSchema {
    /** A sign, a digit or a fraction, then somewhere a unit; or a bare 0. */
    private static final String LENGTH_PATTERN =
            "^\\s*[-+\u2212]?\\s*[0-9.,\u00bc-\u00be\u2153-\u215e][0-9.,/\u2044\u00bc-\u00be\u2153-\u215e\\s-]*"
                    + "([mcifyMCIFY][A-Za-z]*|['\"\u2032\u2033\u2018\u2019\u201c\u201d\u00b4]).*$|^\\s*[-+]?0+([.,]0+)?\\s*$";

    private static final String ANGLE_PATTERN =
            "^\\s*[-+\u2212]?\\s*[0-9.,\u00bc-\u00be\u2153-\u215e][0-9.,/\u2044\u00bc-\u00be\u2153-\u215e\\s-]*"
                    + "([dgDG][A-Za-z]*|[\u00b0\u00ba]).*$|^\\s*[-+]?0+([.,]0+)?\\s*$";

    private static final String CHANGES = " (changes)";

    private final ObjectMapper mapper = new ObjectMapper();
    private final ObjectNode defs = mapper.createObjectNode();
    private final Set<String> begun = new TreeSet<>();

    private GardenSchema() {}

    /** The schema as it is committed: indented by two spaces, lines ended by a line feed. */
    public static String write() {
        return new GardenSchema().json();
    }

    private String json() {
        ObjectNode schema = mapper.createObjectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Garden document");
        RecordShape garden = RecordShape.of(GivenGarden.class);
        schema.setAll(group(garden, false));
        ((ObjectNode) schema.get("properties")).set(GardenReader.VARIANTS, variants(garden));
        schema.set("$defs", defs);
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try {
            return mapper.writer(printer).writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("cannot write the schema", e);
        }
    }

    private ObjectNode variants(RecordShape garden) {
        ObjectNode variant = mapper.createObjectNode();
        variant.put("type", "object");
        ObjectNode properties = variant.putObject("properties");
        properties.set(VariantReader.NAME, described(shared("text", this::text), "what you call it"));
        properties.set(VariantReader.CHANGES, described(ref(garden, true), "the part of the garden that differs"));
        variant.putArray("required").add(VariantReader.NAME).add(VariantReader.CHANGES);
        variant.put("additionalProperties", false);
        return described(
                list(variant).put("maxItems", DocumentLimits.MOST_VARIANTS), "the garden with some of it changed");
    }

    /** A record's keys; as changes nothing is required and nothing ({@code null}) takes a key away. */
    private ObjectNode group(RecordShape shape, boolean changes) {
        ObjectNode group = mapper.createObjectNode();
        group.put("type", "object");
        group.put("description", shape.says());
        ObjectNode properties = group.putObject("properties");
        ArrayNode required = mapper.createArrayNode();
        for (FieldShape field : shape.fields()) {
            ObjectNode value = field.isList() ? list(item(field, changes)) : one(field, changes);
            boolean mayBeNothing = changes || field.optional();
            properties.set(field.key(), described(mayBeNothing ? anyOf(value, typed("null")) : value, describe(field)));
            boolean tells = changes && field.key().equals("name") && shape.type() != GivenGarden.class;
            if (tells || (!changes && !field.optional())) {
                required.add(field.key());
            }
        }
        if (!required.isEmpty()) {
            group.set("required", required);
        }
        group.put("additionalProperties", false);
        return group;
    }

    /** Lists of named groups merge by name, other lists are replaced whole. */
    private ObjectNode item(FieldShape field, boolean changes) {
        boolean merges = changes
                && field.kind() == FieldKind.RECORD
                && RecordShape.of(field.type()).isNamed();
        return one(field, merges);
    }

    private ObjectNode one(FieldShape field, boolean changes) {
        return switch (field.kind()) {
            case TEXT -> shared("text", this::text);
            case NAMES -> shared("names", this::names);
            case LENGTH -> shared("length", this::length);
            case LENGTH_RANGE -> shared("length or range", this::lengthOrRange);
            case ANGLE -> shared("angle", this::angle);
            case DECIMAL, NUMBER -> limited(field, typed("number"));
            case WHOLE -> limited(field, typed("integer"));
            case YES_NO -> shared("yes or no", this::yesOrNo);
            case DATE -> typed("string").put("pattern", "^\\d{4}-\\d{2}-\\d{2}$");
            case CHOICE -> choice(field);
            case RECORD -> ref(RecordShape.of(field.type()), changes);
            case MEASURE -> measure();
        };
    }

    private ObjectNode shared(String name, Supplier<ObjectNode> schema) {
        if (begun.add(name)) {
            defs.set(name, schema.get());
        }
        return mapper.createObjectNode().put("$ref", "#/$defs/" + name.replace(" ", "%20"));
    }

    private ObjectNode text() {
        return anyOf(typed("string").put("pattern", "\\S"), typed("number"));
    }

    private ObjectNode names() {
        ObjectNode name = anyOf(typed("string").put("pattern", "^\\S+$"), typed("number"));
        return anyOf(
                typed("string").put("pattern", "\\S"),
                typed("number"),
                list(name).put("minItems", 1));
    }

    private ObjectNode length() {
        return anyOf(typed("string").put("pattern", LENGTH_PATTERN), zero());
    }

    private ObjectNode angle() {
        return anyOf(typed("string").put("pattern", ANGLE_PATTERN), zero());
    }

    private ObjectNode zero() {
        return mapper.createObjectNode().put("const", 0);
    }

    private ObjectNode lengthOrRange() {
        ObjectNode range = typed("object");
        ObjectNode properties = range.putObject("properties");
        properties.set("from", shared("length", this::length));
        properties.set("to", shared("length", this::length));
        range.putArray("required").add("from").add("to");
        return anyOf(shared("length", this::length), range.put("additionalProperties", false));
    }

    private ObjectNode yesOrNo() {
        ArrayNode words = mapper.createArrayNode();
        words.add(true).add(false);
        List.of("yes", "no", "true", "false").forEach(words::add);
        return mapper.createObjectNode().set("enum", words);
    }

    private static ObjectNode limited(FieldShape field, ObjectNode number) {
        Limits limits = Limits.of(field);
        if (Double.isFinite(limits.atLeast())) {
            number.put("minimum", BigDecimal.valueOf(limits.atLeast()).stripTrailingZeros());
        }
        if (Double.isFinite(limits.atMost())) {
            number.put("maximum", BigDecimal.valueOf(limits.atMost()).stripTrailingZeros());
        }
        return number;
    }

    private ObjectNode choice(FieldShape field) {
        ArrayNode choices = mapper.createArrayNode();
        field.choices().forEach(choices::add);
        return mapper.createObjectNode().set("enum", choices);
    }

    private ObjectNode measure() {
        ObjectNode any = mapper.createObjectNode();
        ArrayNode kinds = any.putArray("anyOf");
        RecordShape.measures().values().forEach(shape -> kinds.add(ref(shape, false)));
        return any;
    }

    private ObjectNode ref(RecordShape shape, boolean changes) {
        String words = shape.type().getSimpleName().replaceFirst("^Given", "").replaceAll("(?<=[a-z])(?=[A-Z])", " ");
        String name = words.toLowerCase(Locale.ROOT) + (changes ? CHANGES : "");
        return shared(name, () -> group(shape, changes));
    }

    private static String describe(FieldShape field) {
        Limits limits = Limits.of(field);
        String range = limits.areSet() ? "; " + limits.inEnglish() : "";
        String otherwise = field.says().otherwise().isEmpty()
                ? ""
                : "; when left out: " + field.says().otherwise();
        return field.says().value() + range + otherwise;
    }

    private static ObjectNode described(ObjectNode schema, String description) {
        return schema.put("description", description);
    }

    private ObjectNode list(ObjectNode item) {
        ObjectNode list = typed("array");
        list.set("items", item);
        return list;
    }

    private ObjectNode typed(String type) {
        return mapper.createObjectNode().put("type", type);
    }

    private ObjectNode anyOf(ObjectNode... choices) {
        ObjectNode any = mapper.createObjectNode();
        ArrayNode of = any.putArray("anyOf");
        for (ObjectNode choice : choices) {
            of.add(choice);
        }
        return any;
    }
}
