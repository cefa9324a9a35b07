package borderwright.engine.survey.network;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes what the survey has to say: lengths in the reader's units, angles, lists of names. */
public record SurveyWords(LengthFormat lengths) {

    public static SurveyWords in(UnitSystem units) {
        return new SurveyWords(new LengthFormat(units));
    }

    public String length(double mm) {
        return lengths.length(mm);
    }

    /** A small difference: to 0.1 mm under 1 mm, so that it is never written as nothing. */
    public String small(double mm) {
        if (lengths.units() == UnitSystem.METRIC && Math.abs(mm) < 0.95) {
            return decimal(mm, 1) + " mm";
        }
        if (lengths.units() == UnitSystem.IMPERIAL && Math.abs(mm) < 25.4 / 32) {
            return "less than 1/16\"";
        }
        return lengths.length(mm);
    }

    /** {@code 88.83 deg}, without needless zeros. */
    public static String degrees(double degrees) {
        return decimal(degrees, 2) + " deg";
    }

    /** A value in a reading's own unit. */
    String value(double value, String unit) {
        return unit.equals("deg") ? degrees(value) : length(value);
    }

    /** {@code A}, {@code A and B}, {@code A, B and C}. */
    public static String list(List<String> names) {
        int last = names.size() - 1;
        return last <= 0
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    public static String decimal(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
