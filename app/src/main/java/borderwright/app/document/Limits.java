package borderwright.app.document;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
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
    String inWords(UnitSystem units) {
        if (Double.isFinite(atLeast) && Double.isFinite(atMost)) {
            return "from " + written(atLeast, units) + " to " + written(atMost, units);
        }
        return Double.isFinite(atLeast)
                ? "of at least " + written(atLeast, units)
                : "of at most " + written(atMost, units);
    }

    private String written(double limit, UnitSystem units) {
        String number = BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
        return switch (kind) {
            case LENGTH, LENGTH_RANGE ->
                number
                        + " mm"
                        + (units == UnitSystem.IMPERIAL && limit != 0
                                ? " (about " + new LengthFormat(units).piece(limit) + ")"
                                : "");
            case ANGLE -> number + " deg";
            default -> number;
        };
    }
}
