package borderwright.engine.garden.resolve;

import borderwright.engine.garden.FillingSpec.MixPart;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A value as it would be written in the document: exact decimals, a unit where its type has one, choices in words. */
final class OriginText {
    private static final int ANGLE_DECIMALS = 6;

    private OriginText() {}

    static String of(Object value) {
        if (value instanceof Double number) {
            return decimal(BigDecimal.valueOf(number));
        }
        if (value instanceof BigDecimal number) {
            return decimal(number);
        }
        if (value instanceof Length length) {
            return decimal(BigDecimal.valueOf(length.ticks()).divide(BigDecimal.valueOf(Length.TICKS_PER_MM))) + " mm";
        }
        if (value instanceof Angle angle) {
            // Kept in radians: degrees come back with their last digits astray.
            return decimal(BigDecimal.valueOf(angle.degrees()).setScale(ANGLE_DECIMALS, RoundingMode.HALF_UP)) + " deg";
        }
        if (value instanceof Boolean truth) {
            return truth ? "yes" : "no";
        }
        if (value instanceof Enum<?> choice) {
            return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        if (value instanceof MixPart part) {
            return decimal(BigDecimal.valueOf(part.parts())) + " " + part.item();
        }
        if (value instanceof List<?> list) {
            return list.stream().map(OriginText::of).collect(Collectors.joining(", "));
        }
        return value.toString();
    }

    private static String decimal(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
