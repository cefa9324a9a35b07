package borderwright.engine.reading;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.spelling.NearestName;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A length as a person writes it: {@code 1850 mm}, {@code 1.85 m}, {@code 1,85 m}, {@code 6' 4 1/2"}, {@code 6 ft 4 1/2
 * in}, {@code 5'-3-1/2"}, {@code -452 mm}.
 *
 * <p>A hyphen separates feet, inches and fraction; it is a minus only at the front. Feet have their mark: {@code 6-1-1/8"}
 * is refused. Beside feet a last number without a unit is inches. A comma before exactly three digits may separate
 * thousands, so it is refused. A number without a unit is refused, except
 * 0, which is the same length in any unit. Decimals and fractions are exact; a length that falls between two ticks goes
 * to the nearer one, halves away from zero.
 */
public final class LengthText {
    /** No garden is longer: 10 km. */
    public static final Length MOST = new Length(10_000_000L * Length.TICKS_PER_MM);

    private static final Message EXAMPLE = MeasureTextMessage.LENGTH_EXAMPLE.of();
    private static final long TICKS_PER_FOOT = 12 * Length.TICKS_PER_INCH;

    private enum Unit {
        M(1000 * Length.TICKS_PER_MM, UnitSystem.METRIC),
        CM(10 * Length.TICKS_PER_MM, UnitSystem.METRIC),
        MM(Length.TICKS_PER_MM, UnitSystem.METRIC),
        YARD(3 * TICKS_PER_FOOT, UnitSystem.IMPERIAL),
        FOOT(TICKS_PER_FOOT, UnitSystem.IMPERIAL),
        INCH(Length.TICKS_PER_INCH, UnitSystem.IMPERIAL);

        private final long ticks;
        private final UnitSystem system;

        Unit(long ticks, UnitSystem system) {
            this.ticks = ticks;
            this.system = system;
        }
    }

    private static final Map<String, Unit> UNITS = Map.ofEntries(
            Map.entry("m", Unit.M),
            Map.entry("metre", Unit.M),
            Map.entry("metres", Unit.M),
            Map.entry("meter", Unit.M),
            Map.entry("meters", Unit.M),
            Map.entry("cm", Unit.CM),
            Map.entry("centimetre", Unit.CM),
            Map.entry("centimetres", Unit.CM),
            Map.entry("centimeter", Unit.CM),
            Map.entry("centimeters", Unit.CM),
            Map.entry("mm", Unit.MM),
            Map.entry("millimetre", Unit.MM),
            Map.entry("millimetres", Unit.MM),
            Map.entry("millimeter", Unit.MM),
            Map.entry("millimeters", Unit.MM),
            Map.entry("yd", Unit.YARD),
            Map.entry("yard", Unit.YARD),
            Map.entry("yards", Unit.YARD),
            Map.entry("'", Unit.FOOT),
            Map.entry("ft", Unit.FOOT),
            Map.entry("foot", Unit.FOOT),
            Map.entry("feet", Unit.FOOT),
            Map.entry("\"", Unit.INCH),
            Map.entry("''", Unit.INCH),
            Map.entry("in", Unit.INCH),
            Map.entry("inch", Unit.INCH),
            Map.entry("inches", Unit.INCH));

    private static final List<String> UNIT_NAMES = List.of("mm", "cm", "m", "in", "ft", "yd");

    private LengthText() {}

    /** The length that {@code text} states. */
    public static Parsed<Length> parse(String text) {
        return Quantities.parse(text, EXAMPLE).then(q -> length(q, text));
    }

    private static Parsed<Length> length(Quantities quantities, String text) {
        List<Quantities.Part> parts = withImpliedInches(quantities.parts());
        if (parts.size() == 1 && parts.get(0).unit().isEmpty()) {
            return parts.get(0).isZero() ? new Parsed.Good<>(Length.ZERO) : withoutUnit(text);
        }
        for (Quantities.Part part : parts) {
            if (part.unit().isEmpty()) {
                return isFootMarkMissing(parts)
                        ? new Parsed.Bad<>(MeasureTextMessage.LENGTH_FOOT_MARK_MISSING.of(text))
                        : Quantities.notUnderstood(text, EXAMPLE);
            }
            if (!UNITS.containsKey(part.unit())) {
                return unknownUnit(part.unit(), text);
            }
        }
        Parsed<BigDecimal> ticks = sum(parts, text);
        return ticks.then(t -> inRange(t.multiply(BigDecimal.valueOf(quantities.sign())), text));
    }

    /** Fills in what feet-and-inches notation leaves out: {@code 6' 4}. */
    private static List<Quantities.Part> withImpliedInches(List<Quantities.Part> parts) {
        if (parts.size() != 2) {
            return parts;
        }
        Quantities.Part first = parts.get(0);
        Quantities.Part last = parts.get(1);
        if (UNITS.get(first.unit()) == Unit.FOOT && last.unit().isEmpty()) {
            return List.of(first, last.in("in"));
        }
        return parts;
    }

    /** Whether feet and inches stand there with hyphens alone between them: {@code 6-1-1/8"}, {@code 6-1"}. */
    private static boolean isFootMarkMissing(List<Quantities.Part> parts) {
        return parts.size() == 2
                && parts.get(0).unit().isEmpty()
                && parts.get(1).separator().equals("-")
                && UNITS.get(parts.get(1).unit()) == Unit.INCH;
    }

    /** Ticks of all parts together: units of one system, each smaller than the one before it, fractions only in the last. */
    private static Parsed<BigDecimal> sum(List<Quantities.Part> parts, String text) {
        BigDecimal ticks = BigDecimal.ZERO;
        List<Unit> before = new ArrayList<>();
        for (Quantities.Part part : parts) {
            Unit unit = UNITS.get(part.unit());
            if (unit == null) {
                throw new IllegalArgumentException("unknown unit " + part.unit());
            }
            if (!before.isEmpty()) {
                Unit larger = before.get(before.size() - 1);
                if (larger.system != unit.system || larger.ticks <= unit.ticks) {
                    return new Parsed.Bad<>(MeasureTextMessage.LENGTH_UNITS_DO_NOT_ADD.of(text, EXAMPLE));
                }
                if (ticksOf(part, unit).compareTo(BigDecimal.valueOf(larger.ticks)) >= 0) {
                    return new Parsed.Bad<>(MeasureTextMessage.LENGTH_PART_TOO_LARGE.of(text, EXAMPLE));
                }
            }
            if (before.size() < parts.size() - 1 && !part.isWhole()) {
                return new Parsed.Bad<>(MeasureTextMessage.LENGTH_FRACTION_TOO_EARLY.of(text, EXAMPLE));
            }
            before.add(unit);
            ticks = ticks.add(ticksOf(part, unit));
        }
        return new Parsed.Good<>(ticks);
    }

    /** Rounded to the tick, halves up: parts are never negative, and only the last can have a remainder. */
    private static BigDecimal ticksOf(Quantities.Part part, Unit unit) {
        BigDecimal whole = part.number().multiply(BigDecimal.valueOf(unit.ticks));
        BigDecimal under = BigDecimal.valueOf(part.under());
        BigDecimal over = BigDecimal.valueOf(part.over()).multiply(BigDecimal.valueOf(unit.ticks));
        return whole.multiply(under).add(over).divide(under, 0, RoundingMode.HALF_UP);
    }

    private static Parsed<Length> inRange(BigDecimal ticks, String text) {
        BigInteger whole = ticks.toBigInteger();
        if (whole.abs().compareTo(BigInteger.valueOf(MOST.ticks())) > 0) {
            return new Parsed.Bad<>(MeasureTextMessage.LENGTH_TOO_LONG.of(text));
        }
        return new Parsed.Good<>(new Length(whole.longValueExact()));
    }

    private static Parsed<Length> withoutUnit(String text) {
        return new Parsed.Bad<>(MeasureTextMessage.MEASURE_WITHOUT_UNIT.of(text, EXAMPLE));
    }

    private static Parsed<Length> unknownUnit(String unit, String text) {
        return new Parsed.Bad<>(
                MeasureTextMessage.LENGTH_UNIT_UNKNOWN.of(text, unit, NearestName.perhaps(unit, UNIT_NAMES)));
    }
}
