package borderwright.engine.reading;

import borderwright.engine.measure.Angle;
import borderwright.engine.message.Message;
import borderwright.engine.spelling.NearestName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;

/**
 * An angle as a person writes it: {@code 127 deg}, {@code 127°}, {@code 126° 30'}, {@code 126 deg 30 min 15 sec},
 * {@code 30 gon}.
 *
 * <p>A number without a unit is refused, except 0, which is the same angle in any unit. So are the letters d, m and s: m is
 * metres everywhere else.
 */
public final class AngleText {
    private static final Message EXAMPLE = MeasureTextMessage.ANGLE_EXAMPLE.of();
    private static final BigDecimal MOST_DEG = BigDecimal.valueOf(360);

    private static final Map<String, String> WHOLE_UNITS = Map.of(
            "deg", "deg", "degs", "deg", "degree", "deg", "degrees", "deg", "°", "deg", "gon", "gon", "grad", "gon");
    private static final List<String> MINUTES = List.of("'", "min", "minutes");
    private static final List<String> SECONDS = List.of("\"", "''", "sec", "seconds");
    private static final List<String> LETTERS = List.of("d", "m", "s");
    private static final List<String> UNIT_NAMES = List.of("deg", "gon");

    private AngleText() {}

    /** The angle that {@code text} states, from -360 to 360 degrees. */
    public static Parsed<Angle> parse(String text) {
        return Quantities.parse(text, EXAMPLE).then(q -> angle(q, text));
    }

    private static Parsed<Angle> angle(Quantities quantities, String text) {
        List<Quantities.Part> parts = quantities.parts();
        Quantities.Part first = parts.get(0);
        if (parts.size() == 1 && first.unit().isEmpty()) {
            return first.isZero()
                    ? new Parsed.Good<>(new Angle(0))
                    : new Parsed.Bad<>(MeasureTextMessage.MEASURE_WITHOUT_UNIT.of(text, EXAMPLE));
        }
        if (hasLetters(parts)) {
            return new Parsed.Bad<>(MeasureTextMessage.ANGLE_UNIT_TOO_SHORT.of(text));
        }
        String unit = WHOLE_UNITS.get(first.unit());
        if (unit == null) {
            return new Parsed.Bad<>(MeasureTextMessage.ANGLE_WITHOUT_DEGREES.of(
                    text, EXAMPLE, NearestName.perhaps(first.unit(), UNIT_NAMES)));
        }
        if (!isInOrder(parts, unit)) {
            return Quantities.notUnderstood(text, EXAMPLE);
        }
        BigDecimal degrees = degrees(parts, unit);
        if (degrees.compareTo(MOST_DEG) > 0) {
            return new Parsed.Bad<>(MeasureTextMessage.ANGLE_OVER_FULL_TURN.of(text, EXAMPLE));
        }
        return new Parsed.Good<>(Angle.ofDegrees(
                degrees.multiply(BigDecimal.valueOf(quantities.sign())).doubleValue()));
    }

    /** Whether a number is in degrees, minutes or seconds by a letter; a lone {@code 30 m} is a length, no angle. */
    private static boolean hasLetters(List<Quantities.Part> parts) {
        return parts.get(0).unit().equals("d")
                || (WHOLE_UNITS.containsKey(parts.get(0).unit())
                        && parts.stream().anyMatch(part -> LETTERS.contains(part.unit())));
    }

    /** Degrees, then minutes under 60, then seconds under 60; fractions only in the last part. */
    private static boolean isInOrder(List<Quantities.Part> parts, String unit) {
        if (parts.size() > 3 || (parts.size() > 1 && unit.equals("gon"))) {
            return false;
        }
        for (int i = 0; i < parts.size(); i++) {
            Quantities.Part part = parts.get(i);
            if (i < parts.size() - 1 && !part.isWhole()) {
                return false;
            }
            if (i > 0 && (part.number().doubleValue() >= 60 || !(i == 1 ? MINUTES : SECONDS).contains(part.unit()))) {
                return false;
            }
        }
        return true;
    }

    private static BigDecimal degrees(List<Quantities.Part> parts, String unit) {
        BigDecimal degrees = BigDecimal.ZERO;
        long perDegree = 1;
        for (Quantities.Part part : parts) {
            BigDecimal fraction =
                    BigDecimal.valueOf(part.over()).divide(BigDecimal.valueOf(part.under()), MathContext.DECIMAL64);
            degrees = degrees.add(
                    part.number().add(fraction).divide(BigDecimal.valueOf(perDegree), MathContext.DECIMAL64));
            perDegree *= 60;
        }
        return unit.equals("gon") ? degrees.multiply(new BigDecimal("0.9")) : degrees;
    }
}
