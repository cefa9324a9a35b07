package borderwright.engine.reading;

import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text taken apart into a sign and numbers with their unit words, before anyone knows what the units mean.
 *
 * @param sign 1, or -1 where it begins with a minus
 * @param parts the numbers in order, at least one
 */
record Quantities(int sign, List<Part> parts) {
    /** Longest text that can be a length or an angle. */
    static final int MOST_CHARACTERS = 60;

    private static final int MOST_DIGITS = 12;

    private static final Map<String, String> VULGAR = Map.ofEntries(
            Map.entry("½", "1/2"),
            Map.entry("⅓", "1/3"),
            Map.entry("⅔", "2/3"),
            Map.entry("¼", "1/4"),
            Map.entry("¾", "3/4"),
            Map.entry("⅛", "1/8"),
            Map.entry("⅜", "3/8"),
            Map.entry("⅝", "5/8"),
            Map.entry("⅞", "7/8"));

    private static final Pattern PART = Pattern.compile("(?<separator>[\\s-]*+)"
            + "(?:(?<onlyOver>\\d++)\\s?/\\s?(?<onlyUnder>\\d++)"
            + "|(?<number>\\d*+(?:[.,]\\d++)*+)(?:[\\s-]?(?<over>\\d++)\\s?/\\s?(?<under>\\d++))?+)"
            + "\\s*+(?<unit>\\p{L}++\\.?|°|''|'|\")?+");

    /**
     * One number.
     *
     * @param separator what stands before it: empty, a hyphen or a space
     * @param number its whole or decimal part
     * @param over numerator of its fraction, 0 when it has none
     * @param under denominator of its fraction, at least 1
     * @param unit unit word or mark after it, in lower case; empty when there is none
     */
    record Part(String separator, BigDecimal number, long over, long under, String unit) {
        boolean isWhole() {
            return over == 0 && number.signum() >= 0 && number.scale() <= 0;
        }

        boolean isZero() {
            return over == 0 && number.signum() == 0;
        }

        Part in(String newUnit) {
            return new Part(separator, number, over, under, newUnit);
        }
    }

    /** Takes {@code text} apart; {@code example} is what would be right when it cannot be. */
    static Parsed<Quantities> parse(String text, Message example) {
        if (text.length() > MOST_CHARACTERS) {
            return new Parsed.Bad<>(MeasureTextMessage.MEASURE_TEXT_TOO_LONG.of(text.length(), example));
        }
        String plain = plain(text);
        boolean negative = plain.startsWith("-");
        String rest = negative || plain.startsWith("+") ? plain.substring(1).strip() : plain;
        if (rest.isEmpty() || rest.startsWith("-")) {
            return notUnderstood(text, example);
        }
        List<Part> parts = new ArrayList<>();
        Matcher matcher = PART.matcher(rest);
        int at = 0;
        while (at < rest.length()) {
            matcher.region(at, rest.length());
            if (!matcher.lookingAt() || !holdsNumber(matcher)) {
                return notUnderstood(text, example);
            }
            Parsed<Part> part = part(matcher, text, example);
            if (part instanceof Parsed.Bad<Part> bad) {
                return new Parsed.Bad<>(bad.fault());
            }
            parts.add(part.orThrow());
            at = matcher.end();
        }
        return new Parsed.Good<>(new Quantities(negative ? -1 : 1, List.copyOf(parts)));
    }

    static <T> Parsed<T> notUnderstood(String text, Message example) {
        return new Parsed.Bad<>(MeasureTextMessage.MEASURE_NOT_UNDERSTOOD.of(text, example));
    }

    /** One spelling for marks that look alike: primes, quotes, dashes, fraction slashes, odd spaces. */
    private static String plain(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : text.strip().toCharArray()) {
            String fraction = VULGAR.get(String.valueOf(c));
            if (fraction != null) {
                out.append(out.length() > 0 && isDigit(out.charAt(out.length() - 1)) ? " " : "")
                        .append(fraction);
            } else {
                out.append(
                        switch (c) {
                            case '\u2032', '\u2019', '\u2018', '\u00b4' -> '\'';
                            case '\u2033', '\u201d', '\u201c' -> '"';
                            case '\u2212', '\u2010', '\u2011', '\u2013' -> '-';
                            case '\u2044' -> '/';
                            case '\u00ba' -> '°';
                            case '\u00a0', '\u202f', '\u2009' -> ' ';
                            default -> c;
                        });
            }
        }
        return out.toString();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean holdsNumber(Matcher m) {
        return m.group("onlyOver") != null || !m.group("number").isEmpty();
    }

    private static Parsed<Part> part(Matcher m, String text, Message example) {
        String number = m.group("onlyOver") != null ? "0" : m.group("number");
        String over = first(m.group("onlyOver"), m.group("over"), "0");
        String under = first(m.group("onlyUnder"), m.group("under"), "1");
        if (number.length() > MOST_DIGITS || over.length() > MOST_DIGITS || under.length() > MOST_DIGITS) {
            return new Parsed.Bad<>(MeasureTextMessage.MEASURE_DIGITS_TOO_MANY.of(text, example));
        }
        boolean decimal = number.indexOf('.') >= 0 || number.indexOf(',') >= 0;
        if (decimal && m.group("over") != null) {
            return notUnderstood(text, example);
        }
        if (Long.parseLong(under) == 0) {
            return new Parsed.Bad<>(MeasureTextMessage.MEASURE_DIVIDES_BY_ZERO.of(text, example));
        }
        String separator =
                m.group("separator").contains("-") ? "-" : m.group("separator").isEmpty() ? "" : " ";
        String unit = first(m.group("unit"), "").toLowerCase(Locale.ROOT).replace(".", "");
        return decimal(number, text)
                .then(n ->
                        new Parsed.Good<>(new Part(separator, n, Long.parseLong(over), Long.parseLong(under), unit)));
    }

    /** A number with a decimal point or a decimal comma; a comma that may separate thousands is refused. */
    private static Parsed<BigDecimal> decimal(String number, String text) {
        if (number.chars().filter(c -> c == '.' || c == ',').count() > 1) {
            return new Parsed.Bad<>(MeasureTextMessage.MEASURE_SEPARATORS_TOO_MANY.of(text));
        }
        int comma = number.indexOf(',');
        boolean mayBeThousands = comma > 0 && number.length() - comma == 4 && number.charAt(0) != '0' && comma <= 3;
        if (mayBeThousands) {
            String joined = number.replace(",", "");
            String pointed = number.replace(',', '.');
            return new Parsed.Bad<>(MeasureTextMessage.MEASURE_COMMA_UNCLEAR.of(
                    text,
                    text.replace(number, joined).strip(),
                    text.replace(number, pointed).strip()));
        }
        return new Parsed.Good<>(new BigDecimal(number.replace(',', '.')));
    }

    private static String first(String... candidates) {
        for (String candidate : candidates) {
            if (candidate != null) {
                return candidate;
            }
        }
        throw new IllegalArgumentException("no candidate");
    }
}
