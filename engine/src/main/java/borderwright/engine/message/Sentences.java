package borderwright.engine.message;

import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Gravity;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;

/**
 * Makes sentences of messages: the only place where they become words. Lengths, weights and the like are written in the
 * reader's units, always with their unit.
 *
 * @param wording the templates of a language
 * @param format how quantities are written
 */
public record Sentences(Wording wording, LengthFormat format) {
    private static final String RIGHT = ".right";
    /** The code of ISO 4217 for amounts without a currency. */
    private static final String NO_CURRENCY = "XXX";
    /** A use above this is not told apart any more. */
    private static final double MOST_USE = 9.99;

    /** The sentence of a message. */
    public String text(Message message) {
        return wording.text(message.key(), slots(message));
    }

    /** What would be right instead; empty where the catalogue says nothing of it. */
    public String right(Message message) {
        return wording.has(message.key() + RIGHT) ? wording.text(message.key() + RIGHT, slots(message)) : "";
    }

    /** What is wrong and what would be right. */
    public String sentence(Message fault) {
        String right = right(fault);
        return right.isEmpty() ? text(fault) : text(fault) + " " + right;
    }

    private Map<String, Object> slots(Message message) {
        Map<String, Object> slots = new LinkedHashMap<>();
        List<Slot> declared = message.code().slots();
        for (int i = 0; i < declared.size(); i++) {
            slots.put(
                    declared.get(i).name(),
                    value(declared.get(i), message.values().get(i)));
        }
        return slots;
    }

    private Object value(Slot slot, Object value) {
        return switch (slot.kind()) {
            case TEXT, MESSAGE -> word(value);
            case FURTHER -> ((Optional<?>) value).map(next -> " " + word(next)).orElse("");
            case FAULT -> sentence((Message) value);
            case CHOICE -> ((Enum<?>) value).name().toLowerCase(Locale.ROOT);
            case LIST -> list((Collection<?>) value);
            case COMMAS -> joined((Collection<?>) value, ", ");
            case SEMICOLONS -> joined((Collection<?>) value, "; ");
            case COUNT -> ((Number) value).longValue();
            case MONEY -> money(((BigMoneyProvider) value).toBigMoney());
            case DECIMAL -> ((BigDecimal) value).toPlainString();
            default -> quantity(slot, ((Number) value).doubleValue());
        };
    }

    private String quantity(Slot slot, double value) {
        return switch (slot.kind()) {
            case LENGTH -> format.length(value);
            case PIECE -> format.piece(value);
            case SITE -> format.site(value);
            case RUN -> format.run(value);
            case SMALL -> small(value);
            case AREA -> format.area(value);
            case VOLUME -> format.volume(value);
            case WEIGHT -> format.weight(value);
            case ANGLE -> format.angle(Angle.ofDegrees(value));
            case DEGREES -> stripped(value, 2) + " deg";
            case FORCE ->
                isMetric()
                        ? decimal(value / 1000, 2) + " kN"
                        : decimal(value / UnitFactors.N_PER_POUND_FORCE, 0) + " lb";
            case UNIT_WEIGHT ->
                isMetric()
                        ? decimal(value, 1) + " kN/m3"
                        : decimal(value / UnitFactors.KN_PER_M3_PER_PCF, 0) + " lb/ft3";
            case AREA_LOAD ->
                isMetric()
                        ? decimal(value * Gravity.KN_PER_KG, 1) + " kN/m2"
                        : decimal(value * UnitFactors.M2_PER_SQUARE_FOOT / UnitFactors.KG_PER_POUND, 0) + " lb/sq ft";
            case PERCENT -> decimal(100 * value, slot.places()) + " %";
            case USE -> value > MOST_USE ? wording.text("far-too-much", Map.of()) : decimal(100 * value, 0) + " %";
            case NUMBER -> decimal(value, slot.places());
            default -> throw new IllegalArgumentException("no number stands in a slot of kind " + slot.kind());
        };
    }

    private static String money(BigMoney money) {
        return money.getCurrencyUnit().getCode().equals(NO_CURRENCY)
                ? money.getAmount().toPlainString()
                : money.toString();
    }

    private String word(Object value) {
        return value instanceof Message message ? text(message) : value.toString();
    }

    private String joined(Collection<?> values, String between) {
        return String.join(between, values.stream().map(this::word).toList());
    }

    /** {@code A}, {@code A and B}, {@code A, B and C}. */
    private String list(Collection<?> values) {
        Iterator<?> rest = values.iterator();
        String sofar = rest.hasNext() ? word(rest.next()) : "";
        while (rest.hasNext()) {
            String next = word(rest.next());
            sofar = rest.hasNext()
                    ? wording.text("list-comma", Map.of("before", sofar, "next", next))
                    : wording.text("list-and", Map.of("before", sofar, "last", next));
        }
        return sofar;
    }

    /** To 0.1 mm under 1 mm, so that a small difference is never written as nothing. */
    private String small(double mm) {
        if (isMetric()) {
            return Math.abs(mm) < 0.95 ? stripped(mm, 1) + " mm" : format.length(mm);
        }
        return Math.abs(mm) < UnitFactors.MM_PER_INCH / 32
                ? wording.text("less-than-a-sixteenth", Map.of())
                : format.length(mm);
    }

    private boolean isMetric() {
        return format.units() == UnitSystem.METRIC;
    }

    private static String decimal(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    private static String stripped(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
