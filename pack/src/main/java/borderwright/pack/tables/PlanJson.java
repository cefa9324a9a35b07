package borderwright.pack.tables;

import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.engine.plan.Plan;
import borderwright.engine.problem.Problem;
import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A whole plan as JSON: every record of the contract with its components in the order of their declaration.
 *
 * <p>Names are in lower case with underscores and end in the unit: a length becomes {@code length_mm}, an angle {@code
 * angle_deg}; all angles are in degrees. Lengths have at most four decimals, which tells every tick apart; other numbers six. Money is its currency and
 * an exact decimal. What is not given is left out. A kind of measure is named by {@code kind}.
 */
public final class PlanJson {
    private static final int LENGTH_DECIMALS = 4;
    private static final int OTHER_DECIMALS = 6;
    private static final String RADIANS = "Rad";
    private static final List<String> UNITS = List.of("Mm2", "Mm3", "Mm", "M2", "M3", "Kg", "Deg", "Ticks");

    /** What is found out of each kind of record once: a plan holds tens of thousands of them. */
    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> kind) {
            List<Field> fields = new ArrayList<>();
            for (RecordComponent component : kind.getRecordComponents()) {
                String name = component.getName();
                boolean inRadians = name.endsWith(RADIANS) && component.getType() == double.class;
                fields.add(
                        inRadians
                                ? new Field(
                                        component.getAccessor(),
                                        snake(degrees(name)),
                                        value -> StrictMath.toDegrees((double) value))
                                : new Field(component.getAccessor(), snake(name), UnaryOperator.identity()));
            }
            boolean isKind = Arrays.stream(kind.getInterfaces()).anyMatch(Class::isSealed);
            return new Shape(isKind, snake(kind.getSimpleName()), List.copyOf(fields));
        }
    };

    private record Shape(boolean isKind, String name, List<Field> fields) {}

    private record Field(Method accessor, String name, UnaryOperator<Object> written) {}

    private final Sentences sentences;

    private PlanJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /**
     * The plan as UTF-8 text.
     *
     * @param sentences makes words of its messages
     */
    public static byte[] write(Plan plan, Sentences sentences) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter(" ", "\n"));
        printer.indentArraysWith(new DefaultIndenter(" ", "\n"));
        try (JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8)) {
            json.setPrettyPrinter(printer);
            new PlanJson(sentences).value(json, plan);
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException("the plan could not be written as JSON", e);
        }
        return out.toByteArray();
    }

    private void record(JsonGenerator json, Record record) throws IOException {
        json.writeStartObject();
        Shape shape = SHAPES.get(record.getClass());
        if (shape.isKind) {
            json.writeStringField("kind", shape.name);
        }
        for (Field field : shape.fields) {
            Object value = plain(read(field.accessor, record));
            if (value != null) {
                json.writeFieldName(field.name + unit(value));
                value(json, field.written.apply(value));
            }
        }
        json.writeEndObject();
    }

    private static String degrees(String name) {
        return name.substring(0, name.length() - RADIANS.length()) + "Deg";
    }

    private static @Nullable Object read(Method accessor, Record record) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("no access to " + accessor, e);
        }
    }

    private static @Nullable Object plain(@Nullable Object value) {
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? number.getAsDouble() : null;
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? number.getAsInt() : null;
        }
        return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    }

    private void value(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Length length) {
            json.writeNumber(decimal(length.mm(), LENGTH_DECIMALS));
        } else if (value instanceof Angle angle) {
            json.writeNumber(decimal(angle.degrees(), OTHER_DECIMALS));
        } else if (value instanceof Double number) {
            json.writeNumber(decimal(number, OTHER_DECIMALS));
        } else if (value instanceof BigDecimal number) {
            json.writeNumber(number.toPlainString());
        } else if (value instanceof Number number) {
            json.writeNumber(number.longValue());
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Enum<?> constant) {
            json.writeString(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        } else if (value instanceof Money money) {
            json.writeStartObject();
            json.writeStringField("currency", money.getCurrencyUnit().getCode());
            json.writeStringField("amount", money.getAmount().toPlainString());
            json.writeEndObject();
        } else {
            composite(json, value);
        }
    }

    private void composite(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Names names) {
            value(json, names.list());
        } else if (value instanceof Message message) {
            json.writeString(sentences.text(message));
        } else if (value instanceof Problem problem) {
            problem(json, problem);
        } else if (value instanceof Record record) {
            record(json, record);
        } else if (value instanceof Collection<?> all) {
            json.writeStartArray();
            for (Object one : all) {
                value(json, one);
            }
            json.writeEndArray();
        } else if (value instanceof SortedMap<?, ?> sorted) {
            json.writeStartArray();
            for (Map.Entry<?, ?> entry : sorted.entrySet()) {
                json.writeStartObject();
                json.writeStringField("path", entry.getKey().toString());
                json.writeFieldName("of");
                value(json, entry.getValue());
                json.writeEndObject();
            }
            json.writeEndArray();
        } else if (value instanceof Map<?, ?>) {
            throw new IllegalArgumentException("a plan holds sorted maps alone: the order of others is not promised");
        } else {
            json.writeString(value.toString());
        }
    }

    private void problem(JsonGenerator json, Problem problem) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", problem.code());
        json.writeStringField("where", problem.where());
        json.writeStringField("what", problem.what(sentences));
        json.writeStringField("right", problem.right(sentences));
        json.writeEndObject();
    }

    /** What a name ends in for its value: a {@code Length} named {@code trim} becomes {@code trim_mm}. */
    private static String unit(Object value) {
        Object example = value instanceof List<?> list && !list.isEmpty() ? list.get(0) : value;
        return example instanceof Length ? "_mm" : example instanceof Angle ? "_deg" : "";
    }

    /** {@code bedMm} becomes {@code bed_mm}. */
    private static String snake(String name) {
        for (String unit : UNITS) {
            if (name.endsWith(unit) && name.length() > unit.length()) {
                return snake(name.substring(0, name.length() - unit.length())) + "_" + unit.toLowerCase(Locale.ROOT);
            }
        }
        return name.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    }

    private static BigDecimal decimal(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0
                ? BigDecimal.ZERO
                : new BigDecimal(rounded.stripTrailingZeros().toPlainString());
    }
}
