package borderwright.app.document;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.reading.LengthText;
import borderwright.engine.reading.Parsed;
import borderwright.pack.language.Language;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The least and greatest value of a field, for sentences and the table of fields.
 *
 * @param atLeast negative infinity when there is none
 * @param atMost positive infinity when there is none
 */
record Limits(FieldKind kind, double atLeast, double atMost) {

    private static final double SLACK = 1e-9;
    /** Half a tick, which is 1/320 mm. */
    private static final double SLACK_MM = 1.0 / 640;

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([-+\u2212]?)\\s*(\\d+(?:\\.\\d+)?)\\s*(\\D+?)\\s*");

    /** Units that are written for each other. */
    private static final List<String> MISTAKEN = List.of("mm", "cm", "m", "in", "ft", "\"", "'");

    static Limits of(FieldShape field) {
        return new Limits(field.kind(), field.says().atLeast(), field.says().atMost());
    }

    /**
     * The lengths that a field usually has: what lies beyond is a slip of unit or point more often than it is true (common
     * practice, no source).
     */
    static Limits usual(FieldShape field) {
        return new Limits(
                field.kind(),
                Math.max(field.says().atLeast(), field.says().usuallyAtLeast()),
                Math.min(field.says().atMost(), field.says().usuallyAtMost()));
    }

    /** Limits written in decimals do not refuse the length that equals them, whose ticks lie up to half a tick off. */
    boolean has(double value) {
        double slack = kind == FieldKind.LENGTH || kind == FieldKind.LENGTH_RANGE ? SLACK_MM : SLACK;
        return value >= atLeast - slack && value <= atMost + slack;
    }

    boolean areSet() {
        return Double.isFinite(atLeast) || Double.isFinite(atMost);
    }

    /** For the tables and the schema, which are in English and in mm. */
    String inEnglish() {
        return Language.english().in(UnitSystem.METRIC).text(message(UnitSystem.METRIC));
    }

    /** {@code from 50 mm to 1500 mm}, {@code of at least 100 mm}, {@code of at most 20}. */
    Message message(UnitSystem units) {
        if (Double.isFinite(atLeast) && Double.isFinite(atMost)) {
            return ValueMessage.LIMITS_FROM_TO.of(limit(atLeast, units), limit(atMost, units));
        }
        return Double.isFinite(atLeast)
                ? ValueMessage.LIMITS_AT_LEAST.of(limit(atLeast, units))
                : ValueMessage.LIMITS_AT_MOST.of(limit(atMost, units));
    }

    private Message limit(double limit, UnitSystem units) {
        BigDecimal number = BigDecimal.valueOf(limit).stripTrailingZeros();
        return switch (kind) {
            case LENGTH, LENGTH_RANGE ->
                units == UnitSystem.IMPERIAL && limit != 0
                        ? ValueMessage.LIMIT_LENGTH_IN_BOTH.of(number, new LengthFormat(units).piece(limit))
                        : ValueMessage.LIMIT_LENGTH.of(number);
            case ANGLE -> ValueMessage.LIMIT_ANGLE.of(number);
            default -> ValueMessage.LIMIT_NUMBER.of(number);
        };
    }

    /** What was probably meant: the point one place further, another unit, the point two or three places further. */
    Optional<String> meant(String text) {
        Matcher parts = NUMBER_AND_UNIT.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        String sign = parts.group(1);
        String unit = parts.group(3);
        BigDecimal number = new BigDecimal(parts.group(2));
        List<String> candidates = new ArrayList<>();
        candidates.add(written(sign, number.movePointLeft(1), unit));
        candidates.add(written(sign, number.movePointRight(1), unit));
        MISTAKEN.forEach(other -> candidates.add(written(sign, number, other)));
        candidates.add(written(sign, number.movePointLeft(2), unit));
        candidates.add(written(sign, number.movePointLeft(3), unit));
        return candidates.stream().filter(this::hasWritten).findFirst();
    }

    private static String written(String sign, BigDecimal number, String unit) {
        BigDecimal plain = number.stripTrailingZeros();
        String digits = (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
        return sign + digits + (Character.isLetter(unit.charAt(0)) ? " " : "") + unit;
    }

    private boolean hasWritten(String text) {
        Parsed<Length> parsed = LengthText.parse(text);
        return !(parsed instanceof Parsed.Bad<Length>) && has(parsed.orThrow().mm());
    }
}
