package borderwright.app.cut;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A width given as an option: 0 to 999.999999 mm, written in plain figures. */
final class MillimetreOption implements ITypeConverter<BigDecimal> {
    private static final Pattern PLAIN = Pattern.compile("\\d{1,3}(\\.\\d{1,6})?");

    @Override
    public BigDecimal convert(String text) {
        if (!PLAIN.matcher(text).matches()) {
            throw new TypeConversionException(CutFaults.SENTENCES.text(CutFaultMessage.NOT_MILLIMETRES.of(text)));
        }
        return new BigDecimal(text);
    }
}
