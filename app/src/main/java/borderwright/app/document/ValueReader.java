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
            case MEASURE, RECORD -> wrongKind(field, scalar, DocumentFaults.quoted(scalar.text()) + " stands here.");
        };
    }

    /** Reports that what stands here is not even of the right kind. */
    <T> Optional<T> wrongKind(FieldShape field, DocNode node, String what) {
        String right = field.kind() == FieldKind.RECORD
                ? "Write a group of keys: "
                        + String.join(", ", RecordShape.of(field.type()).keys()) + "."
                : field.whatToWrite();
        return fault(node, "kind", what, right);
    }

    private Optional<String> text(FieldShape field, Scalar scalar) {
        String text = scalar.text().strip();
        return text.isEmpty() ? fault(scalar, "text", "This text is empty.", field.whatToWrite()) : Optional.of(text);
    }

    /** Names of points, each one word. */
    Optional<Names> names(FieldShape field, DocNode node, List<String> names) {
        for (String name : names) {
            if (name.isBlank() || !name.matches("[\\p{L}\\p{N}_.'-]+")) {
                return fault(
                        node,
                        "names",
                        DocumentFaults.quoted(name) + " is not the name of a point.",
                        "A name is one word of letters and digits; " + decapitalised(field.whatToWrite()));
            }
        }
        return Optional.of(new Names(names));
    }

    private Optional<Length> length(FieldShape field, Scalar scalar) {
        Parsed<Length> parsed = LengthText.parse(scalar.text());
        if (parsed instanceof Parsed.Bad<Length> bad) {
            return fault(scalar, bad.fault());
        }
        Length length = parsed.orThrow();
        UnitSystem units = IMPERIAL.matcher(scalar.text()).find() ? UnitSystem.IMPERIAL : UnitSystem.METRIC;
        return inRange(field, length.mm()) ? Optional.of(length) : outOfRange(field, scalar, "a length", units);
    }

    private Optional<Angle> angle(FieldShape field, Scalar scalar) {
        Parsed<Angle> parsed = AngleText.parse(scalar.text());
        if (parsed instanceof Parsed.Bad<Angle> bad) {
            return fault(scalar, bad.fault());
        }
        Angle angle = parsed.orThrow();
        return inRange(field, angle.degrees())
                ? Optional.of(angle)
                : outOfRange(field, scalar, "an angle", UnitSystem.METRIC);
    }

    private Optional<BigDecimal> number(FieldShape field, Scalar scalar) {
        String text = scalar.text();
        if (!DECIMAL.matcher(text).matches()) {
            return fault(scalar, "number", DocumentFaults.quoted(text) + " is not a number.", field.whatToWrite());
        }
        if (!scalar.plain()) {
            return fault(
                    scalar,
                    "number",
                    DocumentFaults.quoted(text) + " is in quotes, so it is a text, not a number.",
                    "Write it without them.");
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
        return inRange(field, plain.doubleValue())
                ? Optional.of(plain)
                : outOfRange(field, scalar, "a number", UnitSystem.METRIC);
    }

    private <T> Optional<T> tooLarge(Scalar scalar) {
        return fault(
                scalar,
                "number",
                DocumentFaults.quoted(scalar.text()) + " is too large or has too many decimals.",
                "Write a number up to 1000000000 with at most " + MOST_PLACES + " decimals.");
    }

    private Optional<Integer> whole(FieldShape field, Scalar scalar, BigDecimal number) {
        return number.scale() > 0
                ? fault(scalar, "number", DocumentFaults.quoted(scalar.text()) + " is not whole.", field.whatToWrite())
                : Optional.of(number.intValueExact());
    }

    private Optional<Boolean> yesOrNo(Scalar scalar) {
        return switch (scalar.text()) {
            case "yes", "true", "True", "TRUE" -> Optional.of(true);
            case "no", "false", "False", "FALSE" -> Optional.of(false);
            default ->
                fault(
                        scalar,
                        "yes-no",
                        DocumentFaults.quoted(scalar.text()) + " is neither yes nor no.",
                        "Write `yes` or `no`." + DocumentFaults.perhaps(scalar.text(), List.of("yes", "no")));
        };
    }

    private Optional<LocalDate> date(FieldShape field, Scalar scalar) {
        try {
            return Optional.of(LocalDate.parse(scalar.text(), DATE));
        } catch (DateTimeParseException e) {
            return fault(scalar, "date", DocumentFaults.quoted(scalar.text()) + " is not a date.", field.whatToWrite());
        }
    }

    private Optional<Object> choice(FieldShape field, Scalar scalar) {
        int index = field.choices().indexOf(scalar.text());
        return index >= 0
                ? Optional.of(field.type().getEnumConstants()[index])
                : fault(
                        scalar,
                        "choice",
                        DocumentFaults.quoted(scalar.text()) + " is not one of the choices.",
                        field.whatToWrite() + DocumentFaults.perhaps(scalar.text(), field.choices()));
    }

    private static boolean inRange(FieldShape field, double value) {
        // a tick is 1/320 mm: limits written in decimals must not refuse the length that equals them
        double slack = 1e-9;
        return value >= field.says().atLeast() - slack && value <= field.says().atMost() + slack;
    }

    private <T> Optional<T> outOfRange(FieldShape field, Scalar scalar, String a, UnitSystem units) {
        return fault(
                scalar,
                "out-of-range",
                DocumentFaults.quoted(scalar.text()) + " is out of range.",
                "Write " + a + " " + Limits.of(field).inWords(units) + ".");
    }

    private <T> Optional<T> fault(DocNode node, Message fault) {
        faults.add(node.place(), fault);
        return Optional.empty();
    }

    private <T> Optional<T> fault(DocNode node, String code, String what, String right) {
        faults.add(node.place(), code, what, right);
        return Optional.empty();
    }

    private static String decapitalised(String sentence) {
        return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
