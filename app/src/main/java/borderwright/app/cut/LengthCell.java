package borderwright.app.cut;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A length in a cell whose unit the column names, in whole ticks of 1/320 mm. */
final class LengthCell {
    /** Ticks in one of each unit. */
    static final Map<String, Long> TICKS = Map.of(
            "length_mm", 320L, "length_cm", 3200L, "length_m", 320_000L, "length_in", 8128L, "length_ft", 97_536L);

    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,12})[ -])?(\\d{1,9})/(\\d{1,9})");
    /** Longest length that is taken, ticks: 10,000 km. */
    private static final BigDecimal MOST = new BigDecimal("3200000000000");

    private LengthCell() {}

    /**
     * The length in ticks; 0 or less when it is none.
     *
     * @param text a decimal number, or inches such as {@code 47 15/16}
     * @param column name of its column, one of {@link #TICKS}
     * @param rounding up for pieces, down for boards, so that nothing is bought short
     */
    static long ticks(String text, String column, RoundingMode rounding) {
        long whole = quick(text);
        long unit = TICKS.getOrDefault(column, 0L);
        if (whole >= 0) {
            return whole * unit;
        }
        BigDecimal exact = exact(text, unit, rounding);
        return exact.signum() <= 0 || exact.compareTo(MOST) > 0 ? 0 : exact.longValue();
    }

    /** A whole number of up to 8 digits, by far the usual case; -1 for anything else. */
    private static long quick(String text) {
        if (text.isEmpty() || text.length() > 8) {
            return -1;
        }
        long value = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            value = 10 * value + (c - '0');
        }
        return value;
    }

    private static BigDecimal exact(String text, long unit, RoundingMode rounding) {
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            BigInteger bottom = new BigInteger(fraction.group(3));
            if (bottom.signum() == 0) {
                return BigDecimal.ZERO;
            }
            String whole = fraction.group(1) == null ? "0" : fraction.group(1);
            BigInteger top = new BigInteger(whole).multiply(bottom).add(new BigInteger(fraction.group(2)));
            return new BigDecimal(top.multiply(BigInteger.valueOf(unit))).divide(new BigDecimal(bottom), 0, rounding);
        }
        if (!text.matches("\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15}")) {
            return BigDecimal.ZERO;
        }
        return new BigDecimal(text).multiply(BigDecimal.valueOf(unit)).setScale(0, rounding);
    }
}
