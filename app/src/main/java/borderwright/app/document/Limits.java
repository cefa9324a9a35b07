package borderwright.app.document;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import java.math.BigDecimal;

/**
 * The least and greatest value of a field, for sentences and the table of fields.
 *
 * @param atLeast negative infinity when there is none
 * @param atMost positive infinity when there is none
 */
record Limits(FieldKind kind, double atLeast, double atMost) {

    static Limits of(FieldShape field) {
        return new Limits(field.kind(), field.says().atLeast(), field.says().atMost());
    }

    boolean areSet() {
        return Double.isFinite(atLeast) || Double.isFinite(atMost);
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
}
