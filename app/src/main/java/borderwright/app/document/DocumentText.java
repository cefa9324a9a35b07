package borderwright.app.document;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** From bytes to text: UTF-8, of bounded size, with printable characters only. */
final class DocumentText {
    private DocumentText() {}

    /** The text of {@code bytes}, unless a fault was added to {@code faults}. */
    static Optional<String> read(byte[] bytes, DocumentFaults faults) {
        if (bytes.length > DocumentLimits.MOST_BYTES) {
            faults.add(Place.START, DocumentMessage.DOCUMENT_TOO_BIG.of(DocumentLimits.MOST_BYTES));
            return Optional.empty();
        }
        if (looksLikeUtf16(bytes)) {
            faults.add(Place.START, DocumentMessage.DOCUMENT_IN_UTF16.of());
            return Optional.empty();
        }
        Optional<String> text = decode(bytes, faults);
        return text.filter(t -> isPrintable(t, faults)).map(DocumentText::withoutTabsInJson);
    }

    private static boolean looksLikeUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int first = bytes[0] & 0xff;
        int second = bytes[1] & 0xff;
        return (first == 0xfe && second == 0xff) || (first == 0xff && second == 0xfe) || (first == 0) != (second == 0);
    }

    private static Optional<String> decode(byte[] bytes, DocumentFaults faults) {
        int start = startsWithByteOrderMark(bytes) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString());
        } catch (CharacterCodingException e) {
            faults.add(
                    placeAfter(new String(bytes, start, in.position() - start, StandardCharsets.UTF_8)),
                    DocumentMessage.DOCUMENT_NOT_UTF8.of());
            return Optional.empty();
        }
    }

    private static boolean startsWithByteOrderMark(byte[] bytes) {
        return bytes.length >= 3 && (bytes[0] & 0xff) == 0xef && (bytes[1] & 0xff) == 0xbb && (bytes[2] & 0xff) == 0xbf;
    }

    private static boolean isPrintable(String text, DocumentFaults faults) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int c = text.codePointAt(at);
            if (!StreamReader.isPrintable(c)) {
                faults.add(
                        placeAfter(text.substring(0, at)),
                        DocumentMessage.CONTROL_CHARACTER.of(String.format("U+%04X", c)));
                return false;
            }
        }
        return true;
    }

    /** Pretty-printed JSON may be indented with tabs, which YAML forbids; a space keeps every column where it is. */
    private static String withoutTabsInJson(String text) {
        return text.stripLeading().startsWith("{") ? text.replace('\t', ' ') : text;
    }

    private static Place placeAfter(String before) {
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int lineStart = before.lastIndexOf('\n') + 1;
        return new Place(line, 1 + before.codePointCount(lineStart, before.length()), "");
    }
}
