package borderwright.app.document;

import borderwright.app.document.DocNode.Scalar;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.reading.AngleText;
import borderwright.engine.reading.LengthText;
import borderwright.engine.reading.Parsed;
import borderwright.engine.spelling.NearestName;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads one text of the document as the value that its field wants, or says why it is none. */
final class ValueReader {
    private static final Pattern DECIMAL = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,2})?");
    private static final int MOST_DIGITS = 20;
    private static final int MOST_PLACES = 6;
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000);
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd").withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern IMPERIAL = Pattern.compile("[iIfFyY'\"\u2032\u2033]");

    /** Calendars and day lengths are good for these (common practice, no source). */
    private static final LocalDate FIRST_DATE = LocalDate.of(2000, 1, 1);

    private static final LocalDate LAST_DATE = LocalDate.of(2100, 12, 31);

    /** After a length that is right although it is unusual. */
    private static final Pattern REALLY = Pattern.compile(",?\\s+yes,?\\s+really\\s*$");

    private final DocumentFaults faults;

    ValueReader(DocumentFaults faults) {
        this.faults = faults;
    }

    /** The value, of the type that the field's kind has; empty when a fault was added. */
    Optional<?> read(FieldShape field, Scalar scalar) {
        return switch (field.kind()) {
            case TEXT -> text(field, scalar);
            case NAMES ->
                names(field, scalar, Arrays.asList(scalar.text().trim().split("\\s+")));
            case LENGTH, LENGTH_RANGE -> length(field, scalar);
            case ANGLE -> angle(field, scalar);
            case DECIMAL -> number(field, scalar);
            case NUMBER -> number(field, scalar).map(BigDecimal::doubleValue);
            case WHOLE -> number(field, scalar).flatMap(n -> whole(field, scalar, n));
            case YES_NO -> yesOrNo(scalar);
            case DATE -> date(field, scalar);
            case CHOICE -> choice(field, scalar);
            case MEASURE, RECORD -> wrongKind(field, scalar);
        };
    }

    /** Reports that what stands here is not even of the right kind. */
    <T> Optional<T> wrongKind(FieldShape field, DocNode node) {
        return fault(node, ValueMessage.WRONG_KIND.of(node.kind(), shortText(node), field.whatToWrite()));
    }

    /** The node's text for a sentence; empty where it has none. */
    static String shortText(DocNode node) {
        return node instanceof Scalar scalar ? DocumentFaults.shortened(scalar.text()) : "";
    }

    private Optional<String> text(FieldShape field, Scalar scalar) {
        String text = scalar.text().strip();
        return text.isEmpty() ? fault(scalar, ValueMessage.TEXT_EMPTY.of(field.whatToWrite())) : Optional.of(text);
    }

    /** Names of points, each one word. */
    Optional<Names> names(FieldShape field, DocNode node, List<String> names) {
        for (String name : names) {
            if (name.isBlank() || !name.matches("[\\p{L}\\p{N}_.'-]+")) {
                return fault(node, ValueMessage.POINT_NAME.of(DocumentFaults.shortened(name), field.whatToWrite()));
            }
        }
        return Optional.of(new Names(names));
    }

    private Optional<Length> length(FieldShape field, Scalar scalar) {
        String text = REALLY.matcher(scalar.text()).replaceFirst("");
        boolean isInsisted = !text.equals(scalar.text());
        Parsed<Length> parsed = LengthText.parse(text);
        if (parsed instanceof Parsed.Bad<Length> bad) {
            return fault(scalar, bad.fault());
        }
        Length length = parsed.orThrow();
        UnitSystem units = IMPERIAL.matcher(text).find() ? UnitSystem.IMPERIAL : UnitSystem.METRIC;
        if (!Limits.of(field).has(length.mm())) {
            return outOfRange(field, scalar, "length", units);
        }
        return isInsisted || Limits.usual(field).has(length.mm()) ? Optional.of(length) : unusual(field, scalar, units);
    }

    private Optional<Length> unusual(FieldShape field, Scalar scalar, UnitSystem units) {
        Limits usual = Limits.usual(field);
        Message perhaps = usual.meant(scalar.text())
                .map(ValueMessage.PERHAPS_MEANT::of)
                .orElseGet(ValueMessage.PERHAPS_CHECK::of);
        return fault(scalar, ValueMessage.VALUE_UNUSUAL.of(shortText(scalar), usual.message(units), perhaps));
    }

    private Optional<Angle> angle(FieldShape field, Scalar scalar) {
        Parsed<Angle> parsed = AngleText.parse(scalar.text());
        if (parsed instanceof Parsed.Bad<Angle> bad) {
            return fault(scalar, bad.fault());
        }
        Angle angle = parsed.orThrow();
        return Limits.of(field).has(angle.degrees())
                ? Optional.of(angle)
                : outOfRange(field, scalar, "angle", UnitSystem.METRIC);
    }

    private Optional<BigDecimal> number(FieldShape field, Scalar scalar) {
        String text = scalar.text();
        if (!DECIMAL.matcher(text).matches()) {
            return fault(scalar, ValueMessage.NUMBER_EXPECTED.of(shortText(scalar), field.whatToWrite()));
        }
        if (!scalar.plain()) {
            return fault(scalar, ValueMessage.NUMBER_IN_QUOTES.of(shortText(scalar)));
        }
        if (text.length() > MOST_DIGITS) {
            return tooLarge(scalar);
        }
        // compared before it is rounded or printed: an exponent costs nothing until then
        BigDecimal number = new BigDecimal(text).stripTrailingZeros();
        if (number.abs().compareTo(MOST) > 0 || number.scale() > MOST_PLACES) {
            return tooLarge(scalar);
        }
        BigDecimal plain = number.scale() < 0 ? number.setScale(0) : number;
        return Limits.of(field).has(plain.doubleValue())
                ? Optional.of(plain)
                : outOfRange(field, scalar, "number", UnitSystem.METRIC);
    }

    private <T> Optional<T> tooLarge(Scalar scalar) {
        return fault(scalar, ValueMessage.NUMBER_TOO_LARGE.of(shortText(scalar), MOST, MOST_PLACES));
    }

    private Optional<Integer> whole(FieldShape field, Scalar scalar, BigDecimal number) {
        return number.scale() > 0
                ? fault(scalar, ValueMessage.WHOLE_NUMBER_EXPECTED.of(shortText(scalar), field.whatToWrite()))
                : Optional.of(number.intValueExact());
    }

    private Optional<Boolean> yesOrNo(Scalar scalar) {
        return switch (scalar.text()) {
            case "yes", "true", "True", "TRUE" -> Optional.of(true);
            case "no", "false", "False", "FALSE" -> Optional.of(false);
            default ->
                fault(
                        scalar,
                        ValueMessage.YES_OR_NO_EXPECTED.of(
                                shortText(scalar), NearestName.perhaps(scalar.text(), List.of("yes", "no"))));
        };
    }

    private Optional<LocalDate> date(FieldShape field, Scalar scalar) {
        try {
            LocalDate date = LocalDate.parse(scalar.text(), DATE);
            return date.isBefore(FIRST_DATE) || date.isAfter(LAST_DATE)
                    ? fault(
                            scalar,
                            ValueMessage.DATE_FAR.of(shortText(scalar), FIRST_DATE.toString(), LAST_DATE.toString()))
                    : Optional.of(date);
        } catch (DateTimeParseException e) {
            return fault(scalar, ValueMessage.DATE_EXPECTED.of(shortText(scalar), field.whatToWrite()));
        }
    }

    private Optional<Object> choice(FieldShape field, Scalar scalar) {
        int index = field.choices().indexOf(scalar.text());
        return index >= 0
                ? Optional.of(field.type().getEnumConstants()[index])
                : fault(
                        scalar,
                        ValueMessage.CHOICE_UNKNOWN.of(
                                shortText(scalar),
                                field.whatToWrite(),
                                NearestName.perhaps(scalar.text(), field.choices())));
    }

    private <T> Optional<T> outOfRange(FieldShape field, Scalar scalar, String kind, UnitSystem units) {
        return fault(
                scalar,
                ValueMessage.VALUE_OUT_OF_RANGE.of(
                        shortText(scalar), kind, Limits.of(field).message(units)));
    }

    private <T> Optional<T> fault(DocNode node, Message fault) {
        faults.add(node.place(), fault);
        return Optional.empty();
    }
}
