package borderwright.app.usage;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Numbers of options: plain figures only, so that no exponent grows into a gigabyte of digits. */
public final class PlainNumber {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,12}(\\.\\d{1,6})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,18}");

    private PlainNumber() {}

    /** Reads the numbers of all options of a command line this way. */
    public static void registerWith(CommandLine command) {
        command.registerConverter(BigDecimal.class, PlainNumber::decimal);
        command.registerConverter(Double.class, text -> decimal(text).doubleValue());
        command.registerConverter(Long.class, PlainNumber::whole);
        command.registerConverter(long.class, PlainNumber::whole);
        command.registerConverter(Integer.class, text -> Math.toIntExact(whole(text)));
    }

    private static BigDecimal decimal(String text) {
        return new BigDecimal(checked(DECIMAL, text));
    }

    private static long whole(String text) {
        return Long.parseLong(checked(WHOLE, text));
    }

    private static String checked(Pattern pattern, String text) {
        if (!pattern.matcher(text).matches()) {
            throw new TypeConversionException(text);
        }
        return text;
    }
}
